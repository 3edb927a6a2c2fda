import {
  type Bay,
  bottomEdge,
  heightAt,
  type Incline,
  isInBay,
  type Piece,
  type RunLayout,
  topEdge,
} from '../layout/index.ts';
import { levelAt } from '../model/index.ts';
import { type Measure, roundToStep, TICKS_PER_MM, type Ticks, toMm } from '../units/index.ts';
import { panelSpan, pictureStart } from './bridge-marks.ts';
import { chain } from './chains.ts';
import { compose } from './compose.ts';
import { dimensionText } from './dimension-text.ts';
import { drawChains } from './draw-chains.ts';
import { extentOf } from './extent.ts';
import { openGrooves } from './grooves.ts';
import { ground } from './ground.ts';
import { letterFor, type Reading } from './letter.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { pieceGroups } from './piece-groups.ts';
import type { Bounds } from './place-labels.ts';
import type { Seen } from './places.ts';
import { fromCut } from './project.ts';
import { remembered } from './remember.ts';
import { hatchLines, seeFromCut } from './section-cut.ts';
import { storyPole } from './story-pole.ts';
import { titleBlock } from './title-block.ts';
import type { Label, View } from './view.ts';

/** Between strokes of a cut face, in letters. */
const HATCH = 0.3;

/**
 * A run cut across the middle of its first bay of slats, seen toward station 0: cut faces hatched, the post
 * beyond with its buried part, heights of all slat edges from the datum. Undefined for a run without such a bay.
 */
export function sectionOf(run: RunLayout, measure: Measure, letter = sectionLetter(run)): View | undefined {
  const bay = run.bays.find((one) => one.gate === undefined && run.reach.has(one.number));
  if (!bay || !run.sound) return undefined;
  return remembered(run, 'section', measure, letter, () => drawSection(run, bay, measure, letter));
}

/** Size of letters that suits a section alone on a sheet: half of an elevation's, for it is drawn twice as large. */
export function sectionLetter(run: RunLayout, reading?: Reading): number {
  const height = Math.max(0, run.postTop - run.ground) + Math.max(0, run.embed.value);
  return letterFor(0, toMm(height) / 2, reading);
}

function drawSection(run: RunLayout, bay: Bay, measure: Measure, letter: number): View {
  const key = `${run.key}/%section`;
  const station = stationOf(run, bay);
  const post = run.posts.filter(({ to }) => to <= bay.from).at(-1);
  const seen = seeFromCut([...run.borrowed, ...run.pieces], station, beyond(run, post?.from ?? 0));
  const surface = levelAt(run.groundLine, station);
  const level = -toMm(surface);
  const [left, top, right, foot] = boundsOf(seen, level);
  const object: Bounds = [left, top, right, level];
  const cut = seen.filter((one) => one.cut);
  const chains = drawChains(key, sectionChains(run, bay, station, surface, seen, measure), object, letter);
  const edges = cut.filter(({ piece }) => piece.role !== 'cleat').map(({ shape }) => shape);
  const pole = storyPole(
    key,
    // Pieces that lie level with one another are marked once.
    [...new Map(edges.map(({ y0, y1 }) => [`${y0} ${y1}`, [ticks(-y1), ticks(-y0)] as const])).values()],
    right + 2.4 * letter,
    measure,
    letter,
  );
  const pieces = {
    groups: [
      ...pieceGroups(
        seen,
        () => level,
        () => false,
      ),
      ...openGrooves(key, seen, fromCut(station)),
      hatching(key, cut, letter),
    ],
    labels: sideNames(key, run, left, right, level, letter),
    bounds: [left, top, right, foot] as const,
  };
  const drawn: Part[] = [
    pieces,
    ground(
      key,
      [
        [left - letter, level],
        [right + letter, level],
      ],
      letter,
    ),
    chains,
    pole,
  ];
  const notes = [
    `cut at ${dimensionText(roundToStep(station, measure.step), measure)}`,
    'seen toward station 0',
    'heights at the right are from the datum',
  ];
  const title = `Section of ${run.spec.name} in bay ${bay.number}`;
  return compose({ key, run: run.key, part: 'section', title, side: 'the cut', kind: 'section', letter }, [
    ...drawn,
    titleBlock(
      key,
      { title, notes },
      Math.min(...drawn.map(({ bounds }) => bounds[0])),
      Math.max(...drawn.map(({ bounds }) => bounds[2])),
      Math.max(foot, level + 2.6 * letter) + 1.4 * letter,
      measure,
      letter,
    ),
  ]);
}

