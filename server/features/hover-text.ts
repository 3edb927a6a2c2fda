import { describeChoice, SPAN_OVER_THICKNESS } from '../../language/checks/index.ts';
import {
  type BothFaces,
  bothFaces,
  clearWhenOpen,
  cutOffAngle,
  faceOverlap,
  handOf,
  leafDiagonal,
  seeThrough,
  seeThroughFrom,
} from '../../language/figures/index.ts';
import type { FitResult, Leaf, RunLayout } from '../../language/layout/index.ts';
import { isMetric, type Material, type PatternSpec, type Stock } from '../../language/model/index.ts';
import {
  degrees,
  formatDegrees,
  formatLength,
  IMPERIAL,
  METRIC,
  type Measure,
  parseLength,
  type Ticks,
} from '../../language/units/index.ts';
import { bridgeLines } from './hover-bridge.ts';

// What things amount to, as lines of text. Markdown is made of them at the edge (see hover.ts).

const INCHES: Measure = { ...IMPERIAL, unit: 'inches' };

/** A stated length in both systems, and whether it had to be rounded. */
export function lengthLines(text: string): string[] {
  const length = parseLength(text);
  if (!length.ok) return [];
  const { ticks, exact, system } = length;
  const others = system === 'imperial' ? [METRIC] : [INCHES];
  const feet = system === 'imperial' && ticks >= 12 * 203_200 ? [formatLength(ticks, IMPERIAL)] : [];
  const spelled = [...feet, ...others.map((measure) => fine(ticks, measure))].filter((one) => one !== text);
  return [
    `${text} = ${[...new Set(spelled)].join(' = ')}`,
    exact ? 'kept exactly' : 'rounded once, to the nearest 1/203 200 inch',
  ];
}

/** To a tenth of a millimeter or a 64th of an inch, told to be about where it is not quite that. */
function fine(ticks: Ticks, measure: Measure): string {
  const step = measure.unit === 'mm' ? 800 : 3_175;
  return `${ticks % step === 0 ? '' : 'about '}${formatLength(ticks, { ...measure, step })}`;
}

export function stockLines(stock: Stock, measure: Measure): string[] {
  const show = both(measure);
  const section =
    stock.kind === 'post'
      ? `${show(stock.along.value)} along the run, ${show(stock.through.value)} through it`
      : stock.kind === 'channel'
        ? `stands ${show(stock.width.value)} off what it is on, ${show(stock.thickness.value)} through the screen, ${show(stock.thickness.value - 2 * stock.wall.value)} inside`
        : `${show(stock.width.value)} wide, ${show(stock.thickness.value)} thick`;
  const lines = [section];
  if (stock.kind === 'rip' && stock.parent) {
    lines.push(`ripped from ${stock.parent.name}, ${formatLength(stock.parent.width.value, measure)} wide`);
  }
  lines.push(stock.material ? materialLine(stock.material) : 'material not stated: taken as wood');
  const lengths = stock.lengths.map(({ value }) => formatLength(value, measure));
  lines.push(lengths.length > 0 ? `sold in ${lengths.join(', ')}` : 'lengths it is sold in are not stated');
  if (stock.kind === 'post' || stock.kind === 'channel') return lines;
  if (stock.spanLimit) lines.push(`spans at most ${formatLength(stock.spanLimit.value, measure)}, as stated`);
  else if ((stock.material?.kind.value ?? 'wood') === 'wood') {
    const span = formatLength(SPAN_OVER_THICKNESS * stock.thickness.value, measure);
    lines.push(`spans at most ${span}, by the rule of ${SPAN_OVER_THICKNESS} times its thickness`);
  }
  return lines;
}

function materialLine({ name, kind }: Material): string {
  return name === kind.value ? kind.value : `${name}: ${kind.value}`;
}

/** One repeat: its height, how open it is straight on, and the angle at which its gaps close. */
export function patternLines(pattern: PatternSpec, measure: Measure): string[] {
  const slats = pattern.repeat.map(({ value }) => value);
  const gap = pattern.gap.value;
  const solid = slats.reduce((sum, slat) => sum + slat.width.value, 0);
  const pitch = solid + gap * slats.length;
  const thinnest = Math.min(...slats.map((slat) => slat.thickness.value));
  const lines = [
    `reads ${slats.map(({ name }) => name).join(', ')}`,
    `gap ${formatLength(gap, measure)}${pattern.gap.origin.why === 'default' ? ' (nothing stated: common practice)' : ''}`,
    `repeats every ${formatLength(pitch, measure)}`,
  ];
  if (gap > 0 && pitch > 0) {
    const open = ((100 * gap * slats.length) / pitch).toFixed(1);
    lines.push(
      `${open} % open straight on; gaps close from ${formatDegrees(cutOffAngle(gap, thinnest))} off square`,
    );
  } else lines.push('no gaps: nothing to see through');
  const end = pattern.end.value;
  const rule =
    end.kind === 'on'
      ? `ends on ${end.slat}`
      : end.kind === 'whole'
        ? 'ends after a whole repeat'
        : 'ends on any slat';
  lines.push(`${rule}${pattern.end.origin.why === 'default' ? ' (nothing stated)' : ''}`);
  return lines;
}

