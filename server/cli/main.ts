import { runCommandLine } from './run-command-line.ts';

void runCommandLine(process.argv.slice(2), process.cwd(), {
  out: (text) => process.stdout.write(text),
  error: (text) => process.stderr.write(text),
}).then((code) => {
  process.exitCode = code;
});
