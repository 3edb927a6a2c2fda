import type { BrokenRun, Job, RunSpec } from '../model/index.ts';
import { hashOf } from './hash.ts';
import type { Layout, RunLayout } from './layout.ts';
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
 * Lays out every run that is not broken. A run whose spec is as it was is not laid out again, whatever else
 * changed. A broken run has no layout here; its last good one is in the memo as long as the job names it.
 */
export function layOutJob(job: Job, memo: LayoutMemo = createLayoutMemo()): Layout {
  if (!(memo instanceof RunMemo)) throw new TypeError('the memo is not one of createLayoutMemo');
  const latest = new Map<string, Remembered>();
  const good = new Map<string, RunLayout>();
  const runs: RunLayout[] = [];
  const times = new Map<string, number>();
  for (const run of job.runs) {
    // Two runs of one name are told of elsewhere; here each keeps a memory of its own.
    const time = (times.get(run.name) ?? 0) + 1;
    times.set(run.name, time);
    const name = time === 1 ? run.name : `${run.name}\n${time}`;
    const before = memo.latest.get(name);
    const layout = isBroken(run) ? undefined : remembered(memo, run, before);
    if (layout && !isBroken(run)) {
      latest.set(name, { spec: run, layout });
      runs.push(layout);
    } else if (before) {
      latest.set(name, before);
    }
    const last = layout?.sound ? layout : memo.good.get(name);
    if (last) good.set(name, last);
  }
  memo.latest = latest;
  memo.good = good;
  return { runs };
}

function remembered(memo: RunMemo, spec: RunSpec, before: Remembered | undefined): RunLayout {
  if (before && isSame(before.spec, spec)) return before.layout;
  memo.laidOut++;
  return layOutRun(spec, hashOf(spec));
}

const isBroken = (run: RunSpec | BrokenRun): run is BrokenRun => 'broken' in run;
