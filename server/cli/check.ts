import { type PlacedFinding, placeFindings } from '../work/place-findings.ts';
import type { Request } from './arguments.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';

/** Prints every finding; 1 when there is an error among them. */
export async function check({ files, format }: Request, folder: string, terminal: Terminal): Promise<number> {
  const opened = await openFiles(files, folder);
  const found = opened.files.flatMap(({ path, document, work }) =>
    placeFindings(opened.services, document, work).map((finding) => ({ path, finding })),
  );
  if (format === 'json') {
    terminal.out(
      `${JSON.stringify(
        found.map(({ path, finding }) => asJson(path, finding)),
        null,
        2,
      )}\n`,
    );
  } else {
    for (const { path, finding } of found) terminal.out(`${asLine(path, finding)}\n`);
    terminal.out(
      summary(
        found.map(({ finding }) => finding),
        opened.files.length,
      ),
    );
  }
  return found.some(({ finding }) => finding.severity === 'error') ? 1 : 0;
}

function asLine(path: string, { range, severity, code, message, accepted }: PlacedFinding): string {
  const word = accepted === undefined ? severity : 'accepted';
  const reason = accepted === undefined ? '' : ` Accepted: ${accepted}`;
  return printable(
    `${path}:${range.start.line + 1}:${range.start.character + 1} ${word} ${code} ${message}${reason}`,
  );
}

function asJson(file: string, { code, severity, message, range, basis, accepted }: PlacedFinding) {
  return { file, code, severity, message, range, basis, ...(accepted === undefined ? {} : { accepted }) };
}

function summary(found: readonly PlacedFinding[], files: number): string {
  const open = found.filter(({ accepted }) => accepted === undefined);
  const count = (severity: string) => open.filter((finding) => finding.severity === severity).length;
  const many = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`;
  return `${many(files, 'file')}: ${many(count('error'), 'error')}, ${many(count('warning'), 'warning')}, ${count('information')} for information${open.length < found.length ? `, ${found.length - open.length} accepted` : ''}\n`;
}
