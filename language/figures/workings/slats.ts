import type { Piece, RunLayout } from '../../layout/index.ts';
import { type FlatStock, type InfillSpec, type Job, limitOf, type Origin } from '../../model/index.ts';
import { CREEP, SIMPLE_SPAN, SOAKED } from '../../standards/index.ts';
import { formatNumber, type Ticks, toInches } from '../../units/index.ts';
import { boxOf } from '../box.ts';
import { clearSpan } from '../clear-span.ts';
import { continuousBeam, rectangle } from '../formulas/index.ts';
import type { Working, WorkingInput, WorkingStep } from '../working.ts';
import { amount, inchesOf, input, known, step } from './amounts.ts';
import { densityOf, type Strength, strengthOf } from './material-values.ts';
import { oncePerRun } from './remember.ts';
import { type WindLoad, windOn } from './wind-on.ts';

/** Past this share of its span a slat looks wavy in wind (common practice). */
export const WAVY = 120;

/** What a stock of slats comes to where it spans widest in a run or a gate leaf. */
export interface SlatFigures {
  readonly stock: FlatStock;
  readonly gate?: string;
  readonly slat: Piece;
  /** Clear, the longest. */
  readonly span: Ticks;
  readonly bending: Working;
  readonly deflection: Working;
  /** Of level slats alone. */
  readonly sag?: Working;
  /** Over the span: 120 stands for L/120. */
  readonly spanOver: number;
  /** Stress over what is allowed; missing where nothing is published or stated. */
  readonly used?: number;
  readonly windStated: boolean;
}

/** One for each stock of slats, in the run's bays and in each leaf. */
export const slatFigures = oncePerRun(workOutSlats);

function workOutSlats(run: RunLayout, job: Job): readonly SlatFigures[] {
  const wind = windOn(run, job);
  const byKey = new Map([...run.borrowed, ...run.pieces].map((piece) => [piece.key, piece]));
  const infills: readonly [InfillSpec, string | undefined, Origin][] = [
    [run.spec.infill, undefined, run.spec.infill.fill],
    ...run.leaves.map((leaf): [InfillSpec, string, Origin] => [
      leaf.spec.infill,
      leaf.gate,
      leaf.spec.origin,
    ]),
  ];
  return infills.flatMap(([spec, gate, origin]) =>
    stocksOf(spec).flatMap((stock) => {
      const widest = widestOf(run, stock, gate, byKey);
      return widest ? [figuresOf(run, job, stock, gate, widest, wind, origin, spec.flip.upright)] : [];
    }),
  );
}

export function stocksOf(spec: InfillSpec): readonly FlatStock[] {
  return [...new Map(spec.pattern.repeat.map(({ value }) => [value.name, value])).values()];
}

function widestOf(
  run: RunLayout,
  stock: FlatStock,
  gate: string | undefined,
  byKey: ReadonlyMap<string, Piece>,
): { slat: Piece; span: Ticks; spans: readonly number[] } | undefined {
  let worst: { slat: Piece; span: Ticks } | undefined;
  const asked = new Set<string>();
  for (const slat of run.pieces) {
    if (slat.role !== 'slat' || slat.gate !== gate || slat.cut.stock !== stock.name) continue;
    const held = slat.supports.join('\n');
    if (asked.has(held)) continue;
    asked.add(held);
    const span = clearSpan(slat, byKey);
    if (span > 0 && (!worst || span > worst.span)) worst = { slat, span };
  }
  return worst && { ...worst, spans: spansOf(worst.slat, worst.span, byKey) };
}

/** Between the middles of what holds it where that is more than two pieces; else its one clear span. Inches. */
function spansOf(slat: Piece, span: Ticks, byKey: ReadonlyMap<string, Piece>): readonly number[] {
  const { low, high } = boxOf(slat);
  const axis = high[0] - low[0] >= high[2] - low[2] ? 0 : 2;
  const middles = slat.supports
    .flatMap((key) => byKey.get(key) ?? [])
    .map((piece) => {
      const box = boxOf(piece);
      return (box.low[axis] + box.high[axis]) / 2;
    })
    .sort((a, b) => a - b)
    // Cleats before and behind hold it at one place.
    .filter((at, i, all) => i === 0 || at - (all[i - 1] ?? 0) > span / 20);
  if (middles.length < 3) return [toInches(span)];
  return middles.slice(1).map((at, i) => toInches(at - (middles[i] ?? 0)));
}

