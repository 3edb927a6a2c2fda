import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { CutInstance } from '../../language/takeoff/index.ts';
import { CannotRun } from './usage.ts';

/** An instance with its prices whole; `money` turns them into those of the file. */
export interface ReadInstance {
  readonly instance: CutInstance;
  readonly unit: string;
  readonly money: number;
}

/**
 * Reads a list of lengths and boards. JSON holds `unit`, `kerf`, `trim` and lists of `pieces` (label, length, width, count)
 * and `stock` (length, width, price, available); widths are of all or of none, other keys are left alone. CSV has the heads
 * kind, label, length, width, count, price:
 * a row of kind piece or stock each, its count empty for stock without limit, and one of kind kerf or trim with its length.
 */
export function readInstance(path: string, folder: string): ReadInstance {
  let text: string;
  try {
    text = readFileSync(resolve(folder, path), 'utf8').replace(/^\uFEFF/, '');
  } catch {
    throw new CannotRun(`${path} cannot be read.`);
  }
  const raw = /^\s*\{/.test(text) ? fromJson(text, path) : fromCsv(text, path);
  return wholePrices(raw, path);
}

interface Raw {
  readonly unit: string;
  readonly kerf: number;
  readonly trim: number;
  readonly pieces: CutInstance['pieces'];
  readonly stock: CutInstance['stock'];
}

function fromJson(text: string, path: string): Raw {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw new CannotRun(`${path} is no JSON: ${error instanceof Error ? error.message : error}`);
  }
  const { unit, kerf, trim, pieces, stock } = value as Record<string, unknown>;
  const listOf = (list: unknown, name: string) => {
    if (!Array.isArray(list)) throw new CannotRun(`${path} lacks the list "${name}".`);
    return list as Record<string, unknown>[];
  };
  const number = (of: unknown, what: string, otherwise?: number): number => {
    if (of === undefined && otherwise !== undefined) return otherwise;
    if (typeof of !== 'number' || !Number.isFinite(of) || of < 0)
      throw new CannotRun(`${path}: ${what} is ${JSON.stringify(of)}; write a number, 0 or more.`);
    return of;
  };
  const widthOf = (of: unknown, what: string): { width?: number } =>
    of === undefined || of === null ? {} : { width: positive(number(of, what), `${path}: ${what}`) };
  return {
    unit: typeof unit === 'string' ? unit : '',
    kerf: number(kerf, 'kerf', 0),
    trim: number(trim, 'trim', 0),
    pieces: listOf(pieces, 'pieces').map((piece, at) => ({
      label: typeof piece.label === 'string' ? piece.label : `${piece.label ?? piece.length}`,
      length: positive(
        number(piece.length, `the length of piece ${at + 1}`),
        `${path}: the length of piece ${at + 1}`,
      ),
      ...widthOf(piece.width, `the width of piece ${at + 1}`),
      count: whole(
        number(piece.count, `the count of piece ${at + 1}`, 1),
        `${path}: the count of piece ${at + 1}`,
      ),
    })),
    stock: listOf(stock, 'stock').map((board, at) => ({
      length: positive(
        number(board.length, `the length of stock ${at + 1}`),
        `${path}: the length of stock ${at + 1}`,
      ),
      ...widthOf(board.width, `the width of stock ${at + 1}`),
      price: number(board.price, `the price of stock ${at + 1}`),
      ...(board.available === undefined || board.available === null
        ? {}
        : {
            available: whole(
              number(board.available, `what is available of stock ${at + 1}`),
              `${path}: available`,
            ),
          }),
    })),
  };
}

function fromCsv(text: string, path: string): Raw {
  const rows = text
    .split(/\r\n|\r|\n/)
    .filter((line) => line.trim() !== '')
    .map(cellsOf);
  const heads = (rows[0] ?? []).map((head) => head.trim().toLowerCase());
  for (const needed of ['kind', 'length'])
    if (!heads.includes(needed))
      throw new CannotRun(
        `${path} is neither JSON nor CSV with the heads kind, label, length, count, price.`,
      );
  let [kerf, trim] = [0, 0];
  const pieces: CutInstance['pieces'][number][] = [];
  const stock: CutInstance['stock'][number][] = [];
  for (const [at, row] of rows.slice(1).entries()) {
    const cell = (head: string) => (row[heads.indexOf(head)] ?? '').trim();
    const where = `${path}, row ${at + 2}`;
    const number = (head: string, otherwise?: number): number => {
      const value =
        cell(head) === '' && otherwise !== undefined ? otherwise : Number(cell(head).replace(',', '.'));
      if (!Number.isFinite(value) || value < 0 || (cell(head) === '' && otherwise === undefined))
        throw new CannotRun(`${where}: ${head} is "${cell(head)}"; write a number, 0 or more.`);
      return value;
    };
    const width = cell('width') === '' ? {} : { width: positive(number('width'), `${where}: width`) };
    const kind = cell('kind').toLowerCase();
    if (kind === 'kerf') kerf = number('length');
    else if (kind === 'trim') trim = number('length');
    else if (kind === 'piece')
      pieces.push({
        label: cell('label') || cell('length'),
        length: positive(number('length'), `${where}: length`),
        ...width,
        count: whole(number('count', 1), `${where}: count`),
      });
    else if (kind === 'stock')
      stock.push({
        length: positive(number('length'), `${where}: length`),
        ...width,
        price: number('price'),
        ...(cell('count') === '' ? {} : { available: whole(number('count'), `${where}: count`) }),
      });
    else throw new CannotRun(`${where}: kind is "${kind}"; write piece, stock, kerf or trim.`);
  }
  return { unit: '', kerf, trim, pieces, stock };
}

/** Cells of a row after RFC 4180, quotes kept together. */
function cellsOf(line: string): string[] {
  return [...line.matchAll(/(?:^|[,;])(?:"((?:[^"]|"")*)"|([^,;]*))/g)].map(([, quoted, bare]) =>
    quoted === undefined ? (bare ?? '') : quoted.replaceAll('""', '"'),
  );
}

function positive(value: number, what: string): number {
  if (!(value > 0)) throw new CannotRun(`${what} is ${value}; write more than 0.`);
  return value;
}

function whole(value: number, what: string): number {
  if (!Number.isSafeInteger(value)) throw new CannotRun(`${what} is ${value}; write a whole number.`);
  return value;
}

/** Prices may have decimals; the planner counts in whole ones. */
function wholePrices({ unit, kerf, trim, pieces, stock }: Raw, path: string): ReadInstance {
  let money = 1;
  while (
    money < 1e6 &&
    !stock.every(({ price }) => Math.abs(price * money - Math.round(price * money)) < 1e-6)
  )
    money *= 10;
  const scaled = stock.map((board) => ({ ...board, price: Math.round(board.price * money) }));
  if (!scaled.every(({ price }) => price < 1e10)) throw new CannotRun(`${path}: a price is too large.`);
  return { instance: { kerf, trim, pieces, stock: scaled }, unit, money };
}
