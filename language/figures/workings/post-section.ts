import type { Groove, Piece, PostMark, RunLayout } from '../../layout/index.ts';
import type { PostStock } from '../../model/index.ts';
import { toInches } from '../../units/index.ts';
import { netSection, rectangle, type Section } from '../formulas/index.ts';
import type { WorkingInput, WorkingStep } from '../working.ts';
import { amount, inchesOf, input, step } from './amounts.ts';

/** What of a post bends, and how that is told. */
export interface PostSection {
  readonly section: Section;
  readonly inputs: readonly WorkingInput[];
  readonly steps: readonly WorkingStep[];
  readonly notes: readonly string[];
}

/**
 * The section of a post that bends, through the run (in wind) or along it: what grooves leave of it, as if they went
 * down to grade; of a split post two halves that bend each for itself.
 */
export function postSection(
  run: RunLayout,
  { key }: Pick<PostMark, 'key'>,
  stock: PostStock,
  way: 'through' | 'along',
): PostSection {
  const [along, through] = [toInches(stock.along.value), toInches(stock.through.value)];
  const [breadth, depth] = way === 'through' ? [along, through] : [through, along];
  const says = way === 'through' ? 'section modulus S = b d² / 6' : 'section modulus S along the run';
  if (run.spec.infill.mounting.value.kind === 'split') return halves(rectangle(breadth, depth), way);
  const piece = run.pieces.find((one) => one.key === key);
  const grooves = piece?.cut.grooves;
  if (piece && grooves) return grooved(piece, grooves, [breadth, depth], way);
  const section = rectangle(breadth, depth, stock.wall && toInches(stock.wall.value));
  const tube = stock.wall && way === 'through';
  const modulus = amount(section.modulus, 'in3');
  return {
    section,
    inputs: stock.wall && way === 'through' ? [input('wall', '', inchesOf(stock.wall.value), 'stated')] : [],
    steps: [step(tube ? 'section modulus S of the tube' : says, modulus)],
    notes: [],
  };
}

function halves(half: Section, way: 'through' | 'along'): PostSection {
  const section = { area: 2 * half.area, inertia: 2 * half.inertia, modulus: 2 * half.modulus };
  const says =
    way === 'through' ? 'S = 2 b d² / 6, the sum of both halves' : 'S along the run, of both halves';
  return {
    section,
    inputs: [input('halves of the post', '', amount(2, ''), 'slats run through split posts')],
    steps: [
      step('section modulus of one half', amount(half.modulus, 'in3')),
      step(`section modulus ${says}`, amount(section.modulus, 'in3')),
    ],
    notes:
      way === 'through'
        ? ['Bolts keep the halves together but do not make them one: each bends about its own middle.']
        : [],
  };
}

function grooved(
  { cut }: Piece,
  grooves: readonly Groove[],
  [breadth, depth]: readonly [number, number],
  way: 'through' | 'along',
): PostSection {
  const cuts = grooves.map((groove) => {
    const [wide, deep] = [toInches(groove.width), toInches(groove.depth)];
    if (way === 'through')
      return {
        breadth: deep,
        depth: wide,
        off: toInches(groove.at + groove.width / 2 - cut.thickness / 2),
      };
    return { breadth: wide, depth: deep, off: (groove.side === 'start' ? -1 : 1) * (depth / 2 - deep / 2) };
  });
  const full = rectangle(breadth, depth);
  const section = netSection(breadth, depth, cuts);
  const [groove] = grooves;
  const lost = 100 * (1 - section.modulus / full.modulus);
  return {
    section,
    inputs: groove
      ? [
          input('grooves', 'n', amount(grooves.length, ''), 'as laid out'),
          input('a groove into the post', 'e', inchesOf(groove.depth), 'as laid out'),
          input('its width through the screen', 'w', inchesOf(groove.width), 'as laid out'),
        ]
      : [],
    steps: [
      step('section modulus before the grooves', amount(full.modulus, 'in3')),
      step(
        way === 'through' && cuts.every(({ off }) => Math.abs(off) < 1e-6)
          ? 'I = b d³ / 12 - n e w³ / 12'
          : 'I of what the grooves leave, about its own middle',
        amount(section.inertia, 'in4'),
      ),
      step('the grooves take', amount(lost, '%')),
      step('section modulus S that is left', amount(section.modulus, 'in3')),
    ],
    notes: ['Grooves end above grade; they are reckoned as if they went down to it, on the safe side.'],
  };
}