/** What a run comes to: bays, pieces, and how its pattern closes. */
export function runLines(run: RunLayout, measure: Measure): string[] {
  if (!run.sound) return ['cannot be built as written'];
  const bays = run.bays.filter((bay) => bay.gate === undefined);
  const clear = [...new Set(bays.map((bay) => formatLength(bay.clear, measure)))];
  const openings = run.openings.filter((opening) => opening.gate === undefined);
  const slats = run.pieces.filter((piece) => piece.role === 'slat' && piece.gate === undefined);
  const lines = [
    ...cornerLines(run),
    `${formatLength(run.spec.length.value, measure)} over posts, ${formatLength(run.top - run.ground, measure)} high, ${formatLength(run.bottom - run.ground, measure)} above ground`,
    `${count(run.posts.length, 'post')}, ${count(bays.length, 'bay')} of ${clear.join(' and ')} clear`,
    postsLine(run, measure),
    pieceCounts(run),
    ...fitLines(
      run.fits.filter((fit) => fit.gate === undefined),
      measure,
    ),
  ];
  if (openings.length > 0) lines.push(`${(100 * seeThrough(openings, slats)).toFixed(1)} % open straight on`);
  lines.push(...faceLines(run, measure));
  for (const leaf of run.leaves) lines.push(`gate ${leaf.gate}: leaf ${size(leaf, measure)}`);
  return lines;
}

function postsLine({ spec: { deck }, embed }: RunLayout, measure: Measure): string {
  const down = formatLength(embed.value, measure);
  if (deck)
    return `posts ${down} down from the surface of deck ${deck.name}, ${deck.hold.value.replace('-', ' ')}`;
  const assumed = embed.origin.why === 'default' ? ' (nothing stated: half the height, common practice)' : '';
  return `posts ${down} into the ground${assumed}`;
}

/** How it leaves the run it comes after, and what the saw is set to. */
function cornerLines(run: RunLayout): string[] {
  const { spec, joints, borrowed } = run;
  const { placement } = spec;
  if (placement?.kind === 'on' && placement.step) {
    const { value: step } = placement.step;
    const off = `${formatLength(Math.abs(step), spec.measure)} ${step > 0 ? 'back' : 'forward'}`;
    return [`goes straight on from ${placement.run}, ${off}, with a post of its own`, ...bridgeLines(run)];
  }
  if (placement?.kind !== 'after' || !joints.start) return [];
  const { value: turn } = placement.turn;
  if (turn === 0) return [`goes straight on from ${placement.run}, whose last post it shares`];
  const side = turn > 0 ? 'left' : 'right';
  const slats = {
    post: 'slats end at the post',
    miter: 'mitered',
    lap: 'past the slats before',
    butt: 'against the slats before',
  };
  const end = joints.start.corner.ends.second;
  const saw =
    end && end.slope !== 0 ? `, saw at ${formatDegrees(Math.abs(degrees(Math.atan(end.slope))))}` : '';
  return [
    `turns ${side} from ${placement.run} by ${formatDegrees(Math.abs(turn))} (inside angle ${formatDegrees(180 - Math.abs(turn))}), ${slats[placement.corner.value]}${saw}`,
    ...borrowed.map((post) => `shares post ${post.label} of ${post.run}`),
  ];
}

/** How it looks from behind, and where one begins to see through slats by turns on both faces. */
function faceLines(run: RunLayout, measure: Measure): string[] {
  const faces = bothFaces(run);
  const alike = {
    same: 'alike from both sides',
    'upside-down': 'alike from both sides once turned upside down',
    different: differing(faces),
  }[faces.answer];
  const found =
    run.spec.infill.mounting.value.kind === 'alternate'
      ? faceOverlap(run.pieces.filter(({ gate }) => gate === undefined))
      : undefined;
  if (!found || found.overlap <= 0) return [alike];
  const angle = formatDegrees(seeThroughFrom(found.overlap, found.cavity));
  const overlap = formatLength(Math.round(found.overlap), measure);
  return [`faces overlap by ${overlap}; one sees through from ${angle} off square`, alike];
}

