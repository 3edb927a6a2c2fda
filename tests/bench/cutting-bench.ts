import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type CutInstance, searchCuts } from '../../language/takeoff/index.ts';
import { printTable, type Row } from './statistics.ts';

/** An instance with what its plan must cost. */
interface Known {
  readonly family: string;
  readonly name: string;
  readonly instance: CutInstance;
  readonly optimum: number;
}

/** Improved since the file was published. */
const IMPROVED: Readonly<Record<string, number>> = { u120_08: 50, u120_19: 49, u250_07: 103, u250_12: 105 };
const SECONDS = 30;

/**
 * Times to a proven plan on instances with known optima, read from the folder that SLATWRIGHT_CUTTING_DATA names, or
 * from beside the project; steps aside where there is none. Told beside: what cutting the longest
 * piece first costs (first-fit decreasing) more than the optimum.
 */
export function benchCutting(): void {
  const folder =
    process.env.SLATWRIGHT_CUTTING_DATA ?? resolve(import.meta.dirname, '../../../shared/data/cutting');
  if (!existsSync(folder)) {
    console.log('\nCutting: no data folder; SLATWRIGHT_CUTTING_DATA names one.');
    return;
  }
  const rows = new Map<string, { times: number[]; wrong: string[]; excess: number[] }>();
  for (const { family, name, instance, optimum } of readdirSync(folder).flatMap((file) =>
    knownIn(folder, file),
  )) {
    const began = performance.now();
    const search = searchCuts(instance);
    search.run(() => search.proven() || performance.now() - began > SECONDS * 1000);
    const took = performance.now() - began;
    const plan = search.plan();
    const row = rows.get(family) ?? { times: [], wrong: [], excess: [] };
    rows.set(family, row);
    row.times.push(took);
    if ('kind' in plan || plan.cost !== optimum || !plan.proven)
      row.wrong.push(
        `${name}: ${'kind' in plan ? plan.kind : `${plan.cost}, bound ${plan.bound}`}, known ${optimum}`,
      );
    row.excess.push((100 * firstFit(instance)) / optimum - 100);
  }
  printTable(
    'Cutting: to a proven plan (ms)',
    [...rows].map(([what, { times }]): Row => ({ what, times })),
  );
  for (const [family, { wrong, excess }] of rows) {
    const mean = excess.reduce((sum, each) => sum + each, 0) / excess.length;
    console.log(`${family}: first-fit decreasing ${mean.toFixed(1)} % above the optimum on average`);
    for (const one of wrong) console.log(`  NOT PROVEN at the known optimum: ${one}`);
  }
}

function knownIn(folder: string, file: string): Known[] {
  const text = () => readFileSync(join(folder, file), 'utf8');
  if (file.startsWith('binpack')) return packingsIn(text(), file);
  if (!file.endsWith('.json')) return [];
  const value = JSON.parse(text());
  if (!Array.isArray(value))
    return [{ family: 'made jobs', name: value.name, instance: value, optimum: value.optimum.cost }];
  return value.map(({ name, kerf, stock, pieces, optimum }) => ({
    family: 'textbook',
    name,
    instance: { kerf, stock, pieces: pieces.map(([length, count]: number[]) => piece(length, count)) },
    optimum,
  }));
}

const piece = (length = 0, count = 0) => ({ label: String(length), length, count });

/** The OR-Library form: how many; of each a name, then capacity, pieces and best known, then the sizes. */
function packingsIn(text: string, family: string): Known[] {
  const [many = '0', ...words] = text.trim().split(/\s+/);
  const next = () => words.shift() ?? '';
  return Array.from({ length: Number(many) }, () => {
    const [name, length, pieces, best] = [next(), Number(next()), Number(next()), Number(next())];
    const counts = new Map<number, number>();
    for (let i = 0; i < pieces; i++) {
      const size = Number(next());
      counts.set(size, (counts.get(size) ?? 0) + 1);
    }
    const instance = {
      kerf: 0,
      pieces: [...counts].map(([size, count]) => piece(size, count)),
      stock: [{ length, price: 1 }],
    };
    return { family, name, instance, optimum: IMPROVED[name] ?? best };
  });
}

/** Longest piece first into the first board with room, else a new one of the least price for its length that holds it. */
function firstFit({ kerf, pieces, stock }: CutInstance): number {
  const left = stock.map(({ available = Infinity }) => available);
  const boards: number[] = [];
  let cost = 0;
  const lengths = pieces.flatMap(({ length, count }) => Array.from({ length: count }, () => length + kerf));
  for (const size of lengths.sort((a, b) => b - a)) {
    const at = boards.findIndex((room) => room >= size);
    if (at >= 0) {
      boards[at] = (boards[at] ?? 0) - size;
      continue;
    }
    const best = stock
      .map((one, j) => ({ ...one, j }))
      .filter(({ length, j }) => length + kerf >= size && (left[j] ?? 0) > 0)
      .sort((a, b) => a.price / a.length - b.price / b.length)[0];
    if (!best) return Number.NaN;
    left[best.j] = (left[best.j] ?? 0) - 1;
    boards.push(best.length + kerf - size);
    cost += best.price;
  }
  return cost;
}
