import { alikeTapers, taperLine } from '../../language/drawing/index.ts';
import type { Piece } from '../../language/layout/index.ts';
import { formatDegrees, formatLength, type Measure, type Ticks } from '../../language/units/index.ts';
import { grooveOf } from './groove-words.ts';

/**
 * What is cut on pieces besides their length, width and ends: tapers, edges ripped at an angle, grooves, and
 * what is marked; a line each. Of braces that set posts their ends, too.
 */
export function pieceNotes(pieces: readonly Piece[], measure: Measure): readonly string[] {
  const length = (ticks: Ticks) => formatLength(ticks, measure);
  const named = namesAmong(pieces);
  const told = (text: (piece: Piece) => string | undefined): string[] => {
    const alike = new Map<string, Piece[]>();
    for (const piece of pieces) {
      const said = text(piece);
      if (said === undefined) continue;
      const held = alike.get(said);
      if (held) held.push(piece);
      else alike.set(said, [piece]);
    }
    return [...alike].map(([said, same]) => `${named(same)}: ${said}`);
  };
  return [
    ...alikeTapers(pieces, measure).flatMap(({ pieces: same, taper }) => [
      `${named(same)}: ${taper.title}`,
      `${taper.from} and wide: ${taperLine(taper)}`,
    ]),
    ...told(({ cut: { edge } }) =>
      edge === undefined ? undefined : `one edge ripped at ${formatDegrees(edge)} off square`,
    ),
    ...told(({ cut: { marks } }) => marks && `mark at ${marks.map(length).join(' and ')}`),
    ...told(({ role, cut }) =>
      role === 'prop'
        ? `one end square, the other cut ${formatDegrees(Math.abs(cut.ends[1].miter))} off square`
        : undefined,
    ),
    ...told(({ role, cut: { grooves = [] } }) =>
      grooves.length === 0
        ? undefined
        : `${grooves.length === 1 ? 'groove' : 'grooves'} ${grooves.map((groove) => grooveOf(role, groove, length)).join('; ')}`,
    ),
  ];
}

/** Orders P2 before P10. */
const NUMBERED = new Intl.Collator('en', { numeric: true });

/** Labels of pieces; with their runs where there are several, as a label is its own only within one. */
function namesAmong(all: readonly Piece[]): (pieces: readonly Piece[]) => string {
  const several = new Set(all.map(({ run }) => run)).size > 1;
  return (pieces) => {
    const runs = new Map<string, string[]>();
    for (const { run, label } of pieces) {
      const labels = runs.get(run);
      if (labels) labels.push(label);
      else runs.set(run, [label]);
    }
    return [...runs]
      .map(([run, labels]) => `${several ? `${run} ` : ''}${labels.sort(NUMBERED.compare).join(', ')}`)
      .join('; ');
  };
}