function differing(faces: BothFaces): string {
  if (faces.answer !== 'different') return '';
  return faces.by === 'screws'
    ? `alike from both sides but for the screws, which show on one side alone, from ${faces.piece.label} on`
    : `not alike from both sides, from ${faces.piece.label} on`;
}

/** Of a leaf, or of both leaves of a pair. */
export function leavesLines(run: RunLayout, leaves: readonly Leaf[], measure: Measure): string[] {
  const [first, second] = leaves;
  if (!first) return [];
  if (!second) return gateLines(run, first, measure);
  const meeting = Math.max(first.x0, second.x0) - Math.min(first.x1, second.x1);
  const passive = second.spec.half?.mirrors
    ? 'the other leaf is its mirror image'
    : `the other leaf is ${size(second, measure)}`;
  return [
    `two leaves, ${formatLength(meeting, measure)} between them; ${passive}`,
    `the ${first.spec.half?.side} leaf is the active one:`,
    ...gateLines(run, first, measure),
  ];
}

function gateLines(run: RunLayout, leaf: Leaf, measure: Measure): string[] {
  const { opening, hingeGap, latchGap, hinges } = leaf.spec;
  const mine = run.pieces.filter((piece) => piece.gate === leaf.gate);
  const inLeaf = mine.filter(({ role }) => role !== 'post');
  const seenFrom = run.spec.seenFrom.value;
  const hand = handOf(leaf, seenFrom);
  const { length, angle } = leafDiagonal(leaf);
  const why = (sourced: { origin: { why: string } }) =>
    sourced.origin.why === 'default' ? ' (common practice)' : '';
  return [
    `leaf ${size(leaf, measure)}`,
    `${leaf.spec.half ? 'its part of the opening' : 'opening'} ${formatLength(opening.value, measure)} clear, less ${formatLength(hingeGap.value, measure)} beside the hinges${why(hingeGap)} and ${formatLength(latchGap.value, measure)} ${leaf.spec.half ? 'at the other leaf, half of the gap between them' : `beside the latch${why(latchGap)}`}`,
    `hinges on ${hinges.value}, as seen from ${seenFrom}${hand ? `: ${hand.hand} hand, ${hand.way} from there` : ''}`,
    `stands open at a right angle with ${formatLength(clearWhenOpen(leaf, inLeaf), measure)} left to pass, for hinges that turn at its face`,
    `diagonals ${formatLength(Math.round(length), measure)}, at ${formatDegrees(angle)} from level`,
    roles(mine.map((piece) => piece.role)),
    ...fitLines(
      run.fits.filter((fit) => fit.gate === leaf.gate),
      measure,
    ),
  ];
}

/** How the pattern closes, or what is left over. */
export function fitLines(fits: readonly FitResult[], measure: Measure): string[] {
  return [
    ...new Set(
      fits.map((fit) => {
        const where = fit.upright ? 'across' : 'down';
        if (fit.chosen)
          return `closes ${where} ${formatLength(fit.space, measure)}: ${describeChoice(fit.chosen, measure)}`;
        return `does not close: ${formatLength(fit.leftover, measure)} of ${formatLength(fit.space, measure)} is left over`;
      }),
    ),
  ];
}

function size(leaf: Leaf, measure: Measure): string {
  return `${formatLength(leaf.width, measure)} wide, ${formatLength(leaf.height, measure)} high`;
}

function pieceCounts(run: RunLayout): string {
  const own = run.pieces.filter((piece) => piece.gate === undefined && piece.role !== 'post');
  const all = `${count(run.pieces.length, 'piece')} in all`;
  return own.length === 0 ? all : `${roles(own.map((piece) => piece.role))}; ${all}`;
}

function roles(found: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const role of found) counts.set(role, (counts.get(role) ?? 0) + 1);
  return [...counts].map(([role, many]) => count(many, role)).join(', ');
}

function count(many: number, word: string): string {
  return `${many} ${word}${many === 1 || word === 'trim' ? '' : 's'}`;
}

/** In the job's measure with the other system behind it. */
function both(measure: Measure): (ticks: Ticks) => string {
  const other = isMetric(measure) ? INCHES : METRIC;
  return (ticks) => `${formatLength(ticks, measure)} (${fine(ticks, other)})`;
}
