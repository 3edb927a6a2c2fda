import type { Leaf, RunLayout } from '../layout/index.ts';
import { type Measure, toMm } from '../units/index.ts';
import { turnedChain } from './chains.ts';
import { compose } from './compose.ts';
import { drawChains } from './draw-chains.ts';
import { runLetter } from './elevation.ts';
import { gapNote } from './gap-note.ts';
import { hiddenGrooves } from './grooves.ts';
import { leafChains, leafKey, leafPieces } from './leaf-chains.ts';
import { leafLeftover } from './leftover.ts';
import { letterFor } from './letter.ts';
import { hundredth } from './path-text.ts';
import { pieceGroups } from './piece-groups.ts';
import type { Bounds } from './place-labels.ts';
import { see } from './places.ts';
import { FROM_FRONT, fromBehind, type Projection } from './project.ts';
import { remembered } from './remember.ts';
import { titleBlock } from './title-block.ts';
import { turnedPart } from './turned-part.ts';
import type { Label, View } from './view.ts';

/**
 * A gate leaf alone, seen from the front of its run or from behind, with the frame and brace behind its slats in hidden
 * lines. `letter` as for `elevationOf`; when not given, that of its run.
 */
export function leafElevation(
  run: RunLayout,
  leaf: Leaf,
  measure: Measure,
  letter = runLetter(run),
  from: 'front' | 'back' = 'front',
): View {
  return remembered(run, `leaf ${from} ${leaf.gate}`, measure, letter, () =>
    drawLeaf(run, leaf, measure, letter, from),
  );
}

/** Size of letters that suits a leaf alone on a sheet. */
export function leafLetter(leaf: Leaf, reading?: 'screen' | 'paper'): number {
  return letterFor(toMm(leaf.width), toMm(leaf.height), reading);
}

function drawLeaf(
  run: RunLayout,
  leaf: Leaf,
  measure: Measure,
  letter: number,
  from: 'front' | 'back',
): View {
  const behind = from === 'back';
  const projection = behind ? fromBehind(leaf.width) : FROM_FRONT;
  const key = leafKey(run, leaf);
  // Its own lower left corner is the sheet's zero, so that a leaf moved along its run is drawn alike.
  const bounds: Bounds = [0, -toMm(leaf.height), toMm(leaf.width), 0];
  const moved: Projection = (x, y, z, to) => projection(x - leaf.x0, y, z - leaf.z0, to);
  const all = leafPieces(run, leaf);
  const seen = see(all, moved);
  const own: Leaf = { ...leaf, x0: 0, x1: leaf.width, z0: 0, z1: leaf.height };
  const side = behind ? 'behind' : run.spec.seenFrom.value;
  const opens = leaf.spec.opensTo?.value;
  const notes = [
    `seen from ${side}`,
    gapNote(run, leaf.gate, measure),
    ...(opens === undefined ? [] : [`opens to ${opens}`]),
  ];
  const open = leafLeftover(run, own, key, measure);
  const grooves = hiddenGrooves(key, all, moved);
  const pieces = { groups: [...pieceGroups(seen, () => Infinity), ...grooves], labels: [], bounds };
  const marks = { groups: open.groups, labels: [...open.labels, ...sideNames(key, own, letter)], bounds };
  const chains = leafChains(run, leaf, measure, from);
  return compose(
    {
      key: behind ? `${key}/leaf/%back` : `${key}/leaf`,
      run: run.key,
      part: 'leaf',
      title: `Leaf of gate ${leaf.gate}, seen from ${side}`,
      side,
      kind: from,
      letter,
    },
    [
      pieces,
      behind ? turnedPart(marks, toMm(leaf.width)) : marks,
      drawChains(key, behind ? chains.map((one) => turnedChain(one, leaf.width)) : chains, bounds, letter),
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
