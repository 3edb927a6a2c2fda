import type * as ast from '../grammar/index.ts';
import { MOST_POSTS } from './bounds.ts';
import { facesOf } from './faces.ts';
import type { InfillSpec, JointRule, JointSpec, RunSpec, Sourced } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readCount } from './read-count.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** Where slats meet end to end: only level ones that lie on a face of the posts do. */
export function readJoints(
  reader: Reader,
  pick: Picked<ast.RunStatement>,
  { mounting, flip }: InfillSpec,
  trim: number | undefined,
): Pick<RunSpec, 'slatJoints'> {
  const [rule, gap] = [pick('JointsStatement'), pick('JointGap')];
  if (flip.upright || facesOf(mounting.value).length === 0) {
    const block = flip.upright ? 'run with upright slats' : 'run with slats between posts';
    for (const [statement, what] of [
      [rule, 'joints'],
      [gap, 'joint gap'],
    ] as const)
      if (statement) tell(reader, 'wrong-statement', originOf(reader, statement), { what, block });
    return {};
  }
  const read: JointSpec = {
    ...optional('rule', readRule(reader, rule)),
    ...optional('gap', readLength(reader, gap?.value, { what: 'joint gap', zero: true })),
    ...(trim === undefined ? {} : { trim }),
  };
  return Object.keys(read).length > 0 ? { slatJoints: read } : {};
}

function readRule(
  reader: Reader,
  statement: ast.JointsStatement | undefined,
): Sourced<JointRule> | undefined {
  if (!statement) return undefined;
  const origin = originOf(reader, statement);
  if (statement.staggered) return { value: { kind: 'staggered' }, origin };
  if (statement.count !== undefined) {
    const posts = readCount(reader, statement, 'posts', { least: 1, most: MOST_POSTS });
    return posts === undefined ? undefined : { value: { kind: 'every', posts }, origin };
  }
  if (statement.line) return { value: { kind: 'in-line' }, origin };
  return statement.every ? { value: { kind: 'every', posts: 1 }, origin } : undefined;
}

function optional<K extends keyof JointSpec>(key: K, value: JointSpec[K]): Pick<JointSpec, K> | object {
  return value === undefined ? {} : { [key]: value };
}
