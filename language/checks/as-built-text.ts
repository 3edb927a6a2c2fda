import type { BuiltWay, BuiltWays } from '../figures/index.ts';
import { isMetric } from '../model/index.ts';
import { formatLength, inches, type Measure, mm, type Ticks } from '../units/index.ts';
import { describeChoice } from './pattern-open.ts';

/** Small differences are told to a 64th of an inch or a tenth of a millimeter, whatever the tape is marked to. */
export function fineLength(ticks: number, measure: Measure): string {
  const unit = isMetric(measure) ? 'mm' : 'inches';
  return formatLength(Math.round(ticks), { unit, step: isMetric(measure) ? mm(0.1) : inches(1 / 64) });
}

/** One way to take up what came out otherwise, with what is seen of it: "spread the rest over the gaps ...". */
export function describeWay(way: BuiltWay, measure: Measure): string {
  return `${whatIsDone(way, measure)} (${whatIsSeen(way, measure)})`;
}

/** What is seen of it, and whether it looks meant. */
export function whatIsSeen(
  { gapChange, between, edgeChange, limit, within, closes, panels }: BuiltWay,
  measure: Measure,
): string {
  if (!closes) return 'does not close in every bay';
  const several = panels.length > 1;
  const seen = [
    gapChange < 1 ? 'gaps as planned' : `gaps ${fineLength(gapChange, measure)} off the planned`,
    ...(several && between >= 1 ? [`up to ${fineLength(between, measure)} from bay to bay`] : []),
    ...(edgeChange > 0
      ? [`${several ? 'edges' : 'an end'} up to ${fineLength(edgeChange, measure)} off`]
      : []),
  ];
  return `${seen.join(', ')}; ${within ? 'hardly seen' : `seen: ${fineLength(limit, measure)} a gap is hardly seen`}`;
}

function whatIsDone({ choice, panels }: BuiltWay, measure: Measure): string {
  if (panels.length < 2) return describeChoice(choice, measure);
  const over = (
    sizes: readonly (Ticks | undefined)[],
    show = (size: Ticks) => formatLength(size, measure),
  ) => {
    const all = sizes.flatMap((size) => (size === undefined ? [] : [Math.round(size)]));
    const [low, high] = [show(Math.min(...all)), show(Math.max(...all))];
    return low === high ? low : `${low} to ${high}`;
  };
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
  const gaps = [
    ...new Set(panels.filter((panel) => panel.built.choice).map((panel) => fine(panel.built.gap))),
  ];
  const before = [...new Set(panels.map(({ planned }) => fine(planned.gap)))];
  if (gaps.length > 0)
    phrases.push(
      gaps.join() === before.join()
        ? `gaps ${gaps.join(' and ')} as planned`
        : `gaps ${gaps.join(', ')} (planned ${before.join(', ')})`,
    );
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

function nameOfRipped(kind: string | undefined): string {
  return kind === 'trim' ? 'the board that closes it' : 'the ripped slat';
}
