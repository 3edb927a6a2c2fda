import { bridgeKey, type Frame, type RunLayout } from '../layout/index.ts';
import { formatDegrees, type Measure, type Ticks, toMm } from '../units/index.ts';
import { type Chain, chain } from './chains.ts';
import { dimensionText } from './dimension-text.ts';
import { extentOf } from './extent.ts';
import type { Part } from './part.ts';
import { hundredth } from './path-text.ts';
import { type At, alongside, moved, planAxes } from './plan-axes.ts';
import type { Label } from './view.ts';

const TEXT = { room: 0, roomFor: 'length' } as const;

/** Where the picture of a run begins: at the post of the run before where an offset from it is closed, else at 0. */
export function pictureStart({ joints: { bridge }, borrowed }: RunLayout): Ticks {
  return bridge ? Math.min(0, ...borrowed.map(({ solid }) => extentOf(solid).x0)) : 0;
}

/** The space that a panel takes along the run, from the post of the run before. */
export function panelSpan({ spec: { placement }, joints: { bridge } }: RunLayout): Ticks | undefined {
  const panel = placement?.kind === 'on' && placement.bridge?.kind === 'panel';
  return panel && bridge && !bridge.trouble ? placement.gap.value : undefined;
}

const panelKey = ({ spec }: RunLayout): string => bridgeKey(spec.name, 'panel');

/** Its dimension in an elevation, beside those of posts and bays. */
export function panelChain(run: RunLayout, measure: Measure): readonly Chain[] {
  const span = panelSpan(run);
  return span === undefined
    ? []
    : [chain({ key: 'panel', kind: 'posts', side: 'top' }, [0 - span, 0], 0, measure)];
}

/** Its name under the ground. */
export function panelName(run: RunLayout, ground: number): Part {
  const span = panelSpan(run);
  const label: Label = {
    ...TEXT,
    key: `${panelKey(run)}/name`,
    text: 'panel',
    anchor: 'middle',
    turn: 0,
    kind: 'note',
    x: hundredth(0 - toMm(span ?? 0) / 2),
    y: hundredth(ground),
    shift: [0, -2],
    priority: 50,
    room: hundredth(toMm(span ?? 0)),
  };
  return { groups: [], labels: span === undefined ? [] : [label], bounds: [0, ground, 0, ground] };
}

/** How far a run steps off the line of the one before it, on the plan; of a panel its angle too. */
export function offsetNotes(
  run: RunLayout,
  frame: Frame,
  measure: Measure,
  letter: number,
): readonly Label[] {
  const { placement, post } = run.spec;
  if (placement?.kind !== 'on' || !placement.step) return [];
  const axes = planAxes(frame);
  const step = placement.step.value;
  const front: At = [0 - axes.back[0], 0 - axes.back[1]];
  const note = (key: string, text: string, at: At): Label => ({
    ...TEXT,
    ...alongside(front),
    key: `${run.key}/plan/${key}`,
    text,
    kind: 'dimension',
    x: hundredth(at[0]),
    y: hundredth(at[1]),
    priority: 12,
  });
  const half = post.value.through.value / 2;
  const off = `${dimensionText(Math.abs(step), measure)} ${step > 0 ? 'back' : 'forward'}`;
  const beside = moved(moved(axes.at(0, 0 - half), front, 1.1 * letter), axes.along, 0.6 * letter);
  const words = { ...note('step', off, beside), ...onward(front, axes.along) };
  const span = panelSpan(run);
  const slat = run.pieces.find(({ key, role }) => role === 'slat' && key.startsWith(`${panelKey(run)}/`));
  if (span === undefined || !slat) return [words];
  const angle = formatDegrees(Math.abs(slat.cut.ends[0].bevel));
  const middle = moved(axes.at(0 - span / 2, 0 - step / 2 - half), front, 1.4 * letter);
  return [words, note('panel-angle', angle, middle)];
}

/** Read from a point on, the way a run goes. */
function onward(side: At, along: At): Pick<Label, 'anchor' | 'turn' | 'shift'> {
  const written = alongside(side);
  if (written.anchor !== 'middle') return written;
  const on = written.turn === 0 ? along[0] >= 0 : along[1] <= 0;
  return { ...written, anchor: on ? 'start' : 'end' };
}