function figuresOf(
  run: RunLayout,
  job: Job,
  stock: FlatStock,
  gate: string | undefined,
  { slat, span, spans }: { slat: Piece; span: Ticks; spans: readonly number[] },
  wind: WindLoad,
  origin: Origin,
  upright: boolean,
): SlatFigures {
  const [width, thickness] = [toInches(slat.cut.width), toInches(slat.cut.thickness)];
  const wall = stock.wall && toInches(stock.wall.value);
  const section = rectangle(width, thickness, wall);
  const strength = strengthOf(stock.material, {
    width: slat.cut.width,
    thickness: slat.cut.thickness,
    flat: true,
  });
  const load = (wind.onSlats / 144) * width;
  const beam = continuousBeam(spans, load, strength.stiffness.value * section.inertia);
  const longest = Math.max(...spans);
  const over = limitOf(job, 'slat-bends', 'times', { imperial: WAVY, metric: WAVY });
  const stress = beam.moment / section.modulus;
  const where = {
    origin,
    label: `${run.spec.name}${gate === undefined ? '' : `, gate ${gate}`}, ${stock.name}`,
    run: run.key,
    pieces: [slat.key],
  };
  const inputs: WorkingInput[] = [
    input('clear span', 'L', inchesOf(span), 'as laid out'),
    input('spans', 'n', amount(spans.length, ''), 'by what holds it'),
    input('width', 'b', inchesOf(slat.cut.width), 'stated'),
    input('thickness', 't', inchesOf(slat.cut.thickness), 'stated'),
    ...(stock.wall ? [input('wall', '', inchesOf(stock.wall.value), 'stated')] : []),
    input('wind on the slats', 'p', amount(wind.onSlats, 'psf'), wind.working.title),
    known('stiffness', 'E', strength.stiffness, 'psi'),
  ];
  const common: WorkingStep[] = [
    step('load of one slat, w = p b', amount(load, 'lb/in')),
    step(spans.length > 1 ? 'moment, several spans' : 'moment, w L² / 8', amount(beam.moment, 'in-lb')),
  ];
  const notes = [
    wind.stated ? 'Wind as the job states it.' : 'Wind is not stated: the floor of the standard.',
  ];
  const lumber = strength.lumber;
  const allowable = strength.allowable;
  return {
    stock,
    ...(gate === undefined ? {} : { gate }),
    slat,
    span,
    spanOver: longest / Math.abs(beam.deflection),
    ...(allowable ? { used: stress / allowable.value } : {}),
    windStated: wind.stated,
    bending: {
      code: 'slat-bending',
      title: `Bending of ${stock.name} in wind`,
      where,
      formula: 'fb = M / S',
      inputs: [...inputs, ...strengthInputs(strength)],
      steps: [
        ...common,
        step('section modulus S', amount(section.modulus, 'in3')),
        step('fb = M / S', amount(stress, 'psi')),
      ],
      figure: amount(stress, 'psi'),
      ...(allowable
        ? { limit: { name: "Fb'", is: 'at most' as const, ...amount(allowable.value, 'psi') } }
        : {}),
      basis: [SIMPLE_SPAN, ...(lumber ? [lumber.values] : allowable?.published ? [allowable.published] : [])],
      notes: allowable ? notes : [...notes, 'No design value is published for it here: state its `bending`.'],
    },
    deflection: {
      code: 'slat-deflection',
      title: `Deflection of ${stock.name} in wind`,
      where,
      formula: spans.length > 1 ? 'theorem of three moments' : 'd = 5 w L⁴ / (384 E I)',
      inputs,
      steps: [...common, step('second moment I', amount(section.inertia, 'in4'))],
      figure: amount(Math.abs(beam.deflection), 'in'),
      limit: {
        name: `L/${formatNumber(over)}, ${over === WAVY ? 'common practice' : 'the job'}`,
        is: 'at most',
        ...amount(longest / over, 'in'),
      },
      basis: [SIMPLE_SPAN],
      notes,
    },
    ...(upright ? {} : { sag: sagOf(stock, slat, spans, where, strength) }),
  };
}

