import type { RunLayout } from '../layout/index.ts';
import { levelAt } from '../model/index.ts';
import { type Measure, TICKS_PER_MM, toMm } from '../units/index.ts';
import { panelChain, panelName, panelSpan, pictureStart } from './bridge-marks.ts';
import { turnedChain } from './chains.ts';
import { clearanceMarks } from './clearance-marks.ts';
import { compose } from './compose.ts';
import { deckElevation } from './deck-marks.ts';
import { drawChains } from './draw-chains.ts';
import { gapNote } from './gap-note.ts';
import { gateSign } from './gate-sign.ts';
import { hiddenGrooves } from './grooves.ts';
import { ground, PAST_GROUND } from './ground.ts';
import { jointNote } from './joint-note.ts';
import { leafKey } from './leaf-chains.ts';
import { bayLeftovers, leafLeftover } from './leftover.ts';
import { letterFor } from './letter.ts';
import { obstacleMarks } from './obstacle-marks.ts';
import { around, type Part } from './part.ts';
import { carriesSlats, pieceGroups } from './piece-groups.ts';
import type { Bounds } from './place-labels.ts';
import { type Seen, see } from './places.ts';
import { FROM_FRONT, fromBehind } from './project.ts';
import { remembered } from './remember.ts';
import { dimensionChains } from './run-chains.ts';
import { runMarks, stationZero } from './run-marks.ts';
import { taperTables } from './taper-table.ts';
import { titleBlock } from './title-block.ts';
import { turnedPart } from './turned-part.ts';
import type { View } from './view.ts';
import { pastEnds, wallMarks } from './wall-marks.ts';

/**
 * The run with its gates, seen from its front or from behind, dimensioned in `measure`. `letter` is the font size in
 * sheet millimeters; when not given it follows from the run's own size (`runLetter`). Remembered for
 * each run laid out.
 */
export function elevationOf(
  run: RunLayout,
  measure: Measure,
  letter = runLetter(run),
  from: 'front' | 'back' = 'front',
): View {
  return remembered(run, from, measure, letter, () => drawElevation(run, measure, letter, from));
}

/** Room for clearances under the ground, in letters. */
const CLEARANCES = 1.4;

/** Size of letters that suits a run alone on a sheet. */
export function runLetter(run: RunLayout, reading?: 'screen' | 'paper'): number {
  const height = Math.max(0, run.postTop - run.ground) + Math.max(0, run.embed.value);
  return letterFor(toMm(run.spec.length.value), toMm(height), reading);
}

