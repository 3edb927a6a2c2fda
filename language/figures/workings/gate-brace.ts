import type { Leaf, Piece } from '../../layout/index.ts';
import type { Origin } from '../../model/index.ts';
import { SOAKED } from '../../standards/index.ts';
import { toInches } from '../../units/index.ts';
import { bracedSag, cablePulls, rectangle, unbracedSag } from '../formulas/index.ts';
import type { Working } from '../working.ts';
import { amount, input, known, STATICS, step } from './amounts.ts';
import { strengthOf } from './material-values.ts';

/** Clear heights between its rails, from the bottom. */
function panesOf(pieces: readonly Piece[]): readonly number[] {
  const rails = pieces
    .filter(({ role }) => role === 'rail')
    .map(({ solid }) => solid.vertices.map(([, , z]) => z))
    .map((heights) => [Math.min(...heights), Math.max(...heights)] as const)
    .sort((a, b) => a[0] - b[0]);
  return rails.slice(1).map(([low], index) => Math.max(1, toInches(low - (rails[index]?.[1] ?? low))));
}

/** How far the latch corner drops by the brace's giving, or by the rails' where there is none. */
export function sagOf(
  leaf: Leaf,
  pieces: readonly Piece[],
  weight: number,
  where: Working['where'],
): Working {
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

/** What a cable in place of a brace is pulled by; of several the one that is pulled most. */
export function cableTension(
  leaf: Leaf,
  origin: Origin,
  pieces: readonly Piece[],
  weight: number,
  where: Working['where'],
): Working {
  const inside = Math.max(1, toInches(leaf.width - 2 * leaf.spec.frame.value.width.value));
  const rises = panesOf(pieces);
  const pulls = cablePulls(
    weight,
    rises.map((rise) => ({ length: Math.hypot(inside, rise), rise })),
  );
  const most = pulls.indexOf(Math.max(...pulls));
  const rise = rises[most] ?? 1;
  const length = Math.hypot(inside, rise);
  return {
    code: 'gate-cable',
    title: `Pull of the cable of ${leaf.gate}`,
    where: { ...where, origin },
    formula:
      pulls.length > 1 ? 'T = Wi / (2 sin a), Wi / W = (sin² a / L) / Σ (sin² a / L)' : 'T = W / (2 sin a)',
    inputs: [
      input('weight wet', 'W', amount(weight, 'lb'), 'the pieces, soaked'),
      ...(pulls.length > 1
        ? [input('cables', '', amount(pulls.length, ''), 'one in every space between rails')]
        : []),
      input('inside the frame, across', 'b', amount(inside, 'in'), 'as laid out'),
      input('inside the frame, up', 'h', amount(rise, 'in'), 'as laid out'),
    ],
    steps: [
      step('corner to corner, L = √(b² + h²)', amount(length, 'in')),
      step('sin a = h / L', amount(rise / length, '')),
    ],
    figure: amount(pulls[most] ?? 0, 'lb'),
    basis: [STATICS, SOAKED],
    notes: [
      'Half the weight hangs at the latch; the cable runs from the top corner at the hinges to the low corner at the latch.',
      'Rope, turnbuckle and eyes of a working load over this pull, on their makers’ word; the turnbuckle takes up what the rope gives.',
    ],
  };
}
