import type * as ast from '../grammar/index.ts';
import { DEFAULT_TOP_EDGE } from './defaults.ts';
import type { FlipSpec } from './job.ts';
import { type Node, originOf, type Reader, tell } from './reader.ts';

const TURN_WORDS: Readonly<Record<string, string>> = {
  Upright: 'upright',
  TopEdge: 'top edge',
  TurnedOver: 'over',
  EndForEnd: 'end for end',
};

/**
 * How a pattern is turned. Saying to which side its top edge goes turns it upright: level slats have
 * their top edge at the top. Hinges and latch are sides only of a gate.
 *
 * @param hinges the side of the gate's hinges; undefined in a run
 */
export function readFlip(
  reader: Reader,
  block: Node,
  statement: ast.FlipStatement | undefined,
  hinges?: 'left' | 'right',
): FlipSpec {
  const turns = new Map<string, ast.Turn>();
  for (const turn of statement?.turns ?? []) {
    const what = TURN_WORDS[turn.$type];
    const earlier = turns.get(turn.$type);
    if (what === undefined) continue;
    if (!earlier) turns.set(turn.$type, turn);
    else {
      const related = [{ origin: originOf(reader, earlier), note: what }];
      tell(reader, 'stated-twice', originOf(reader, turn), { what, block: 'flip' }, related);
    }
  }
  const topEdge = turns.get('TopEdge') as ast.TopEdge | undefined;
  return {
    upright: turns.has('Upright') || topEdge !== undefined,
    topEdge: sideOf(reader, topEdge, hinges) ?? DEFAULT_TOP_EDGE,
    over: turns.has('TurnedOver'),
    endForEnd: turns.has('EndForEnd'),
    origin: statement ? originOf(reader, statement) : originOf(reader, block, undefined, 'default'),
  };
}

function sideOf(
  reader: Reader,
  node: ast.TopEdge | undefined,
  hinges: 'left' | 'right' | undefined,
): 'left' | 'right' | undefined {
  if (!node) return undefined;
  const { to } = node;
  if (to !== 'hinges' && to !== 'latch') return to;
  if (!hinges) {
    tell(reader, 'wrong-statement', originOf(reader, node), { what: `top edge to ${to}`, block: 'run' });
    return undefined;
  }
  const latch = hinges === 'left' ? 'right' : 'left';
  return to === 'hinges' ? hinges : latch;
}
