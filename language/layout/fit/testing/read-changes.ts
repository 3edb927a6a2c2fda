import type { Remedy } from '../../../model/index.ts';
import { parseLength, type Ticks } from '../../../units/index.ts';
import type { TextChange } from '../../layout.ts';
import type { FitProblem } from '../index.ts';
import { boardOf } from './boards.ts';

/** The problem that the text states once it is changed: reads the statements as the language means them. */
export function withChanges(problem: FitProblem, changes: readonly TextChange[]): FitProblem {
  return changes.reduce(withStatement, problem);
}

function withStatement(problem: FitProblem, { text, path, place, uri }: TextChange): FitProblem {
  const { target, ends } = problem;
  const [word = ''] = text.split(' ');
  const stated = { fit: target.fit, bottom: target.bottom, height: target.height }[word];
  if (uri !== target.uri || path !== (stated ?? target.block)) throw new Error(`${word} goes to ${path}`);
  if (place !== (stated === undefined ? 'append' : 'replace')) throw new Error(`${word} is to ${place}`);
  if (word === 'fit') {
    return {
      ...problem,
      remedies: text
        .slice(4)
        .split(' else ')
        .map((each) => remedyOf(each, problem)),
    };
  }
  if (!ends || (word !== 'bottom' && word !== 'height')) throw new Error(`What is ${text}?`);
  const value = lengthOf(text.slice(word.length + 1));
  const changed = { ...ends, [word]: { low: value, high: value } };
  const ground = problem.space - (ends.height.high - ends.bottom.low);
  return { ...problem, ends: changed, space: changed.height.high - changed.bottom.low + ground };
}

function remedyOf(text: string, { trimBoards, repeat }: FitProblem): Remedy {
  if (text === 'move ends') return { kind: 'move-ends' };
  if (text === 'short repeat') return { kind: 'short-repeat' };
  if (text === 'rip last') return { kind: 'rip-last' };
  const rip = /^rip last, not under (.+)$/.exec(text);
  if (rip) return { kind: 'rip-last', least: lengthOf(rip[1]) };
  const gaps = /^gaps (.+) to (.+)$/.exec(text);
  if (gaps) return { kind: 'gaps', low: lengthOf(gaps[1]), high: lengthOf(gaps[2]) };
  const change = /^change (.+) to (.+)$/.exec(text);
  if (change) return { kind: 'change-width', slat: nameOf(change[1]), width: lengthOf(change[2]) };
  const trim = /^trim with (.+) at (top|bottom)$/.exec(text);
  const board = [...trimBoards, ...repeat].find(({ stock }) => trim && stock === nameOf(trim[1]));
  if (!trim || !board) throw new Error(`What is ${text}?`);
  return { kind: 'trim', board: boardOf(board), edge: trim[2] === 'top' ? 'top' : 'bottom' };
}

function nameOf(text = ''): string {
  const quoted = /^"([^"]*)"$|^'([^']*)'$/.exec(text);
  return quoted ? (quoted[1] ?? quoted[2] ?? '') : text;
}

function lengthOf(text = ''): Ticks {
  const length = parseLength(text);
  if (!length.ok) throw new Error(`${text} is no length: ${length.problem}`);
  return length.ticks;
}
