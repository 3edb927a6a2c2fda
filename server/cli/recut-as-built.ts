import { describeWay, whatDiffers } from '../../language/checks/index.ts';
import { type BuiltWays, builtWays, isAsPlanned } from '../../language/figures/index.ts';
import type { Course, RunLayout } from '../../language/layout/index.ts';
import type { Job } from '../../language/model/index.ts';
import { formatLength, type Measure, type Ticks, toMm } from '../../language/units/index.ts';

/** What comes out otherwise than planned in a run, the ways to take it up, and the story pole; no lines where nothing was measured. */
export function asBuiltLines(run: RunLayout, job: Job): readonly string[] {
  const measure = job.measure.value;
  const found = builtWays(run, job);
  if (found.every(isAsPlanned)) return [];
  return [
    `${run.spec.name}, as built:`,
    ...found.flatMap((ways) => waysOf(ways, measure)),
    ...storyPole(run, measure),
  ];
}

function waysOf(found: BuiltWays, measure: Measure): readonly string[] {
  const many = !isAsPlanned(found) && found.ways.length > 1;
  const what = found.gate === undefined ? '' : `gate ${found.gate}: `;
  return [
    `  ${what}${whatDiffers(found, measure)}`,
    ...(many ? [`  ${what}ways to take it up, best first:`] : []),
    ...(many
      ? found.ways.map(
          (way, at) => `    ${at + 1}. ${way.built ? 'as it is: ' : ''}${describeWay(way, measure)}`,
        )
      : []),
  ];
}

/** Both edges of every level slat, and where they were planned; bays on the same lines are told once. */
function storyPole(run: RunLayout, measure: Measure): readonly string[] {
  const { planned, spec, bays } = run;
  if (spec.infill.flip.upright || !planned) return [];
  const seen = new Set<string>();
  return bays.flatMap(({ number, gate }) => {
    const now = run.courses.get(number) ?? [];
    const key = now.map(({ start, end }) => `${start} ${end}`).join();
    if (gate !== undefined || now.length === 0 || seen.has(key)) return [];
    seen.add(key);
    const before = planned.courses.get(number) ?? [];
    const same = now.length === before.length && now.every((one, at) => isSame(one, before[at]));
    if (same) return [`  story pole of bay ${number}: as planned`];
    const shown = (ticks: Ticks) => formatLength(ticks, measure);
    return [
      `  story pole from bay ${number} on, from the datum (planned):`,
      ...now.map(({ number: course, start, end }, at) => {
        const plan = before[at];
        const then = plan ? `${shown(plan.start)} to ${shown(plan.end)}` : 'none';
        return `    ${course}: ${shown(start)} to ${shown(end)} (${then})`;
      }),
    ];
  });
}

const isSame = (one: Course, other: Course | undefined): boolean =>
  one.start === other?.start && one.end === other.end;

/** The same for programs; lengths in millimeters. */
export function asBuiltJson(run: RunLayout, job: Job) {
  const measure = job.measure.value;
  return builtWays(run, job).map(({ gate, panels, ways }) => ({
    gate: gate ?? null,
    panels: panels.map(({ bay, planned, built }) => ({
      bay: bay ?? null,
      gap: millimeters(built.gap),
      plannedGap: millimeters(planned.gap),
      slats: built.choice?.count ?? built.fit.nominalCount,
      plannedSlats: planned.choice?.count ?? planned.fit.nominalCount,
      closes: built.choice !== undefined,
    })),
    ways: ways.map((way) => ({
      kind: way.choice.kind,
      says: describeWay(way, measure),
      built: way.built,
      closes: way.closes,
      within: way.within,
      gapChange: millimeters(way.gapChange),
      between: millimeters(way.between),
      edgeChange: millimeters(way.edgeChange),
      limit: millimeters(way.limit),
      changes: way.changes.map(({ path, place, text }) => ({ path, place, text })),
    })),
  }));
}

const millimeters = (ticks: number): number => Math.round(toMm(ticks) * 1e6) / 1e6;
