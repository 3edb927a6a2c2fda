import type { Leaf, Piece, RunLayout } from '../../layout/index.ts';
import type { FlatStock, Job, Material } from '../../model/index.ts';
import { HINGE_PLACES, SOAKED, THIRD_HINGE } from '../../standards/index.ts';
import { toInches } from '../../units/index.ts';
import { bracedSag, hingePull, rectangle, unbracedSag } from '../formulas/index.ts';
import type { Working } from '../working.ts';
import { amount, inchesOf, input, known, STATICS, step } from './amounts.ts';
import { densityOf, strengthOf } from './material-values.ts';

/** What a leaf weighs and does to what it hangs on. Pounds. */
export interface GateFigures {
  readonly leaf: Leaf;
  readonly dry: number;
  readonly wet: number;
  /** Two, or three where the leaf is high, wide or heavy. */
  readonly hinges: 2 | 3;
  readonly workings: readonly Working[];
}

export function gateFigures(run: RunLayout, _job: Job): readonly GateFigures[] {
  return run.leaves.map((leaf) => figuresOf(run, leaf));
}

function figuresOf(run: RunLayout, leaf: Leaf): GateFigures {
  const pieces = run.pieces.filter(({ gate, role }) => gate === leaf.gate && role !== 'post');
  const dry = pieces.reduce(
    (sum, piece) => sum + volumeOf(piece) * densityOf(materialOf(leaf, piece)).value,
    0,
  );
  const wood = pieces.every((piece) => (materialOf(leaf, piece)?.kind.value ?? 'wood') === 'wood');
  const wet = wood ? dry * SOAKED.value : dry;
  const [width, height] = [toInches(leaf.width), toInches(leaf.height)];
  const apart = Math.max(height / 2, height - HINGE_PLACES.fromTop.value - HINGE_PLACES.fromBottom.value);
  const pull = hingePull({ weight: wet, reach: width / 2, hingesApart: apart });
  const three =
    height > THIRD_HINGE.height.value || width > THIRD_HINGE.width.value || dry > THIRD_HINGE.weight.value;
  const hinges = three ? 3 : 2;
  const where = {
    origin: leaf.spec.origin,
    label: `${run.spec.name}, gate ${leaf.gate}`,
    run: run.key,
    pieces: pieces.map(({ key }) => key),
  };
  const density = densityOf(leaf.spec.frame.value.material);
  const weight = [
    input('pieces of the leaf', 'n', amount(pieces.length, ''), 'as laid out'),
    known('weight of the frame when dry', 'γ', density, 'lb/ft3'),
    ...(wood ? [input('soaked', '', amount(SOAKED.value, ''), 'common practice')] : []),
  ];
  const hinge: Working = {
    code: 'gate-hinges',
    title: `Weight of ${leaf.gate} and pull of its hinges`,
    where,
    formula: 'T = W (b / 2) / a',
    inputs: [
      ...weight,
      input('width of the leaf', 'b', inchesOf(leaf.width), 'as laid out'),
      input('height of the leaf', '', inchesOf(leaf.height), 'as laid out'),
      input('between outer hinges', 'a', amount(apart, 'in'), '6 in from the top, 10 in from the bottom'),
    ],
    steps: [
      step('weight dry', amount(dry, 'lb')),
      step('weight wet, W', amount(wet, 'lb')),
      step('hinges', amount(hinges, '')),
      step('moment of the weight about the hinge line', amount((wet * width) / 24, 'ft-lb')),
    ],
    figure: amount(pull, 'lb'),
    basis: [THIRD_HINGE.weight, THIRD_HINGE.height, THIRD_HINGE.width, HINGE_PLACES.fromTop],
    notes: [
      'Top hinge pulls, bottom hinge pushes, each so much; hinges of the leaf’s weight class and fasteners that hold this pull. Hardware is not counted.',
    ],
  };
  return {
    leaf,
    dry,
    wet,
    hinges,
    workings: [hinge, sagOf(leaf, pieces, wet, where), hingePost(run, leaf, wet, where)],
  };
}

/** The longest and the shortest edge along the grain, averaged; ft3. */
function volumeOf({ cut }: Piece): number {
  const length = (toInches(cut.longPoint) + toInches(cut.shortPoint)) / 2;
  return (toInches(cut.width) * toInches(cut.thickness) * length) / 1_728;
}

function materialOf(leaf: Leaf, { role, cut }: Piece): Material | undefined {
  const { spec } = leaf;
  const stocks: readonly (FlatStock | undefined)[] = [
    ...spec.infill.pattern.repeat.map(({ value }) => value),
    spec.frame.value,
    spec.brace?.value,
    spec.infill.cleat?.value,
  ];
  const found = stocks.find((stock) => stock?.name === cut.stock);
  return found?.material ?? (role === 'slat' ? undefined : spec.frame.value.material);
}

/** Clear heights between its rails, from the bottom. */
function panesOf(pieces: readonly Piece[]): readonly number[] {
  const rails = pieces
    .filter(({ role }) => role === 'rail')
    .map(({ solid }) => solid.vertices.map(([, , z]) => z))
    .map((heights) => [Math.min(...heights), Math.max(...heights)] as const)
    .sort((a, b) => a[0] - b[0]);
  return rails.slice(1).map(([low], index) => Math.max(1, toInches(low - (rails[index]?.[1] ?? low))));
}

