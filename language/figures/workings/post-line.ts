import type { RunLayout } from '../../layout/index.ts';
import { facesOf, type Job, limitOf, type Origin, type ScreenFace } from '../../model/index.ts';
import type { Published } from '../../standards/index.ts';
import { formatLength, inches, mm, type Ticks } from '../../units/index.ts';
import { straightestLine } from '../formulas/index.ts';
import type { Working } from '../working.ts';
import { amount, inchesOf, input, step } from './amounts.ts';

/** How posts that were measured off the line stand to the best straight line through them. */
export interface PostLine {
  readonly posts: readonly LinePost[];
  /** Greatest distance of any post from it. */
  readonly most: number;
  /** The line at both ends of the run: off the run's own line, positive toward the back. */
  readonly ends: readonly [first: number, last: number];
  /** Faces that slats lie on; none where they are set to the line between posts. */
  readonly faces: readonly ScreenFace[];
  readonly origin: Origin;
}

export interface LinePost {
  readonly number: number;
  readonly key: string;
  /** Off the run's own line, as measured; positive toward the back. */
  readonly off: Ticks;
  /** Off the best line. */
  readonly rest: number;
  /** Packing on each face that slats lie on, so that the slats are straight and no post is proud of them. */
  readonly shims: Readonly<Partial<Record<ScreenFace, number>>>;
}

/** Trade habit: posts are set within this of their place on the plan. */
export const POSTS_IN_PLAN = { imperial: inches(1 / 4), metric: mm(6) } as const;

const HABIT: Published = {
  source: 'common practice',
  section: 'posts within 1/4" (6 mm) in plan once the concrete has set',
  confirmed: 'secondary',
};

/** Undefined where no post was measured off the line. */
export function postLine(run: RunLayout): PostLine | undefined {
  const { posts, offs, spec } = run;
  const [first, last] = [posts[0], posts.at(-1)];
  const stated = posts.find(({ key }) => offs.has(key));
  const origin = stated && offs.get(stated.key)?.origin;
  if (!first || !last || !origin) return undefined;
  const faces = spec.infill.flip.upright ? [] : facesOf(spec.infill.mounting.value);
  const stands = posts.map(({ number, key, from, to }) => ({
    number,
    key,
    x: (from + to) / 2,
    off: offs.get(key)?.value ?? 0,
  }));
  const { start, slope, most } = straightestLine(stands.map(({ x, off }) => [x, off] as const));
  const lined = stands.map(({ number, key, x, off }): LinePost => {
    const rest = off - start - slope * x;
    const shim = (face: ScreenFace) => Math.max(0, face === 'front' ? most + rest : most - rest);
    return { number, key, off, rest, shims: Object.fromEntries(faces.map((face) => [face, shim(face)])) };
  });
  return { posts: lined, most, ends: [start, start + slope * spec.length.value], faces, origin };
}

/** How it is found, and how far off it the job lets posts be; none where no post was measured off the line. */
export function postLineWorking(run: RunLayout, job: Job): readonly Working[] {
  const line = postLine(run);
  return line ? [workingOf(run, job, line)] : [];
}

function workingOf(run: RunLayout, job: Job, { posts, most, ends, faces, origin }: PostLine): Working {
  const { spec } = run;
  const limit = limitOf(job, 'post-off-line', 'length', POSTS_IN_PLAN);
  const toward = (off: number) => (off < 0 ? 'front' : 'back');
  const at = (number: number) => formatLength(run.posts[number - 1]?.from ?? 0, spec.measure);
  return {
    code: 'post-line',
    title: 'Best straight line through the posts',
    where: { origin, label: `${spec.name}, posts`, run: run.key },
    formula: 'least e with |y - (a + b x)| ≤ e at every post',
    inputs: posts
      .filter(({ off }) => off !== 0)
      .map(({ number, off }) =>
        input(
          `post ${number} at ${at(number)}, toward ${toward(off)}`,
          'y',
          inchesOf(Math.abs(off)),
          'measured',
        ),
      ),
    steps: [
      step(`line at the first end, toward ${toward(ends[0])}`, inchesOf(Math.abs(ends[0]))),
      step(`line at the last end, toward ${toward(ends[1])}`, inchesOf(Math.abs(ends[1]))),
      ...posts.flatMap(({ number, rest, shims }) =>
        faces.length === 0
          ? [step(`post ${number} off the line, toward ${toward(rest)}`, inchesOf(Math.abs(rest)))]
          : faces.map((face) => step(`shim at post ${number}, on its ${face}`, inchesOf(shims[face] ?? 0))),
      ),
    ],
    figure: inchesOf(most),
    limit: { name: 'posts in plan', is: 'at most', ...amount(inchesOf(limit).value, 'in') },
    basis: [HABIT],
    notes: [
      faces.length === 0
        ? 'Set cleats and rails to the line, not to the posts.'
        : 'Shims keep the slats straight; a slat that is screwed to posts off the line shows every one of them.',
      'Pieces are drawn on the line of the run: their cuts do not change.',
    ],
  };
}