/** Reference value and factors of sawn lumber, or the allowable stress as it is known. */
export function strengthInputs({ allowable, lumber }: Strength): readonly WorkingInput[] {
  if (!allowable) return [];
  if (!lumber || allowable.from.startsWith('stated'))
    return [known('allowable bending', "Fb'", allowable, 'psi')];
  const { values, factors } = lumber;
  return [
    known('reference bending value', 'Fb', { value: values.bending, from: allowable.from }, 'psi'),
    ...(['CD', 'CM', 'CF', 'Cfu', 'Ci', 'CL'] as const)
      .filter((symbol) => symbol === 'CD' || symbol === 'CM' || factors[symbol] !== 1)
      .map((symbol) => input(FACTORS[symbol], symbol, amount(factors[symbol], ''), 'NDS')),
    known('allowable bending', "Fb'", allowable, 'psi'),
  ];
}

const FACTORS = {
  CD: 'load duration, wind',
  CM: 'wet service',
  CF: 'size',
  Cfu: 'flat use',
  Ci: 'incising',
  CL: 'stability',
} as const;

function sagOf(
  stock: FlatStock,
  slat: Piece,
  spans: readonly number[],
  where: Working['where'],
  { stiffness }: Strength,
): Working {
  const [width, thickness] = [toInches(slat.cut.width), toInches(slat.cut.thickness)];
  const section = rectangle(thickness, width, stock.wall && toInches(stock.wall.value));
  const density = densityOf(stock.material);
  const wood = (stock.material?.kind.value ?? 'wood') === 'wood';
  const soaked = wood ? SOAKED.value : 1;
  const creep = wood || stock.material?.kind.value === 'composite' ? CREEP.wet : 1;
  const load = ((density.value * soaked) / 1_728) * section.area;
  const beam = continuousBeam(spans, load, stiffness.value * section.inertia);
  return {
    code: 'slat-sag',
    title: `Sag of ${stock.name} under its own weight`,
    where,
    formula:
      spans.length > 1 ? 'd = kcr d₁, d₁ by the theorem of three moments' : 'd = kcr 5 w L⁴ / (384 E I)',
    inputs: [
      input('span', 'L', amount(Math.max(...spans), 'in'), 'as laid out'),
      known('weight when dry', 'γ', density, 'lb/ft3'),
      ...(wood ? [input('soaked', '', amount(soaked, ''), 'common practice')] : []),
      ...(creep === 1 ? [] : [input('creep', 'kcr', amount(creep, ''), 'NDS 3.5.2, wet')]),
      known('stiffness', 'E', stiffness, 'psi'),
    ],
    steps: [
      step('weight of one slat, w', amount(load, 'lb/in')),
      step('second moment about the flat axis, I = t b³ / 12', amount(section.inertia, 'in4')),
      step('at first, d₁', amount(Math.abs(beam.deflection), 'in')),
    ],
    figure: amount(creep * Math.abs(beam.deflection), 'in'),
    basis: [SIMPLE_SPAN, CREEP, SOAKED],
    notes: [],
  };
}

/**
 * The largest clear span of a stock, on two supports, before it bends past that over `over` or past what it is allowed, in a wind
 * of so many psf on the slat itself. Inches.
 */
export function largestSpan(
  stock: FlatStock,
  pressure: number,
  over: number = WAVY,
): { readonly span: number; readonly by: 'deflection' | 'strength' } {
  const [width, thickness] = [toInches(stock.width.value), toInches(stock.thickness.value)];
  const section = rectangle(width, thickness, stock.wall && toInches(stock.wall.value));
  const strength = strengthOf(stock.material, {
    width: stock.width.value,
    thickness: stock.thickness.value,
    flat: true,
  });
  const load = (pressure / 144) * width;
  const stiff = Math.cbrt(
    (strength.stiffness.value * section.inertia) / (SIMPLE_SPAN.deflection * load * over),
  );
  if (!strength.allowable) return { span: stiff, by: 'deflection' };
  const strong = Math.sqrt((strength.allowable.value * section.modulus) / (SIMPLE_SPAN.moment * load));
  return strong < stiff ? { span: strong, by: 'strength' } : { span: stiff, by: 'deflection' };
}
