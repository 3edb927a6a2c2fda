import { runCommandLine } from './run-command-line.ts';

// Whoever reads may have had enough, as `head` has: that is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

void runCommandLine(process.argv.slice(2), process.cwd(), {
  out: (text) => process.stdout.write(text),
  error: (text) => process.stderr.write(text),
}).then((code) => {
  process.exitCode = code;
});
