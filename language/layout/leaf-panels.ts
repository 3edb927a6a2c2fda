import { facesOf, type ScreenFace, standsBetween } from '../model/index.ts';
import type { Filled } from './fit-infill.ts';
import type { HeldEnd, Hold, Panel } from './infill.ts';
import type { Opening } from './layout.ts';
import type { LeafDepths } from './leaf-depths.ts';
import { type LeafFrame, railKey, stileKey } from './leaf-frame.ts';
import { type Line, thickestOf } from './lines.ts';
import { openingsOf } from './openings.ts';
import { endInset, pocketOf } from './pockets.ts';

/** One panel of slats, or the front and the back where both have slats. */
export function panelsOf(
  frame: LeafFrame,
  { lines, back }: Pick<Filled, 'lines' | 'back'>,
  depths: LeafDepths,
): readonly Panel[] {
  const [face] = facesOf(frame.gate.infill.mounting.value);
  const first = panelOf(frame, lines, holdOf(frame, depths, lines, face));
  if (!back) return [first];
  return [first, { ...panelOf(frame, back, holdOf(frame, depths, back, 'back')), behind: true }];
}

function panelOf(frame: LeafFrame, lines: readonly Line[], hold: Hold): Panel {
  const { gate, spec } = frame;
  const { infill } = gate;
  const { upright } = infill.flip;
  const between = standsBetween(infill.mounting.value);
  const gap = endInset(infill);
  const place = between ? frame.inside : frame;
  const [low, high] = upright ? place.z : place.x;
  return {
    run: spec.name,
    gate: gate.name,
    bay: frame.bay,
    key: frame.key,
    label: frame.label,
    upright,
    lines,
    reach: [low + gap, high - gap],
    // Level slats of a passive leaf end where those of the active one, mirrored, would.
    flush: between ? 'middle' : !upright && gate.half?.active === false ? 'end' : 'start',
    step: spec.measure.step,
    hold,
    from: [infill.fill, gate.origin],
  };
}

function holdOf(
  frame: LeafFrame,
  depths: LeafDepths,
  lines: readonly Line[],
  face: ScreenFace | undefined,
): Hold {
  const { gate, x, z, inside } = frame;
  const { mounting, cleat, flip } = gate.infill;
  const pocket = pocketOf(mounting.value, thickestOf(lines));
  if (face) {
    const two = facesOf(mounting.value).length === 2;
    return {
      kind: 'face',
      face,
      plane: two && face === 'back' ? depths.frame[1] : depths.slats,
      holders: [
        { key: stileKey(frame, 'left'), x: [x[0], inside.x[0]], z },
        { key: stileKey(frame, 'right'), x: [inside.x[1], x[1]], z },
        ...frame.rails
          .toReversed()
          .map((rail) => ({ key: railKey(frame, rail.name), x: inside.x, z: rail.z })),
      ],
    };
  }
  const ends: readonly [HeldEnd, HeldEnd] = flip.upright
    ? [
        { name: 'bottom', at: inside.z[0], holder: railKey(frame, 'bottom') },
        { name: 'top', at: inside.z[1], holder: railKey(frame, 'top') },
      ]
    : [
        { name: 'left', at: inside.x[0], holder: stileKey(frame, 'left') },
        { name: 'right', at: inside.x[1], holder: stileKey(frame, 'right') },
      ];
  const span = flip.upright ? inside.x : inside.z;
  if (!pocket) {
    if (!cleat) throw new Error(`no cleats in ${gate.name}`);
    return { kind: 'between', front: depths.slats, cleat, ends, span };
  }
  const { value } = mounting;
  const channel = value.kind === 'channels' ? { channel: value.channel } : {};
  return { kind: 'pocket', pocket, ...channel, ends, span };
}

/** Where one looks through a leaf, between its rails. */
export function leafOpenings(
  frame: LeafFrame,
  { lines, back }: Pick<Filled, 'lines' | 'back'>,
): readonly Opening[] {
  const { gate, inside, y } = frame;
  const { upright } = gate.infill.flip;
  const place = standsBetween(gate.infill.mounting.value) ? inside : frame;
  const several = frame.panes.length > 1;
  return frame.panes.flatMap(({ z }, index) =>
    openingsOf({
      key: several ? `${frame.key}/pane-${index + 1}` : frame.key,
      bay: frame.bay,
      gate: gate.name,
      upright,
      lines,
      back,
      cavity: y[1] - y[0],
      span: upright ? place.x : place.z,
      x: inside.x,
      z,
    }),
  );
}
