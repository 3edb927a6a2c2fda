import { isInBay, type RunLayout } from '../../language/layout/index.ts';
import { formatLength, type Measure, type Ticks } from '../../language/units/index.ts';

/** What the measure of a bay comes to, beside what was planned; `path` is that of its statement. */
export function measuredLines(path: string, runs: readonly RunLayout[], measure: Measure): readonly string[] {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const than = (now: Ticks, planned: Ticks) =>
    now === planned ? 'as planned' : `${shown(Math.abs(now - planned))} ${now > planned ? 'more' : 'less'}`;
  for (const run of runs) {
    const own = run.spec.measured?.bays.find(({ origin }) => origin.path === path);
    const built = run.bays.find(({ number }) => number === own?.number);
    const plan = run.planned?.bays.find(({ number }) => number === own?.number);
    if (!own) continue;
    if (run.problems.some(({ origin }) => origin.path === path) || !built || !plan)
      return ['not used: the plan has another clear for this bay now, or no such bay'];
    const heights = own.ends
      ? ([
          ['top', own.ends.top],
          ['middle', own.middle],
          ['bottom', own.ends.bottom],
        ] as const)
      : ([['middle', own.middle]] as const);
    const slats = (of: RunLayout | undefined): readonly Ticks[] =>
      (of?.pieces ?? [])
        .filter((piece) => piece.role === 'slat' && isInBay(piece, own.number))
        .map(({ cut }) => cut.longPoint);
    const range = (lengths: readonly Ticks[]) => {
      const [least, most] = [Math.min(...lengths), Math.max(...lengths)];
      return least === most ? shown(most) : `${shown(least)} to ${shown(most)}`;
    };
    const [now, before] = [slats(run), slats(run.planned)];
    return [
      `planned ${shown(plan.clear)} clear`,
      ...heights.map(([where, clear]) => `${shown(clear)} at the ${where}: ${than(clear, plan.clear)}`),
      ...(now.length > 0 && before.length > 0 ? [`slats ${range(now)} long; planned ${range(before)}`] : []),
    ];
  }
  return [];
}
