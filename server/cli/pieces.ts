import { taperLine, taperOf } from '../../language/drawing/index.ts';
import { cutSlats } from '../../language/figures/index.ts';
import type { Piece, RunLayout, Vec3 } from '../../language/layout/index.ts';
import { formatDegrees, formatLength, type Measure, type Ticks, toMm } from '../../language/units/index.ts';
import { asCsv, grooveOf } from '../sheets/index.ts';
import type { Request } from './arguments.ts';
import { tellBrokenRuns } from './broken-runs.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';

/** Of the JSON form; raised when a field changes its meaning. */
const VERSION = 1;

/** Lists every piece with what the saw needs; 1 when a run could not be worked out. */
export async function pieces(
  { files, format }: Request,
  folder: string,
  terminal: Terminal,
): Promise<number> {
  const opened = await openFiles(files, folder);
  const all = opened.files.flatMap(({ work }) =>
    work.layout.runs.flatMap((run) => {
      const was = planOf(run);
      return [...run.pieces, ...run.temporary.pieces].map((piece) => ({
        piece,
        ...was(piece),
        measure: work.job.measure.value,
      }));
    }),
  );
  if (format === 'json') {
    terminal.out(`${JSON.stringify({ version: VERSION, pieces: all.map(asJson) }, null, 2)}\n`);
  } else {
    const rows = [HEADINGS, ...all.map(({ piece, measure }) => cells(piece, measure))];
    terminal.out(format === 'csv' ? asCsv(rows) : asTable(rows.map((row) => row.map(printable))));
  }
  return tellBrokenRuns(opened.files, terminal) > 0 ? 1 : 0;
}

interface Planned {
  readonly state: 'planned' | 'cut';
  /** Long point as planned, where it is another as measured. */
  readonly planned?: Ticks;
}

/** Which pieces of a run are said to be cut, and what was planned of them before it was measured. */
function planOf(run: RunLayout): (piece: Piece) => Planned {
  const cut = new Set(cutSlats(run).map(({ key }) => key));
  const lengths = new Map(run.planned?.pieces.map((piece) => [piece.key, piece.cut.longPoint]));
  return ({ key, cut: { longPoint } }) => {
    const planned = lengths.get(key);
    return {
      state: cut.has(key) ? 'cut' : 'planned',
      ...(planned === undefined || planned === longPoint ? {} : { planned }),
    };
  };
}

/** Lengths in millimeters, angles in degrees; `bounds` and `vertices` in the run's frame. */
function asJson({ piece, state, planned }: Planned & { readonly piece: Piece }) {
  const { cut, solid } = piece;
  return {
    label: piece.label,
    run: piece.run,
    gate: piece.gate ?? null,
    bay: piece.bay ?? null,
    until: piece.until ?? null,
    course: piece.course ?? null,
    role: piece.role,
    stock: cut.stock,
    ripped: cut.ripped,
    width: millimeters(cut.width),
    thickness: millimeters(cut.thickness),
    taper: cut.taper?.map(millimeters) ?? null,
    longPoint: millimeters(cut.longPoint),
    shortPoint: millimeters(cut.shortPoint),
    state,
    planned: planned === undefined ? null : millimeters(planned),
    grooves: (cut.grooves ?? []).map(({ side, from, to, at, width, depth }) => ({
      side,
      from: millimeters(from),
      to: millimeters(to ?? cut.longPoint),
      at: millimeters(at),
      width: millimeters(width),
      depth: millimeters(depth),
    })),
    marks: (cut.marks ?? []).map(millimeters),
    temporary: isTemporaryRole(piece),
    edge: cut.edge === undefined ? null : angle(cut.edge),
    ends: cut.ends.map(({ miter, bevel }) => ({ miter: angle(miter), bevel: angle(bevel) })),
    scribe: cut.scribe?.map(({ at, width }) => ({ at: millimeters(at), width: millimeters(width) })) ?? null,
    key: piece.key,
    bounds: bounds(solid.vertices),
    vertices: solid.vertices.map(point),
  };
}

function bounds(vertices: readonly Vec3[]) {
  const along = (axis: 0 | 1 | 2) => vertices.map((vertex) => vertex[axis]);
  const extreme = (of: (...values: number[]) => number) =>
    ([0, 1, 2] as const).map((axis) => millimeters(of(...along(axis))));
  return { min: extreme(Math.min), max: extreme(Math.max) };
}

const point = (vertex: Vec3) => vertex.map(millimeters);

/** What sets the posts and comes off again. */
const isTemporaryRole = ({ role }: Piece): boolean => role === 'strip' || role === 'prop' || role === 'stake';

/** To a millionth, which is finer than a tick and free of the noise of floats. */
const millimeters = (ticks: Ticks): number => Math.round(toMm(ticks) * 1e6) / 1e6;
const angle = (degrees: number): number => Math.round(degrees * 1e4) / 1e4;

const HEADINGS = [
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
];

function cells(piece: Piece, measure: Measure): string[] {
  const { label, run, gate, bay, until, course, role, cut, key } = piece;
  const length = (ticks: Ticks) => formatLength(ticks, measure);
  const [first, second] = cut.ends;
  return [
    label,
    run,
    gate ?? '',
    bay === undefined ? '' : until === undefined ? String(bay) : `${bay} to ${until}`,
    course === undefined ? '' : String(course),
    role,
    cut.stock,
    `${cut.taper ? cut.taper.map(length).join(' to ') : length(cut.width)}${cut.edge === undefined ? '' : ` edge ${formatDegrees(cut.edge)}`}`,
    length(cut.thickness),
    length(cut.longPoint),
    length(cut.shortPoint),
    endOf(first),
    endOf(second),
    (cut.grooves ?? []).map((groove) => grooveOf(role, groove, length)).join('; '),
    (cut.marks ?? []).map(length).join('; '),
    taperLine(taperOf(piece, measure)),
    key,
  ];
}

function endOf({ miter, bevel }: Piece['cut']['ends'][number]): string {
  if (miter === 0 && bevel === 0) return 'square';
  return [miter && `miter ${formatDegrees(miter)}`, bevel && `bevel ${formatDegrees(bevel)}`]
    .filter(Boolean)
    .join(' ');
}

function asTable(rows: readonly (readonly string[])[]): string {
  const widths = HEADINGS.map((_, column) =>
    rows.reduce((most, row) => Math.max(most, row[column]?.length ?? 0), 0),
  );
  return rows
    .map(
      (row) =>
        `${row
          .map((text, column) => text.padEnd(widths[column] ?? 0))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}
