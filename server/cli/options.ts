import type { OptionFigures } from '../../language/takeoff/index.ts';
import { formatMoney } from '../../language/units/index.ts';
import { compareOptions } from '../work/compare-options.ts';
import type { Request } from './arguments.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';

/** Of the JSON form; raised when a field changes its meaning. */
const VERSION = 1;
const SECONDS = 3;

/** Lays the options of jobs side by side; 1 when one of them cannot be worked out whole. */
export async function options(
  { files, format, seconds = SECONDS }: Request,
  folder: string,
  terminal: Terminal,
): Promise<number> {
  const opened = await openFiles(files, folder);
  let code = 0;
  const told: unknown[] = [];
  for (const { path, document } of opened.files) {
    const end = performance.now() + seconds * 1000;
    const all = compareOptions(opened.services.shared, document, () => performance.now() > end);
    if (all.some(({ broken }) => broken.length > 0)) code = 1;
    if (format === 'json')
      told.push({ file: path, options: all.map((one) => ({ ...one, option: one.option ?? null })) });
    else terminal.out(`${table(all).map(printable).join('\n')}\n`);
  }
  if (format === 'json') terminal.out(`${JSON.stringify({ version: VERSION, jobs: told }, null, 2)}\n`);
  return code;
}

/** A column for each option, a row for each figure. */
export function table(all: readonly OptionFigures[]): string[] {
  const percent = (share: number) => `${Math.round(1000 * share) / 10} %`;
  const pairs = [...new Set(all.flatMap(({ hidden }) => hidden.map(({ pair }) => pair)))];
  const rows: string[][] = [
    ['', ...all.map(({ option }) => option ?? 'as it stands')],
    ['pattern', ...all.map(({ look }) => look.join(', '))],
    ['open straight on', ...all.map(({ open }) => percent(open))],
    ...pairs.map((pair) => [
      `hidden: ${pair}`,
      ...all.map(({ hidden }) => {
        const found = hidden.find((one) => one.pair === pair);
        return found ? percent(found.share) : '';
      }),
    ]),
    ['pieces', ...all.map(({ pieces }) => String(pieces))],
    ['boards to buy', ...all.map(({ boards }) => String(boards))],
    ['waste', ...all.map(({ waste }) => percent(waste))],
    ['hours', ...all.map(({ hours }) => String(Math.round(10 * hours) / 10))],
    [
      'price',
      ...all.map(({ price, priceWhole }) =>
        price ? `${formatMoney(price)}${priceWhole ? '' : ' and more'}` : 'no prices',
      ),
    ],
    ...(all.some(({ broken }) => broken.length > 0)
      ? [['cannot be worked out', ...all.map(({ broken }) => broken.join(', '))]]
      : []),
  ];
  const widths = all.map((_, at) => Math.max(...rows.map((row) => row[at + 1]?.length ?? 0)));
  const first = Math.max(...rows.map(([head = '']) => head.length));
  return rows.map(([head = '', ...cells]) =>
    [head.padEnd(first), ...cells.map((cell, at) => cell.padEnd(widths[at] ?? 0))].join('  ').trimEnd(),
  );
}