/** To the post beyond the cut; at the first post also a return or filler behind it, which is seen past it. */
function beyond(run: RunLayout, from: Ticks): Ticks {
  return from === 0 && panelSpan(run) === undefined ? pictureStart(run) : from;
}

const ticks = (mm: number): Ticks => Math.round(mm * TICKS_PER_MM);

/** The middle of the bay; with upright slats, of the slat nearest to it, so that one is cut. */
function stationOf(run: RunLayout, bay: Bay): Ticks {
  const middle = Math.round((bay.from + bay.to) / 2);
  if (!run.spec.infill.flip.upright) return middle;
  const middles = run.pieces
    .filter((piece) => piece.role === 'slat' && isInBay(piece, bay.number) && piece.gate === undefined)
    .map(({ solid }) => extentOf(solid))
    .map(({ x0, x1 }) => Math.round((x0 + x1) / 2));
  return middles.reduce(
    (best, x) => (Math.abs(x - middle) < Math.abs(best - middle) ? x : best),
    middles[0] ?? middle,
  );
}

function boundsOf(seen: readonly Seen[], level: number): Bounds {
  const shapes = seen.map(({ shape }) => shape);
  return [
    Math.min(0, ...shapes.map(({ x0 }) => x0)),
    Math.min(level, ...shapes.map(({ y0 }) => y0)),
    Math.max(0, ...shapes.map(({ x1 }) => x1)),
    Math.max(level, ...shapes.map(({ y1 }) => y1)),
  ];
}

/** Heights from the ground at the cut, and how deep everything is through the run. */
function sectionChains(
  run: RunLayout,
  bay: Bay,
  station: Ticks,
  surface: Ticks,
  seen: readonly Seen[],
  measure: Measure,
) {
  const at = (edge: Incline | undefined, level: Ticks) =>
    edge ? Math.round(heightAt(edge, station)) : level;
  const bottom = at(bottomEdge(run, bay.number), run.bottom);
  const top = at(topEdge(run, bay.number), run.top);
  const posts = seen.filter(({ piece }) => piece.role === 'post').map(({ piece }) => extentOf(piece.solid));
  const feet = posts.map(({ z0 }) => Math.min(z0, surface));
  const tops = posts.map(({ z1 }) => z1);
  const left = 'left' as const;
  const depths = seen.map(({ piece }) => depthOf(piece));
  const [front, back] = [Math.min(...depths.map(([y]) => y)), Math.max(...depths.map(([, y]) => y))];
  const faces = seen
    .filter(({ piece, cut }) => cut || piece.role === 'post')
    .map(({ piece }) => depthOf(piece));
  const all = [
    chain({ key: 'height', kind: 'overall', side: left }, [...feet, surface, top, ...tops], surface, measure),
    chain(
      { key: 'infill', kind: 'heights', side: left, parent: 'height' },
      [surface, bottom, top],
      surface,
      measure,
    ),
    chain({ key: 'depth', kind: 'overall', side: 'top' }, [front, back], front, measure),
    chain(
      { key: 'faces', kind: 'frame', side: 'top', parent: 'depth' },
      [front, ...faces.flat(), back],
      front,
      measure,
    ),
  ];
  return all.filter((one) => one.at.length > (one.key === 'faces' ? 2 : 1));
}

function depthOf({ solid }: Piece): [Ticks, Ticks] {
  const ys = solid.vertices.map(([, y]) => y);
  return [Math.min(...ys), Math.max(...ys)];
}

function hatching(key: string, cut: readonly Seen[], letter: number) {
  const path = cut
    .flatMap(({ shape }) => shape.parts ?? [shape])
    .flatMap((shape) => hatchLines(shape, HATCH * letter))
    .map((line) => linePath(...line))
    .join('');
  return lineGroup(`${key}/hatching`, 'hatch', path, BEFORE_ALL + 2);
}

/** Which side is the front, under the ground. */
function sideNames(
  key: string,
  run: RunLayout,
  left: number,
  right: number,
  level: number,
  letter: number,
): Label[] {
  const note = (name: string, x: number, anchor: 'start' | 'end'): Label => ({
    key: `${key}/${name}`,
    text: name === 'front' ? run.spec.seenFrom.value : 'behind',
    x: hundredth(x),
    y: hundredth(level),
    anchor,
    turn: 0,
    shift: [anchor === 'end' ? -0.8 : 0.8, -2],
    kind: 'note',
    priority: 31,
    room: 0,
    roomFor: 'length',
  });
  return [note('front', left - 0.5 * letter, 'end'), note('back', right + 0.5 * letter, 'start')];
}
