import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { SlicedReckoner, WorkerReckoner } from './reckoning/index.ts';
import { start } from './start.ts';
import { RealWorkspaceBounds } from './workspace/real-bounds.ts';

// To the error stream itself: the console speaks over the connection, which may be what was lost.
process.on('unhandledRejection', (reason) => process.stderr.write(`not caught: ${String(reason)}\n`));

/** Bundled it lies beside the server; from source it is the entry itself. */
const WORKER = join(
  import.meta.dirname,
  import.meta.filename.endsWith('.ts') ? 'reckoning/worker-main.ts' : 'reckoner.cjs',
);
/** Megabytes: what needs more is not worked out, rather than everything else with it. */
const MEMORY = 1024;

/** A thread that keeps no server from ending, and says nothing on the streams that a client may listen to. */
function makeWorker(): Worker {
  const worker = new Worker(WORKER, {
    stdout: true,
    stderr: true,
    resourceLimits: { maxOldGenerationSizeMb: MEMORY },
  });
  worker.unref();
  return worker;
}

// By Node's own channel between processes or by standard streams, as the arguments say.
start({
  connection: createConnection(ProposedFeatures.all),
  fileSystemProvider: NodeFileSystem.fileSystemProvider,
  module: {
    workspace: { WorkspaceBounds: (shared) => new RealWorkspaceBounds(shared) },
    work: { Reckoner: (shared) => new WorkerReckoner(shared, makeWorker, new SlicedReckoner(shared)) },
  },
});
