import type { Leaf, RunLayout } from '../../layout/index.ts';
import type { Job } from '../../model/index.ts';
import { HINGE_PLACES, SOAKED, THIRD_HINGE } from '../../standards/index.ts';
import { toInches } from '../../units/index.ts';
import { hingePull } from '../formulas/index.ts';
import type { Working } from '../working.ts';
import { amount, inchesOf, input, known, STATICS, step } from './amounts.ts';
import { cableTension, sagOf } from './gate-brace.ts';
import { isWood, materialOf, volumeOf } from './leaf-weight.ts';
import { densityOf, strengthOf } from './material-values.ts';
import { postSection } from './post-section.ts';

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
  let [dry, wet] = [0, 0];
  for (const piece of pieces) {
    const material = materialOf(leaf, piece);
    const own = volumeOf(leaf, piece) * densityOf(material).value;
    dry += own;
    wet += isWood(material) ? own * SOAKED.value : own;
  }
  const wood = pieces.some((piece) => isWood(materialOf(leaf, piece)));
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
    ...(wood ? [input('soaked wood', '', amount(SOAKED.value, ''), 'common practice')] : []),
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
    workings: [
      hinge,
      leaf.spec.cable
        ? cableTension(leaf, leaf.spec.cable, pieces, wet, where)
        : sagOf(leaf, pieces, wet, where),
      hingePost(run, leaf, wet, where),
    ],
  };
}

/** What the leaf's weight does to the hinge post, along the run. */
function hingePost(run: RunLayout, leaf: Leaf, weight: number, where: Working['where']): Working {
  const post = leaf.spec.post.value;
  const along = toInches(post.along.value);
  const bay = run.bays.find(({ number }) => number === leaf.bay);
  const mark = run.posts.find(({ from, to }) =>
    leaf.spec.hinges.value === 'left' ? to === bay?.from : from === bay?.to,
  );
  const bent = postSection(run, mark ?? { key: '' }, post, 'along');
  const { section } = bent;
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
      ...bent.inputs,
    ],
    steps: [step('moment at grade', amount(moment / 12, 'ft-lb')), ...bent.steps],
    figure: amount(moment / section.modulus, 'psi'),
    ...(lasting === undefined
      ? {}
      : { limit: { name: "Fb'", is: 'at most' as const, ...amount(lasting, 'psi') } }),
    basis: [STATICS, SOAKED, ...(allowable?.published ? [allowable.published] : [])],
    notes: ['The wind on the post stands by itself under its own figure.', ...bent.notes],
  };
}
