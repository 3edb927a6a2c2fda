import { expect, it } from 'vitest';
import { folderWith, runHere, SHED } from './testing/run-here.ts';

interface Listed {
  readonly label: string;
  readonly run: string;
  readonly gate: string | null;
  readonly bay: number | null;
  readonly course: number | null;
  readonly role: string;
  readonly stock: string;
  readonly ripped: boolean;
  readonly width: number;
  readonly thickness: number;
  readonly longPoint: number;
  readonly shortPoint: number;
  readonly ends: readonly { readonly miter: number; readonly bevel: number }[];
  readonly scribe: readonly { readonly at: number; readonly width: number }[] | null;
  readonly key: string;
  readonly bounds: { readonly min: readonly number[]; readonly max: readonly number[] };
  readonly vertices: readonly (readonly number[])[];
}

async function listed(text: string): Promise<readonly Listed[]> {
  const { code, out } = await runHere(folderWith({ 'shed.slat': text }), 'pieces', 'shed.slat', '--json');
  expect(code).toBe(0);
  const { version, pieces } = JSON.parse(out);
  expect(version).toBe(1);
  return pieces;
}

it('lists every piece in millimeters, with its solid in the frame of the run', async () => {
  const pieces = await listed(SHED);
  const first = pieces.find(({ key }) => key === 'side/b1/c01');
  // 218 less two end posts and two gate posts of 3-1/2 and an opening of 40 leaves 164: 40-1/4 in each
  // of four bays, with a post between. From the run's end to the middle of the next post that is 45-1/2.
  const inch = 25.4;
  expect(first).toMatchObject({
    run: 'side',
    gate: null,
    bay: 1,
    course: 1,
    role: 'slat',
    stock: 'plank',
    ripped: false,
    width: 5.5 * inch,
    thickness: inch,
    ends: [
      { miter: 0, bevel: 0 },
      { miter: 0, bevel: 0 },
    ],
  });
  expect(first?.bounds.max[2]).toBeCloseTo(62 * inch, 6);
  expect(first?.bounds.min[2]).toBeCloseTo(56.5 * inch, 6);
  expect(first?.bounds.min[0]).toBe(0);
  const roles = new Map<string, number>();
  for (const { role } of pieces) roles.set(role, (roles.get(role) ?? 0) + 1);
  expect(roles.get('post')).toBe(6);
  expect([roles.get('stile'), roles.get('rail'), roles.get('brace')]).toEqual([2, 2, 1]);
});

it('gives each piece eight corners within its bounds, and one key and one label', async () => {
  const pieces = await listed(SHED);
  for (const { key, vertices, bounds, longPoint, shortPoint } of pieces) {
    expect(vertices, key).toHaveLength(8);
    for (const axis of [0, 1, 2]) {
      const along = vertices.map((vertex) => vertex[axis] ?? Number.NaN);
      expect(Math.min(...along), key).toBe(bounds.min[axis]);
      expect(Math.max(...along), key).toBe(bounds.max[axis]);
    }
    expect(shortPoint, key).toBeLessThanOrEqual(longPoint);
  }
  expect(new Set(pieces.map(({ key }) => key)).size).toBe(pieces.length);
  expect(new Set(pieces.map(({ label }) => label)).size).toBe(pieces.length);
});

it('cuts the brace at an angle, longer at its long point', async () => {
  const brace = (await listed(SHED)).find(({ role }) => role === 'brace');
  expect(brace?.gate).toBe('door');
  expect(brace?.longPoint).toBeGreaterThan(brace?.shortPoint ?? Number.NaN);
  expect(brace?.ends.some(({ miter }) => miter !== 0)).toBe(true);
});

it('writes values separated by commas in the measure of the job', async () => {
  const folder = folderWith({ 'shed.slat': SHED });
  const { code, out } = await runHere(folder, 'pieces', 'shed.slat', '--csv');
  expect(code).toBe(0);
  const [head, ...rows] = readCsv(out);
  expect(head).toEqual([
    'label',
    'run',
    'gate',
    'bay',
    'course',
    'role',
    'stock',
    'width',
    'thickness',
    'long point',
    'short point',
    'end 1',
    'end 2',
    'grooves',
    'marks',
    'taper',
    'key',
  ]);
  const slat = rows.find((row) => row.at(-1) === 'side/b1/c01') ?? [];
  expect(slat.slice(1, 9)).toEqual(['side', '', '1', '1', 'slat', 'plank', '5-1/2"', '1"']);
  expect(slat.slice(11, 13)).toEqual(['square', 'square']);
  const brace = rows.find((row) => row[5] === 'brace') ?? [];
  expect(brace[11]).toMatch(/^miter [-\u2212]?\d+(\.\d+)?°$/);
  expect(rows).toHaveLength((await listed(SHED)).length);
});

it('quotes what would break a line of values', async () => {
  const job = SHED.replaceAll('side', '"side, left; <b>"');
  const { out } = await runHere(folderWith({ 'shed.slat': job }), 'pieces', 'shed.slat', '--csv');
  const rows = readCsv(out);
  expect(new Set(rows.map((row) => row.length))).toEqual(new Set([17]));
  expect(rows[1]?.[1]).toBe('side, left; <b>');
});

it('lets no cell begin a formula', async () => {
  const job = SHED.replaceAll('side', '"=1+1"');
  const { out } = await runHere(folderWith({ 'shed.slat': job }), 'pieces', 'shed.slat', '--csv');
  const cells = readCsv(out).flat();
  expect(cells.filter((cell) => /^[=+@-]/.test(cell))).toEqual([]);
  expect(cells).toContain("'=1+1");
});

it('lists in columns for reading', async () => {
  const { code, out } = await runHere(folderWith({ 'shed.slat': SHED }), 'pieces', 'shed.slat');
  expect(code).toBe(0);
  const [head, first] = out.split('\n');
  expect(head).toMatch(/^label +run +gate +bay +course +role +stock /);
  expect(first?.indexOf('side')).toBe(head?.indexOf('run'));
});

it('lists what can be worked out, says what cannot, and ends with 1', async () => {
  const folder = folderWith({ 'shed.slat': `${SHED}run broken { length 7 }\n` });
  const { code, out, error } = await runHere(folder, 'pieces', 'shed.slat', '--json');
  expect(code).toBe(1);
  expect(JSON.parse(out).pieces.length).toBeGreaterThan(10);
  expect(error).toContain('run broken cannot be worked out');
});

it('gives the taper of a scribed board from its foot', async () => {
  const wall = 'begins at wall, 2" off, leans away 1" in 5\'; scribed filler plank; posts';
  const text = SHED.replace('posts', wall);
  const filler = (await listed(text)).find(({ role }) => role === 'filler');
  expect(filler?.key).toBe('side/p1/filler-start');
  expect(filler?.scribe?.map(({ at }) => at)).toEqual([0, filler?.longPoint]);
  const { out } = await runHere(folderWith({ 'shed.slat': text }), 'pieces', 'shed.slat', '--csv');
  const row = readCsv(out).find(([label]) => label === 'P1-FL');
  expect(row?.at(-2)).toMatch(/^0" 2", \d+[\d/-]*" 3"$/);
});

/** Reads values separated by commas after RFC 4180. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  const cell = /(?:"((?:[^"]|"")*)"|([^,\r\n]*))(,|\r\n|$)/y;
  while (cell.lastIndex < text.length) {
    const [, quoted, plain, end] = cell.exec(text) ?? [];
    if (end === undefined) throw new Error('no values separated by commas');
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? plain ?? '');
    if (end !== ',') rows.push([]);
  }
  return rows.filter((row) => row.length > 0);
}
