import { type Frame, placesOf, type RunLayout } from '../layout/index.ts';
import type { Measure } from '../units/index.ts';
import { compose } from './compose.ts';
import { deckPlan } from './deck-marks.ts';
import { letterFor, type Reading } from './letter.ts';
import { around, type Part } from './part.ts';
import { boundsOf, placeLabels } from './place-labels.ts';
import { type At, planAxes } from './plan-axes.ts';
import { cornerAngle, datumPoint, northArrow } from './plan-marks.ts';
import { asidesOf, type Standing } from './plan-rows.ts';
import { boundsAround, planRun } from './plan-run.ts';
import { postLineMarks } from './post-line-marks.ts';
import { propertyMarks } from './property-marks.ts';
import { remembered } from './remember.ts';
import { stairsPlan } from './stair-marks.ts';
import { titleBlock } from './title-block.ts';
import type { View } from './view.ts';

/** No run's key holds a bare percent sign, so that no run can be called like the plan. */
const KEY = '%plan';

/**
 * All runs that have a place, seen from above: posts, the top of the slats, leaves with the way they swing,
 * stations, lengths over posts and inside angles. Undefined when no two runs have a place: a plan of one says
 * nothing that its elevation does not.
 */
export function planOf(
  runs: readonly RunLayout[],
  measure: Measure,
  letter = planLetter(runs) ?? 1,
): View | undefined {
  const standing = standingRuns(runs);
  const first = standing[0]?.run;
  if (standing.length < 2 || !first) return undefined;
  const known = latest.get(first);
  const key = `${measure.unit} ${measure.step} ${letter}`;
  const same =
    known?.key === key &&
    known.standing.length === standing.length &&
    standing.every(
      (one, at) => one.run === known.standing[at]?.run && isAlike(one.frame, known.standing[at]?.frame),
    );
  if (same) return known.view;
  const view = drawPlan(standing, measure, letter);
  latest.set(first, { key, standing, view });
  return view;
}

/** The plan drawn last, by its first run. */
const latest = new WeakMap<RunLayout, { key: string; standing: readonly Standing[]; view: View }>();

/** Size of letters that suits a plan alone on a sheet; undefined when there is none. */
export function planLetter(runs: readonly RunLayout[], reading?: Reading): number | undefined {
  const standing = standingRuns(runs);
  if (standing.length < 2) return undefined;
  const points = standing.flatMap(({ run, frame }): At[] => {
    const axes = planAxes(frame);
    return [axes.at(0, 0), axes.at(run.spec.length.value, 0)];
  });
  const [x0, y0, x1, y1] = boundsAround(points);
  return letterFor(x1 - x0, y1 - y0, reading);
}

function standingRuns(runs: readonly RunLayout[]): readonly Standing[] {
  const places = placesOf(runs);
  const seen = new Set<string>();
  return runs.flatMap((run): Standing[] => {
    const frame = places.get(run.key);
    if (!frame || !run.sound || seen.has(run.key)) return [];
    seen.add(run.key);
    return [{ run, frame }];
  });
}

/** What each run comes to on the plan, drawn again only when it or its place changes. */
const drawn = new WeakMap<RunLayout, { key: string; part: Part }>();

function runPart({ run, frame }: Standing, measure: Measure, letter: number, aside: number): Part {
  const key = `${measure.unit} ${measure.step} ${letter} ${aside} ${frame.bearing} ${frame.origin.join(' ')}`;
  const known = drawn.get(run);
  if (known?.key === key) return known.part;
  const own = planRun(run, frame, measure, letter, aside);
  const deck = run.spec.deck && deckPlan(run, run.spec.deck, frame);
  const stairs = stairsPlan(run, frame, letter);
  const property = propertyMarks(run, frame, letter);
  const line = postLineMarks(run, frame, measure, letter);
  const part = {
    groups: [
      ...(property?.groups ?? []),
      ...(deck?.groups ?? []),
      ...(stairs?.groups ?? []),
      ...own.groups,
      ...(line?.groups ?? []),
    ],
    labels: [
      ...own.labels,
      ...(stairs?.labels ?? []),
      ...(property?.labels ?? []),
      ...(line?.labels ?? []),
      ...cornerAngle(run, frame, letter),
    ],
    bounds: around(
      own.bounds,
      ...[deck, stairs, property, line].flatMap((one) => (one?.bounds ? [one.bounds] : [])),
    ),
  };
  drawn.set(run, { key, part });
  return part;
}

/** East along the sheet: how a run lies that has no place on the site. */
const ALONE: Frame = { origin: [0, 0, 0], bearing: 90 };

/** Plans of all runs: of those that stand together, and of every other one alone. */
export function plansOf(runs: readonly RunLayout[], measure: Measure, letter: number): View[] {
  const whole = planOf(runs, measure, letter);
  const together = new Set(whole ? standingRuns(runs).map(({ run }) => run.key) : []);
  const alone = runs.filter((run) => run.sound && !together.has(run.key));
  return [
    ...(whole ? [whole] : []),
    ...alone.map((run) =>
      remembered(run, 'plan', measure, letter, () =>
        drawPlan([{ run, frame: ALONE }], measure, letter, {
          key: `${run.key}/${KEY}`,
          run: run.key,
          title: `Plan of ${run.spec.name}`,
        }),
      ),
    ),
  ];
}

function drawPlan(
  standing: readonly Standing[],
  measure: Measure,
  letter: number,
  { key, run, title } = { key: KEY, run: '', title: 'Plan' },
): View {
  const asides = asidesOf(standing);
  const parts: Part[] = standing.map((one) => runPart(one, measure, letter, asides.get(one.run.key) ?? 0));
  const placed = (run === '' ? standing : [])
    .map(({ run: { spec } }) => spec.placement)
    .filter((one) => one?.kind === 'at');
  if (placed.length > 0) parts.push(datumPoint(letter));
  if (placed.some((one) => one?.kind === 'at' && one.bearing.origin.why === 'stated'))
    parts.push(northArrow(letter));
  const labels = placeLabels(
    parts.flatMap((part) => part.labels),
    letter,
  );
  const bounds = around(
    ...parts.map((part) => part.bounds),
    ...labels.map((label) => boundsOf(label, letter)),
  );
  const [x0, , x1, y1] = bounds;
  parts.push({ groups: [], labels: [], bounds });
  const titles = { title, notes: ['seen from above'] };
  return compose({ key, run, part: 'plan', title, side: 'above', kind: 'plan', letter }, [
    ...parts,
    titleBlock(key, titles, x0, x1, y1 + 2 * letter, measure, letter),
  ]);
}

function isAlike(a: Frame, b: Frame | undefined): boolean {
  return b !== undefined && a.bearing === b.bearing && a.origin.every((at, axis) => at === b.origin[axis]);
}