function sagOf(leaf: Leaf, pieces: readonly Piece[], weight: number, where: Working['where']): Working {
  const frame = leaf.spec.frame.value;
  const strength = strengthOf(frame.material, {
    width: frame.width.value,
    thickness: frame.thickness.value,
    flat: false,
  });
  const [width, height] = [toInches(leaf.width), toInches(leaf.height)];
  const member = toInches(frame.width.value);
  const inside = Math.max(1, width - 2 * member);
  const panes = panesOf(pieces);
  const [rise = Math.max(1, height - 2 * member)] = panes;
  const brace = leaf.spec.brace?.value;
  if (!brace) {
    const { inertia } = rectangle(toInches(frame.thickness.value), member);
    const sag = unbracedSag(weight, { length: inside, inertia, stiffness: strength.stiffness.value });
    return {
      code: 'gate-sag',
      title: `Drop of the latch side of ${leaf.gate}, without a brace`,
      where,
      formula: 'd = (W / 4) L³ / (12 E I)',
      inputs: [
        input('weight wet', 'W', amount(weight, 'lb'), 'the pieces, soaked'),
        input('rail between stiles', 'L', amount(inside, 'in'), 'as laid out'),
        known('stiffness', 'E', strength.stiffness, 'psi'),
      ],
      steps: [step('second moment of a rail, I', amount(inertia, 'in4'))],
      figure: amount(sag, 'in'),
      basis: [STATICS, SOAKED],
      notes: ['If its corners were rigid. Corners of wood give: without a brace it drops by more.'],
    };
  }
  const length = Math.hypot(inside, rise);
  const area = toInches(brace.width.value) * toInches(brace.thickness.value);
  const alone = (panes.length > 0 ? panes : [rise]).map((each) =>
    bracedSag(weight, {
      length: Math.hypot(inside, each),
      rise: each,
      area,
      stiffness: strength.stiffness.value,
    }),
  );
  // Stiles stay straight, so every space between rails drops by the same, and each brace takes its share.
  const sag = 1 / alone.reduce((sum, one) => sum + 1 / one.sag, 0);
  const push = Math.max(...alone.map((one) => (one.push * sag) / one.sag));
  return {
    code: 'gate-sag',
    title: `Drop of the latch corner of ${leaf.gate}`,
    where,
    formula:
      alone.length > 1
        ? 'd = 1 / Σ (1 / di), di = W L / (2 E A sin² a)'
        : 'd = N L / (E A sin a), N = W / (2 sin a)',
    inputs: [
      input('weight wet', 'W', amount(weight, 'lb'), 'the pieces, soaked'),
      ...(alone.length > 1
        ? [input('braces', '', amount(alone.length, ''), 'one in every space between rails')]
        : []),
      input(
        'brace',
        'L',
        amount(length, 'in'),
        alone.length > 1 ? 'corner to corner in the lowest space' : 'corner to corner inside the frame',
      ),
      input('its rise', '', amount(rise, 'in'), 'as laid out'),
      known('stiffness', 'E', strength.stiffness, 'psi'),
    ],
    steps: [
      step(alone.length > 1 ? 'greatest push in a brace, N' : 'push in the brace, N', amount(push, 'lb')),
      step('its section, A', amount(area, 'in2')),
    ],
    figure: amount(sag, 'in'),
    basis: [STATICS, SOAKED],
    notes: ['Of the brace alone; its ends have to bear on the frame, and play in hinges adds to it.'],
  };
}

/** What the leaf's weight does to the hinge post, along the run. */
function hingePost(run: RunLayout, leaf: Leaf, weight: number, where: Working['where']): Working {
  const post = leaf.spec.post.value;
  const [along, through] = [toInches(post.along.value), toInches(post.through.value)];
  const section = rectangle(through, along, post.wall && toInches(post.wall.value));
  const reach = along / 2 + toInches(leaf.spec.hingeGap.value) + toInches(leaf.width) / 2;
  const moment = weight * reach;
  const { allowable } = strengthOf(post.material, {
    width: post.along.value,
    thickness: post.through.value,
    flat: false,
  });
  // The weight stays: it has the load duration factor of dead load, 0.9, in place of 1.6.
  const wood = (post.material?.kind.value ?? 'wood') === 'wood' && !post.material?.bending;
  const lasting = allowable && (wood ? (allowable.value * 0.9) / 1.6 : allowable.value);
  return {
    code: 'hinge-post',
    title: `Bending of the hinge post of ${leaf.gate} under the leaf's weight`,
    where: { ...where, label: `${run.spec.name}, hinge post of ${leaf.gate}` },
    formula: 'fb = W r / S',
    inputs: [
      input('weight wet', 'W', amount(weight, 'lb'), 'the pieces, soaked'),
      input('middle of the leaf to middle of the post', 'r', amount(reach, 'in'), 'as laid out'),
      ...(lasting === undefined
        ? []
        : [input('allowable bending, lasting load', "Fb'", amount(lasting, 'psi'), allowable?.from ?? '')]),
    ],
    steps: [
      step('moment at grade', amount(moment / 12, 'ft-lb')),
      step('section modulus S along the run', amount(section.modulus, 'in3')),
    ],
    figure: amount(moment / section.modulus, 'psi'),
    ...(lasting === undefined
      ? {}
      : { limit: { name: "Fb'", is: 'at most' as const, ...amount(lasting, 'psi') } }),
    basis: [STATICS, SOAKED, ...(allowable?.published ? [allowable.published] : [])],
    notes: ['The wind on the post stands by itself under its own figure.'],
  };
}