function drawElevation(run: RunLayout, measure: Measure, letter: number, from: 'front' | 'back'): View {
  const lowest = Math.min(...run.groundLine.map(({ z }) => z));
  const level = -toMm(lowest);
  const length = toMm(run.spec.length.value);
  const surface = (x: number) => -toMm(levelAt(run.groundLine, Math.round(x * TICKS_PER_MM)));
  const behind = from === 'back';
  /** Marks are made for the front, and turned with the run. */
  const turned = (part: Part): Part => (behind ? turnedPart(part, length) : part);
  const projection = behind ? fromBehind(run.spec.length.value) : FROM_FRONT;
  const seen = see([...run.borrowed, ...run.pieces], projection);
  const walls = wallMarks(run, measure, letter);
  const standing = walls && turned(walls);
  const pieceBounds = objectBounds(run, seen, level);
  const object = standing ? around(pieceBounds, standing.bounds) : pieceBounds;
  const earth = run.spec.deck?.ground ? -toMm(run.spec.deck.ground.value) : level;
  const foot = Math.max(
    level,
    earth,
    ...seen.filter((one) => one.piece.role === 'post').map((one) => one.shape.y1),
  );
  const open = [
    bayLeftovers(run, measure),
    ...run.leaves.map((leaf) => leafLeftover(run, leaf, leafKey(run, leaf), measure)),
  ];
  const pieces = {
    // A leaf's frame is told in the view of the leaf; here the sign of its swing stands in its place.
    groups: [
      ...pieceGroups(
        seen,
        behind ? (x) => surface(length - x) : surface,
        (piece) => piece.gate === undefined && carriesSlats(piece),
      ),
      ...hiddenGrooves(
        run.key,
        run.pieces.filter(({ gate, role }) => role === 'post' || gate === undefined),
        projection,
      ),
    ],
    labels: [],
    bounds: [pieceBounds[0], pieceBounds[1], pieceBounds[2], foot] as const,
  };
  const signs = {
    groups: [...run.leaves.map((leaf) => gateSign(run.key, leaf)), ...open.flatMap((one) => one.groups)],
    labels: open.flatMap((one) => one.labels),
    bounds: [0, level, length, level] as const,
  };
  const tops = [...dimensionChains(run, measure, from), ...panelChain(run, measure)];
  const chains = drawChains(
    run.key,
    behind ? tops.map((one) => turnedChain(one, run.spec.length.value)) : tops,
    object,
    letter,
  );
  // Before a panel the tape is hooked where nothing else is written.
  const hooked = panelSpan(run) === undefined ? 'posts' : 'length';
  const posts = chains.labels.find((label) => label.key === `${run.key}/${hooked}/1`);
  // Under sloping ground the clearances of its lowest bay come first.
  const names = run.spec.deck ? earth : level + (run.spec.levels ? CLEARANCES * letter : 0);
  const marks = runMarks(run, names, foot, letter);
  const obstacles = obstacleMarks(run, surface, letter);
  const side = behind ? 'behind' : run.spec.seenFrom.value;
  const surfaceLine = run.groundLine.map(({ x, z }) => [toMm(x), -toMm(z)] as const);
  const start = toMm(pictureStart(run));
  const line = start < 0 ? [[start, surface(0)] as const, ...surfaceLine] : surfaceLine;
  const under = Math.max(marks.bounds[3], obstacles.bounds[3]) + 0.4 * letter;
  const tapers = behind ? undefined : taperTables(run, 0, length, under, measure, letter);
  const past = pastEnds(run, PAST_GROUND * letter);
  const titles = {
    title: `Elevation of ${run.spec.name}`,
    notes: [`seen from ${side}`, gapNote(run, undefined, measure), jointNote(run, measure)],
  };
  return compose(
    {
      key: behind ? `${run.key}/%back` : run.key,
      run: run.key,
      part: 'run',
      title: `Elevation of ${run.spec.name}, seen from ${side}`,
      side,
      kind: from,
      letter,
    },
    [
      pieces,
      turned(signs),
      run.spec.deck
        ? turned(deckElevation(run, run.spec.deck, letter, behind))
        : ground(
            run.key,
            behind ? line.map(([x, y]) => [length - x, y] as const).reverse() : line,
            letter,
            behind ? [past[1], past[0]] : past,
          ),
      ...(standing ? [standing] : []),
      turned(clearanceMarks(run, measure, letter)),
      chains,
      ...(posts ? [turned(stationZero(run.key, posts.y, letter))] : []),
      turned(marks),
      turned(panelName(run, names)),
      turned(obstacles),
      ...(tapers ? [tapers] : []),
      titleBlock(run.key, titles, 0, length, (tapers?.bounds[3] ?? under) + letter, measure, letter),
    ],
  );
}

/** What dimensions stand clear of: all pieces above the ground, and the run's own length. */
function objectBounds(run: RunLayout, seen: readonly Seen[], level: number): Bounds {
  let [x0, y0, x1] = [0, level, toMm(run.spec.length.value)];
  for (const { shape } of seen) {
    if (shape.x0 < x0) x0 = shape.x0;
    if (shape.x1 > x1) x1 = shape.x1;
    if (shape.y0 < y0) y0 = shape.y0;
  }
  return [x0, y0, x1, level];
}
