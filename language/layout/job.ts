import type { BrokenRun, Job, Placement, RunSpec } from '../model/index.ts';
import { bridgedEnd, bridgeJoint } from './bridge-joint.ts';
import { hashOf } from './hash.ts';
import { endJoint, type Joints, startJoint } from './joints.ts';
import type { Joint, Layout, RunLayout } from './layout.ts';
import { type GivenLines, givenLines } from './lines-as.ts';
import { placesOf } from './places.ts';
import { layOutRun } from './run.ts';
import { isSame } from './same.ts';

/** What is remembered of a job's runs between two states of its text. */
export interface LayoutMemo {
  /** How many runs have been laid out so far. */
  readonly laidOut: number;
  /** The latest layout of a run that could be worked out; undefined when there was none. */
  lastGood(run: string): RunLayout | undefined;
}

interface Remembered {
  readonly spec: RunSpec;
  readonly layout: RunLayout;
}

class RunMemo implements LayoutMemo {
  laidOut = 0;
  latest = new Map<string, Remembered>();
  good = new Map<string, RunLayout>();

  lastGood(run: string): RunLayout | undefined {
    return this.good.get(run);
  }
}

/** A memory for one job's runs, empty at first. */
export function createLayoutMemo(): LayoutMemo {
  return new RunMemo();
}

/**
 * Lays out every run that is not broken. A run whose spec and neighbors' facts are as they were is not laid out
 * again, whatever else changed. A broken run has no layout here; its last good one is in the memo as long as
 * the job names it, and stands in for it where another run comes after it.
 */
export function layOutJob(job: Job, memo: LayoutMemo = createLayoutMemo()): Layout {
  if (!(memo instanceof RunMemo)) throw new TypeError('the memo is not one of createLayoutMemo');
  const latest = new Map<string, Remembered>();
  const good = new Map<string, RunLayout>();
  const laid = new Map<RunSpec, RunLayout>();
  const entries = named(job);
  const byName = new Map(entries.map((entry) => [entry.name, entry]));
  const followers = followersOf(entries);

  const linesOf = (run: RunSpec, from: string): GivenLines => {
    const source = byName.get(from);
    if (source) layOut(source);
    return givenLines(from, good.get(from) ?? memo.good.get(from), run);
  };
  const layOut = ({ name, run }: Entry): void => {
    if (latest.has(name) || (!isBroken(run) && laid.has(run))) return;
    const before = memo.latest.get(name);
    if (isBroken(run)) {
      if (before) latest.set(name, before);
    } else {
      const first = leansOn(run) ? byName.get(run.placement.run) : undefined;
      if (first) layOut(first);
      const neighbor = first && (good.get(first.name) ?? memo.good.get(first.name));
      const next = followers.get(name);
      const start = neighbor && startJoint(neighbor, run);
      const bridge = neighbor && bridgeJoint(neighbor, run);
      const end = next && endJoint(run, next);
      const bridged = next && bridgedEnd(next);
      const lines = run.linesAs && linesOf(run, run.linesAs.value);
      const joints: Joints = {
        ...(start ? { start } : {}),
        ...(end ? { end } : {}),
        ...(lines ? { lines } : {}),
        ...(bridge ? { bridge } : {}),
        ...(bridged ? { bridged } : {}),
      };
      const layout = remembered(memo, run, joints, before);
      laid.set(run, layout);
      latest.set(name, { spec: run, layout });
      if (layout.sound) good.set(name, layout);
    }
    const last = good.get(name) ?? memo.good.get(name);
    if (last) good.set(name, last);
  };
  for (const entry of entries) layOut(entry);
  memo.latest = latest;
  memo.good = good;
  const runs = entries.flatMap(({ run }) => (isBroken(run) ? [] : (laid.get(run) ?? [])));
  return { runs, joints: jointsOf(runs), places: placesOf(runs) };
}

/** Whether it shares a post with the run before it, or closes the offset from it. */
function leansOn(run: RunSpec): run is RunSpec & { readonly placement: Exclude<Placement, { kind: 'at' }> } {
  const { placement } = run;
  return placement?.kind === 'after' || (placement?.kind === 'on' && placement.bridge !== undefined);
}

interface Entry {
  readonly name: string;
  readonly run: RunSpec | BrokenRun;
}

/** Two runs of one name are told of elsewhere; here each keeps a memory of its own. */
function named({ runs }: Job): readonly Entry[] {
  const times = new Map<string, number>();
  return runs.map((run) => {
    const time = (times.get(run.name) ?? 0) + 1;
    times.set(run.name, time);
    return { name: time === 1 ? run.name : `${run.name}\n${time}`, run };
  });
}

/** By the name of a run, the one that comes after it. */
function followersOf(entries: readonly Entry[]): ReadonlyMap<string, RunSpec> {
  return new Map(
    entries.flatMap(({ run }): [string, RunSpec][] =>
      !isBroken(run) && leansOn(run) ? [[run.placement.run, run]] : [],
    ),
  );
}

function jointsOf(runs: readonly RunLayout[]): readonly Joint[] {
  const byName = new Map(runs.map((run) => [run.spec.name, run]));
  return runs.flatMap(({ key, spec, joints: { start }, sound }): Joint[] => {
    const first = start && byName.get(start.after);
    if (!start || !first?.sound || !sound || spec.placement?.kind !== 'after') return [];
    const kind = spec.placement.corner.value;
    return [{ first: first.key, second: key, kind, turn: start.turn, post: start.post.key }];
  });
}

function remembered(memo: RunMemo, spec: RunSpec, joints: Joints, before: Remembered | undefined): RunLayout {
  if (before && isSame(before.spec, spec) && isSame(before.layout.joints, joints)) return before.layout;
  memo.laidOut++;
  const alone = Object.keys(joints).length === 0;
  return layOutRun(spec, alone ? hashOf(spec) : hashOf([spec, joints]), joints);
}

const isBroken = (run: RunSpec | BrokenRun): run is BrokenRun => 'broken' in run;
