import type { Leaf, RunLayout } from '../layout/index.ts';
import { type Measure, toMm } from '../units/index.ts';
import { compose } from './compose.ts';
import { drawChains } from './draw-chains.ts';
import { runLetter } from './elevation.ts';
import { gapNote } from './gap-note.ts';
import { leafChains, leafKey, leafPieces } from './leaf-chains.ts';
import { leafLeftover } from './leftover.ts';
import { letterFor } from './letter.ts';
import { hundredth } from './path-text.ts';
import { pieceGroups } from './piece-groups.ts';
import type { Bounds } from './place-labels.ts';
import { see } from './places.ts';
import { FROM_FRONT } from './project.ts';
import { remembered } from './remember.ts';
import { titleBlock } from './title-block.ts';
import type { Label, View } from './view.ts';

/**
 * A gate leaf alone, seen from the front of its run, with the frame and brace behind its slats in hidden
 * lines. `letter` as for `elevationOf`; when not given, that of its run.
 */
export function leafElevation(run: RunLayout, leaf: Leaf, measure: Measure, letter = runLetter(run)): View {
  return remembered(run, `leaf ${leaf.gate}`, measure, letter, () => drawLeaf(run, leaf, measure, letter));
}

/** Size of letters that suits a leaf alone on a sheet. */
export function leafLetter(leaf: Leaf, reading?: 'screen' | 'paper'): number {
  return letterFor(toMm(leaf.width), toMm(leaf.height), reading);
}

function drawLeaf(run: RunLayout, leaf: Leaf, measure: Measure, letter: number): View {
  const key = leafKey(run, leaf);
  // Its own lower left corner is the sheet's zero, so that a leaf moved along its run is drawn alike.
  const bounds: Bounds = [0, -toMm(leaf.height), toMm(leaf.width), 0];
  const seen = see(leafPieces(run, leaf), (x, y, z, to) => FROM_FRONT(x - leaf.x0, y, z - leaf.z0, to));
  const own: Leaf = { ...leaf, x0: 0, x1: leaf.width, z0: 0, z1: leaf.height };
  const side = run.spec.seenFrom.value;
  const opens = leaf.spec.opensTo?.value;
  const notes = [
    `seen from ${side}`,
    gapNote(run, leaf.gate, measure),
    ...(opens === undefined ? [] : [`opens to ${opens}`]),
  ];
  const open = leafLeftover(run, own, key, measure);
  const pieces = {
    groups: [...pieceGroups(seen, () => Infinity), ...open.groups],
    labels: open.labels,
    bounds,
  };
  return compose(
    {
      key: `${key}/leaf`,
      run: run.key,
      part: 'leaf',
      title: `Leaf of gate ${leaf.gate}, seen from ${side}`,
      side,
      projection: 'elevation',
      letter,
    },
    [
      pieces,
      { groups: [], labels: sideNames(key, own, letter), bounds },
      drawChains(key, leafChains(run, leaf, measure), bounds, letter),
      titleBlock(
        key,
        { title: `Leaf of gate ${leaf.gate}`, notes },
        bounds[0],
        bounds[2],
        bounds[3] + 2.8 * letter,
        measure,
        letter,
      ),
    ],
  );
}

/** Which side hangs and which shuts, under the corners of the leaf. */
function sideNames(key: string, leaf: Leaf, letter: number): Label[] {
  const hingesLeft = leaf.spec.hinges.value === 'left';
  const side = (text: string, left: boolean): Label => ({
    key: `${key}/${text}-side`,
    text,
    x: left ? 0 : hundredth(toMm(leaf.width)),
    y: hundredth(0.5 * letter),
    anchor: left ? 'start' : 'end',
    turn: 0,
    shift: [0, -0.8],
    kind: 'note',
    priority: 30,
    room: 0,
    roomFor: 'length',
  });
  return [side('hinges', hingesLeft), side('latch', !hingesLeft)];
}
