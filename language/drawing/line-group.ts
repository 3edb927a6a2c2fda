import { hashText } from './hash.ts';
import type { Group, Style } from './view.ts';

/** Where things that are no pieces lie in the order of painting. */
export const BEHIND_ALL = 1e6;
export const BEFORE_ALL = -2e6;

/** A group of strokes or signs in which no piece can be found. */
export function lineGroup(key: string, style: Style, path: string, depth: number): Group {
  return { key, hash: hashText(`${style} ${depth}\n${path}`), style, path, hits: [], depth };
}
