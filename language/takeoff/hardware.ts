import { bagsFor, gateFigures, holesOf, screwedTo } from '../figures/index.ts';
import type { Layout, Piece, RunLayout } from '../layout/index.ts';
import { isMetric, type Job } from '../model/index.ts';
import {
  ceilToStep,
  convert,
  formatLength,
  IMPERIAL,
  inches,
  METRIC,
  mm,
  type Ticks,
  toInches,
} from '../units/index.ts';
import { demandOf } from './demand.ts';
import { bolts, cables, spacers } from './holding-hardware.ts';

/** Something that is bought besides boards, counted from the pieces. */
export interface Item {
  /** The name a `price` is given by. */
  readonly name: string;
  readonly what: string;
  /** In `unit`, before what is bought more. */
  readonly net: number;
  /** To be bought: whole where it comes whole. */
  readonly count: number;
  readonly unit: string;
  /** How it was counted. */
  readonly rule: string;
}

/** More screws than are counted (common practice: a tenth). */
const MORE_SCREWS = 0.1;
/** A slat as narrow as this is held by one screw at a crossing, a wider one by two (common practice). */
const ONE_SCREW = { imperial: inches(2), metric: mm(50) };
/** A filler is screwed at a slant this often, no farther apart (common practice). */
const FILLER_SCREWS = { imperial: inches(18), metric: mm(450) };
/** Of one coat, smooth wood (common practice: 175 to 250 sq ft a gallon; 4 to 6 m² a liter). */
const COVERAGE = { imperial: 200, metric: 5 };

/** Fasteners, concrete, gravel, caps, hinges, latches, sealer and finish; each counted, none by the area of the drawing. */
export function hardwareOf(layout: Layout, job: Job): readonly Item[] {
  const metric = isMetric(job.measure.value);
  const runs = layout.runs.filter(({ sound }) => sound);
  const pieces = runs.flatMap((run) => run.pieces);
  return [
    ...screws(runs, job, metric),
    ...concrete(runs, job, metric),
    ...counted(pieces, 'cap', 'cap', 'post caps', 'one a post'),
    ...spacers(pieces, job),
    ...bolts(runs, metric),
    ...leaves(runs, job),
    ...cables(pieces, job),
    ...sealer(layout, job),
    finish(runs, metric),
  ].filter(({ net }) => net > 0);
}

/** Screws where slats lie on what holds them, at each crossing by the slat's width, and along fillers; as long as thrice the thickness. */
function screws(runs: readonly RunLayout[], job: Job, metric: boolean): readonly Item[] {
  const byLength = new Map<Ticks, number>();
  const fillers = runs.some(({ pieces }) => pieces.some(({ role }) => role === 'filler'));
  const add = ({ cut }: Piece, count: number) => {
    const length = job.screws?.value ?? screwLength(cut.thickness, metric);
    byLength.set(length, (byLength.get(length) ?? 0) + count);
  };
  for (const run of runs) {
    const byKey = new Map([...run.pieces, ...run.borrowed].map((piece) => [piece.key, piece]));
    for (const slat of run.pieces) {
      if (slat.role === 'filler') {
        add(slat, fillerScrews(slat, metric) * slat.supports.length);
      }
      if (slat.role !== 'slat' && slat.role !== 'trim') continue;
      const each = slat.cut.width <= (metric ? ONE_SCREW.metric : ONE_SCREW.imperial) ? 1 : 2;
      const holders = screwedTo(run, slat, byKey);
      // Held between two cleats it is screwed through one of them.
      const cleats = holders.filter(({ role }) => role === 'cleat').length;
      const others = holders.length - cleats;
      const crossings = others + Math.ceil(cleats / 2);
      add(slat, crossings * each);
    }
  }
  return [...byLength]
    .filter(([, net]) => net > 0)
    .map(([length, net]) => ({
      name: 'screw',
      what: `screws ${formatLength(length, metric ? METRIC : { ...IMPERIAL, unit: 'inches' })} long`,
      net,
      count: Math.ceil(net * (1 + MORE_SCREWS)),
      unit: '',
      rule: `one a crossing for slats up to 2" (50 mm), two for wider${fillers ? ', every 18" (450 mm) through a filler on each of its posts' : ''}, and a tenth more; as long as stated, else as three thicknesses of the slat`,
    }));
}

/** At both ends and between them, into the post it stands against. */
function fillerScrews({ cut }: Piece, metric: boolean): number {
  return 1 + Math.max(1, Math.ceil(cut.longPoint / (metric ? FILLER_SCREWS.metric : FILLER_SCREWS.imperial)));
}

