import { hashText } from './hash.ts';
import type { Part } from './part.ts';
import { hundredth } from './path-text.ts';
import { leantOver } from './place-labels.ts';
import type { Group, Label } from './view.ts';

/**
 * Marks drawn for a thing seen from its front, as they stand when it is seen from behind: every place from
 * the other end of `length` (sheet millimeters), texts still to be read from the left.
 */
export function turnedPart({ groups, labels, bounds }: Part, length: number): Part {
  return {
    groups: groups.map((group) => turnedGroup(group, length)),
    labels: labels.map((label) => turnedLabel(label, length)),
    bounds: [length - bounds[2], bounds[1], length - bounds[0], bounds[3]],
  };
}

/** A group in which no piece is found. */
function turnedGroup(group: Group, length: number): Group {
  const path = turnedPath(group.path, length);
  return { ...group, path, hash: hashText(`${group.style} ${group.depth}\n${path}`) };
}

function turnedLabel(label: Label, length: number): Label {
  const x = hundredth(length - label.x);
  // A text written upward keeps its side of its point; a level one changes it.
  if (label.turn === 90) return { ...label, x };
  const { led } = label;
  return { ...label, x, ...leantOver(label), ...(led && { led: leantOver(led) }) };
}

/** A path of the commands that this folder writes, from the other end of `length`. */
export function turnedPath(path: string, length: number): string {
  return path.replace(/([MLHAa])([^A-Za-z]*)/g, (_, command: string, text: string) => {
    const numbers = text.trim().split(/[ ,]+/).map(Number);
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0] = numbers;
    const x = (value: number) => hundredth(length - value);
    if (command === 'H') return `H${x(a)}`;
    if (command === 'A') return `A${a} ${b} ${c} ${d} ${1 - e} ${x(f)} ${g}`;
    if (command === 'a') return `a${a} ${b} ${c} ${d} ${1 - e} ${hundredth(0 - f)} ${g}`;
    return `${command}${x(a)} ${b}`;
  });
}
