import type { Layout } from '../../layout/index.ts';
import type { HideDemand, Job, Place, Viewer } from '../../model/index.ts';
import type { Published } from '../../standards/index.ts';
import { lookOf, neededTop, type Way, type WorstSight } from '../sight/index.ts';
import type { Working, WorkingStep } from '../working.ts';
import { amount, fromOf, inchesOf, input, step } from './amounts.ts';

const PROJECTION: Published = {
  source: 'central projection and plane geometry',
  section: 'each piece as seen from the eye on the plane of the place; the area of their union',
  confirmed: 'primary',
};

const SEEN: Readonly<Record<Way, string>> = {
  through: 'seen through the gaps',
  gates: 'seen through gates',
  over: 'seen over the top',
  under: 'seen underneath',
  past: 'seen past the ends',
};

/** What each viewer sees of each place, by the way it is seen; pairs whose runs are nowhere to one another are left out. */
export function privacy(layout: Layout, job: Job): readonly Working[] {
  return job.viewers.flatMap((viewer) =>
    job.places.flatMap((place) => {
      const demand = job.hides.find(
        (hide) => hide.viewer.name === viewer.name && hide.place.name === place.name,
      );
      const working = ofPair(layout, viewer, place, demand);
      return working ? [working] : [];
    }),
  );
}

function ofPair(
  layout: Layout,
  viewer: Viewer,
  place: Place,
  demand: HideDemand | undefined,
): Working | undefined {
  const look = lookOf(layout, viewer, place);
  if (look === undefined || look === 'apart') return undefined;
  const { scene, area, sight } = look;
  const top = sight.ways.over > 0 ? neededTop(scene, area, sight.eye) : undefined;
  const walls = scene.runs.flatMap((run) => run.walls);
  const [x0, z0, x1, z1] = area.window;
  return {
    code: 'privacy',
    title: `How much of ${place.name} is hidden from ${viewer.name}`,
    where: { origin: demand?.origin ?? place.origin, label: `${place.name} from ${viewer.name}` },
    formula: 'hidden = area of the union of what the pieces cover / area of the place',
    inputs: [
      input('eye above the floor', '', inchesOf(viewer.eye.value), fromOf(viewer.eye.origin)),
      input('eye from the datum', '', inchesOf(sight.eye[2]), 'with the floor there'),
      input('place, wide', '', inchesOf(x1 - x0), fromOf(place.width.origin)),
      input('place, from the datum', '', inchesOf(z0), 'with the floor there'),
      input('to', '', inchesOf(z1), 'with the floor there'),
    ],
    steps: [...stretchSteps(viewer, sight), ...waySteps(sight), ...(top ? [topStep(top)] : [])],
    figure: amount(100 * (1 - sight.seen), '%'),
    ...(demand
      ? {
          limit: {
            ...amount(100 * demand.share.value, '%'),
            name: 'asked to be hidden',
            is: 'at least' as const,
          },
        }
      : {}),
    basis: [PROJECTION],
    notes: [
      'Trees, walls and what else stands there are not known; the ground beside the runs hides too.',
      ...(walls.length > 0 ? [wallNote(walls.some((wall) => wall.past(sight.eye)))] : []),
    ],
  };
}

const wallNote = (inHouse: boolean): string =>
  inHouse
    ? 'The eye is past a wall that a run meets; no one knows where its window is, so that wall hides nothing.'
    : 'Walls that runs begin or end at hide what is past them; they are taken to go on both ways and up.';

function stretchSteps({ to }: Viewer, { along }: WorstSight): readonly WorkingStep[] {
  return to ? [step('worst spot, of the way walked', amount(100 * along, '%'))] : [];
}

function waySteps({ ways }: WorstSight): readonly WorkingStep[] {
  return (['through', 'gates', 'over', 'under', 'past'] as const).map((way) =>
    step(SEEN[way], amount(100 * ways[way], '%')),
  );
}

const topStep = ({ run, top }: { run: string; top: number }): WorkingStep =>
  step(`top of ${run} over which nothing would be seen, from the datum`, inchesOf(Math.round(top)));