/** Twice the thickness goes into what holds it; up to the next quarter of an inch, or 5 mm. */
function screwLength(thickness: Ticks, metric: boolean): Ticks {
  return ceilToStep(3 * thickness, metric ? mm(5) : inches(0.25));
}

function concrete(runs: readonly RunLayout[], job: Job, metric: boolean): readonly Item[] {
  const all = runs.flatMap((run) => holesOf(run, job) ?? []);
  const [first] = all;
  if (!first) return [];
  const cubic = all.reduce((sum, one) => sum + one.concrete, 0);
  const gravel = all.reduce((sum, one) => sum + one.gravel, 0);
  const bags = cubic / first.bag.yields;
  const stone = metric ? convert({ value: gravel, unit: 'ft3' }, 'm3') : gravel;
  return [
    {
      name: 'concrete',
      what: `concrete, bags of ${first.bag.name}`,
      net: bags,
      count: bagsFor(cubic, first.bag.yields),
      unit: 'bag',
      rule: 'holes less posts, a tenth more, rounded up once for the job',
    },
    {
      name: 'gravel',
      what: 'gravel',
      net: stone,
      count: Math.ceil(stone * 100 - 1e-9) / 100,
      unit: metric ? 'm3' : 'cu ft',
      rule: 'under the posts',
    },
  ];
}

function counted(
  pieces: readonly Piece[],
  role: Piece['role'],
  name: string,
  what: string,
  rule: string,
): readonly Item[] {
  const net = pieces.filter((piece) => piece.role === role).length;
  return [{ name, what, net, count: net, unit: '', rule }];
}

function leaves(runs: readonly RunLayout[], job: Job): readonly Item[] {
  const all = runs.flatMap((run) => gateFigures(run, job));
  const hinges = all.reduce((sum, one) => sum + (one.leaf.spec.hingeCount?.value ?? one.hinges), 0);
  return [
    {
      name: 'hinge',
      what: 'gate hinges',
      net: hinges,
      count: hinges,
      unit: '',
      rule: 'as stated, else two or three a leaf by its height, width and weight',
    },
    { name: 'latch', what: 'gate latches', net: all.length, count: all.length, unit: '', rule: 'one a leaf' },
  ];
}

/** Ends of treated pieces of the screen, each of which is cut. */
export function treatedEnds(layout: Layout, job: Job): number {
  return demandOf(layout, job).reduce(
    (sum, { stock, count, temporary }) => sum + (stock.material?.treated && !temporary ? 2 * count : 0),
    0,
  );
}

function sealer(layout: Layout, job: Job): readonly Item[] {
  const ends = treatedEnds(layout, job);
  if (ends === 0) return [];
  const rule = `for ${ends} ends of treated pieces`;
  return [{ name: 'sealer', what: 'sealer for cut ends', net: 1, count: 1, unit: 'can', rule }];
}

/** Square inches of faces and edges of a piece that are coated: its length times the girth of its section. */
export function coatedOf({ role, cut }: Piece, { embed }: Pick<RunLayout, 'embed'>): number {
  if (role === 'cap' || role === 'cable') return 0;
  const length = role === 'post' ? Math.max(0, cut.longPoint - embed.value) : cut.longPoint;
  return toInches(length) * 2 * toInches(meanWidth(cut) + cut.thickness);
}

/** Of a scribed board as wide as it is all along together. */
function meanWidth({ width, longPoint, scribe }: Piece['cut']): number {
  if (!scribe || longPoint === 0) return width;
  const area = scribe.reduce((sum, to, i) => {
    const from = scribe[i - 1];
    return from ? sum + ((to.at - from.at) * (to.width + from.width)) / 2 : sum;
  }, 0);
  return area / longPoint;
}

/** All faces and edges of every piece of wood above ground, once; posts without their feet. */
function finish(runs: readonly RunLayout[], metric: boolean): Item {
  const area = runs.reduce(
    (sum, run) => sum + run.pieces.reduce((all, piece) => all + coatedOf(piece, run), 0),
    0,
  );
  const coated = metric ? convert({ value: area, unit: 'in2' }, 'm2') : area / 144;
  const net = coated / (metric ? COVERAGE.metric : COVERAGE.imperial);
  return {
    name: 'finish',
    what: `finish for one coat on ${Math.round(coated * 10) / 10} ${metric ? 'm²' : 'sq ft'} of wood`,
    net,
    count: Math.ceil(net * 4 - 1e-9) / 4,
    unit: metric ? 'liter' : 'gallon',
    rule: metric ? 'all faces and edges; 5 m² a liter' : 'all faces and edges; 200 sq ft a gallon',
  };
}
