import { type Piece, type RunLayout, spellName } from '../layout/index.ts';
import type { Job, PostStock, Sourced } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import type { Finding, Fix } from './finding.ts';
import { replaceAt } from './written-change.ts';

/** A gate post whose faces are not in the planes of the others of its run. */
export interface PostOff {
  readonly run: string;
  readonly post: number;
  readonly stock: Sourced<PostStock>;
  readonly face: 'front' | 'back';
  readonly offset: Ticks;
}

/**
 * Gate posts deeper or shallower than the run's own, of which a face is off that of the others by more than `seen` and
 * less than `limit`: the face that is farther off, once for each stock.
 */
export function postsOff(run: RunLayout, seen: Ticks, limit: Ticks): readonly PostOff[] {
  // Of posts of two halves one half is no post's depth.
  if (run.spec.infill.mounting.value.kind === 'split') return [];
  const byKey = new Map(run.pieces.map((piece) => [piece.key, piece]));
  const plain = run.posts.find(({ gate, key }) => gate === undefined && byKey.has(key));
  const usual = plain && depthOf(byKey.get(plain.key));
  if (!usual) return [];
  const told = new Set<string>();
  return run.posts.flatMap((mark): PostOff[] => {
    const gate = run.spec.gates.find(({ name }) => name === mark.gate);
    const piece = byKey.get(mark.key);
    const own = depthOf(piece);
    const stock = gate && [gate.post, gate.latchPost].find((post) => post?.value.name === piece?.cut.stock);
    if (!own || !stock || told.has(stock.value.name)) return [];
    const off = ([0, 1] as const).map((side) => Math.abs(own[side] - usual[side]));
    const between = off.map((by) => (by > seen && by < limit ? by : 0));
    const offset = Math.max(...between);
    if (offset === 0) return [];
    told.add(stock.value.name);
    const face = between[0] === offset ? 'front' : 'back';
    return [{ run: run.spec.name, post: mark.number, stock, face, offset }];
  });
}

function depthOf(piece: Piece | undefined): readonly [front: number, back: number] | undefined {
  if (!piece) return undefined;
  const y = piece.solid.vertices.map((vertex) => vertex[1]);
  return [Math.min(...y), Math.max(...y)];
}

/** Told where the post of the gate is stated, with posts of the file that are as deep as the others and no slimmer. */
export function postFinding(
  { run, post, stock, face, offset }: PostOff,
  { spec: { post: usual } }: RunLayout,
  limit: Ticks,
  job: Job,
): Finding {
  const { value, origin } = stock;
  const alike = job.stock.flatMap((one) =>
    one.kind === 'post' &&
    one.through.value === usual.value.through.value &&
    one.along.value >= Math.min(value.along.value, usual.value.along.value)
      ? [one]
      : [],
  );
  const fixes = alike.map(
    ({ name }): Fix => ({
      title: `Use ${name}, as deep as the other posts`,
      changes: [replaceAt(origin, spellName(name))],
    }),
  );
  return {
    code: 'plane-offset',
    at: origin,
    args: {
      first: run,
      second: value.name,
      post,
      face,
      offset: formatLength(offset, job.measure.value),
      step: formatLength(limit, job.measure.value),
    },
    fixes: origin.why === 'stated' ? fixes : [],
  };
}
