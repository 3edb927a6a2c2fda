import type { BuiltWay, BuiltWays } from '../figures/index.ts';
import { fineLength, formatLength, type Measure, type Ticks } from '../units/index.ts';
import { describeChoice } from './pattern-open.ts';

/** One way to take up what came out otherwise, with what is seen of it: "spread the rest over the gaps ...". */
export function describeWay(way: BuiltWay, measure: Measure): string {
  return `${whatIsDone(way, measure)} (${whatIsSeen(way, measure)})`;
}

/** What is seen of it, and whether it looks meant. */
function whatIsSeen(
  { gapChange, between, edgeChange, closes, panels, ...way }: BuiltWay,
  measure: Measure,
): string {
  if (!closes) return 'does not close in every bay';
  const several = panels.length > 1;
  const seen = [
    fineLength(gapChange, measure) === fineLength(0, measure)
      ? 'gaps as planned'
      : `gaps ${fineLength(gapChange, measure)} off the planned`,
    ...(several && fineLength(between, measure) !== fineLength(0, measure)
      ? [`up to ${fineLength(between, measure)} from bay to bay`]
      : []),
    ...(edgeChange > 0
      ? [`${several ? 'edges' : 'an end'} up to ${fineLength(edgeChange, measure)} off`]
      : []),
  ];
  return `${seen.join(', ')}; ${way.within ? 'hardly seen' : `seen, as ${overText(way, measure)} is`}`;
}

/** What of it is seen, and from where on: "over 1/8" a gap". */
export function overText(
  { seenBy, seenOver }: Pick<BuiltWay, 'seenBy' | 'seenOver'>,
  measure: Measure,
): string {
  return `over ${fineLength(seenOver, measure)} ${SEEN_BY[seenBy]}`;
}

const SEEN_BY: Readonly<Record<BuiltWay['seenBy'], string>> = {
  gaps: 'a gap',
  between: 'from bay to bay',
  edges: 'at an edge',
  width: 'in the width of a slat',
};

function whatIsDone({ choice, panels }: BuiltWay, measure: Measure): string {
  if (panels.length < 2) return describeChoice(choice, measure);
  const over = (sizes: readonly (Ticks | undefined)[], show = (size: Ticks) => formatLength(size, measure)) =>
    rangeText(
      sizes.flatMap((size) => (size === undefined ? [] : [Math.round(size)])),
      show,
    );
  const of = (size: (one: typeof choice) => number | undefined) =>
    panels.map((panel) => panel.choice && size(panel.choice));
  switch (choice.kind) {
    case 'move-ends':
      return `keep the gaps and share the rest between both edges of each bay: ${over(of(({ lead }) => lead))} each`;
    case 'gaps':
    case 'as-drawn':
      return `spread the rest over the gaps of each bay: ${over(
        panels.map(({ gap }) => gap),
        (size) => fineLength(size, measure),
      )}`;
    case 'rip-last':
      return `rip the last slat of each bay: to ${over(of(({ width }) => width))}`;
    case 'trim':
      return `close each bay with a board, ripped to ${over(of(({ width }) => width))}`;
    default:
      return describeChoice(choice, measure);
  }
}

/** What came out otherwise, as a phrase after a colon: "gaps 9/16" (planned 1/2"), 12 slats as planned". */
export function whatDiffers({ panels, built }: BuiltWays, measure: Measure): string {
  const fine = (ticks: number) => fineLength(ticks, measure);
  const [first] = panels;
  if (!first) return '';
  const phrases: string[] = [];
  const open = panels.filter((panel) => !panel.built.choice);
  if (open.length > 0) {
    const [worst] = [...open].sort((a, b) => b.built.fit.leftover - a.built.fit.leftover);
    phrases.push(`${fine(worst?.built.fit.leftover ?? 0)} is left over`);
  }
  const closed = panels.filter((panel) => panel.built.choice);
  const gaps = rangeText(
    closed.map((panel) => panel.built.gap),
    fine,
  );
  const before = rangeText(
    panels.map(({ planned }) => planned.gap),
    fine,
  );
  if (closed.length > 0)
    phrases.push(gaps === before ? `gaps ${gaps} as planned` : `gaps ${gaps} (planned ${before})`);
  const counts = (which: 'built' | 'planned') => [
    ...new Set(panels.map((panel) => panel[which].choice?.count ?? panel[which].fit.nominalCount)),
  ];
  const [now, then] = [counts('built').join(' and '), counts('planned').join(' and ')];
  phrases.push(now === then ? `${now} slats as planned` : `${now} slats (planned ${then})`);
  const last = [first.built.choice?.width, first.planned.choice?.width];
  if (panels.length === 1 && last[0] !== last[1])
    phrases.push(
      `${nameOfRipped(first.built.choice?.kind ?? first.planned.choice?.kind)} ${last.map((width) => (width === undefined ? 'none' : fine(width))).join(' (planned ')})`,
    );
  if (built && built.edgeChange > 0)
    phrases.push(`${panels.length > 1 ? 'edges' : 'ends'} up to ${fine(built.edgeChange)} off`);
  return phrases.join(', ');
}

/** From the least to the greatest, or the one there is. */
function rangeText(sizes: readonly number[], show: (size: number) => string): string {
  const [low, high] = [show(Math.min(...sizes)), show(Math.max(...sizes))];
  return low === high ? low : `${low} to ${high}`;
}

function nameOfRipped(kind: string | undefined): string {
  return kind === 'trim' ? 'the board that closes it' : 'the ripped slat';
}
