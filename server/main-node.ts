import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { start } from './start.ts';
import { RealWorkspaceBounds } from './workspace/real-bounds.ts';

// To the error stream itself: the console speaks over the connection, which may be what was lost.
process.on('unhandledRejection', (reason) => process.stderr.write(`not caught: ${String(reason)}\n`));

// By Node's own channel between processes or by standard streams, as the arguments say.
start({
  connection: createConnection(ProposedFeatures.all),
  fileSystemProvider: NodeFileSystem.fileSystemProvider,
  module: { workspace: { WorkspaceBounds: (shared) => new RealWorkspaceBounds(shared) } },
});
