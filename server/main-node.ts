import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { start } from './start.ts';
import { RealWorkspaceBounds } from './workspace/real-bounds.ts';

process.on('unhandledRejection', (reason) => console.error('not caught:', reason));

// By Node's own channel between processes or by standard streams, as the arguments say.
start({
  connection: createConnection(ProposedFeatures.all),
  fileSystemProvider: NodeFileSystem.fileSystemProvider,
  module: { workspace: { WorkspaceBounds: (shared) => new RealWorkspaceBounds(shared) } },
});
