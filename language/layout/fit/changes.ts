import { spellLength } from '../../units/index.ts';
import type { TextChange } from '../layout.ts';
import type { Ask } from './asks.ts';
import type { Edit } from './edits.ts';
import type { FitProblem } from './problem.ts';
import { spellName } from './spell-name.ts';

/** An edit as changes of the text: a statement of the block is replaced, or a new one appended to it. */
export function changesFor(
  { target, measure }: Pick<FitProblem, 'target' | 'measure'>,
  { asks, bottom, height }: Edit,
): TextChange[] {
  const changes: TextChange[] = [];
  const added: string[] = [];
  const put = (path: string | undefined, text: string) => {
    if (path !== undefined) changes.push({ uri: target.uri, path, place: 'replace', text });
    else if (target.opens !== undefined) added.push(text);
    else changes.push({ uri: target.uri, path: target.block, place: 'append', text });
  };
  if (bottom !== undefined) put(target.bottom, `bottom ${spellLength(bottom, measure)}`);
  if (height !== undefined) put(target.height, `height ${spellLength(height, measure)}`);
  if (asks) put(target.fit, `fit ${asks.map((ask) => spellAsk(ask, measure)).join(' else ')}`);
  if (added.length === 0) return changes;
  const text = [`${target.opens} {`, ...added.map((one) => `  ${one}`), '}'].join('\n');
  return [...changes, { uri: target.uri, path: '', place: 'append', text }];
}

function spellAsk(ask: Ask, measure: FitProblem['measure']): string {
  switch (ask.kind) {
    case 'move-ends':
      return 'move ends';
    case 'gaps':
      return `gaps ${spellLength(ask.low, measure)} to ${spellLength(ask.high, measure)}`;
    case 'short-repeat':
      return 'short repeat';
    case 'rip-last':
      return ask.least === undefined ? 'rip last' : `rip last, not under ${spellLength(ask.least, measure)}`;
    case 'change-width':
      return `change ${spellName(ask.slat)} to ${spellLength(ask.width, measure)}`;
    case 'trim':
      return `trim ${ask.board ? `with ${spellName(ask.board.stock)} ` : ''}at ${ask.edge}`;
  }
}
