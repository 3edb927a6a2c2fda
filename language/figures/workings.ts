import type { Layout, RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import type { Working } from './working.ts';
import {
  asBuiltGaps,
  embedment,
  gateFigures,
  holesOf,
  movements,
  postBendings,
  postLineWorking,
  privacy,
  slatFigures,
  wallWorkings,
  windOn,
  worstDeckPost,
} from './workings/index.ts';

/** A kind of calculation on one run. */
export type RunCalculation = (run: RunLayout, job: Job) => readonly Working[];
/** A kind of calculation on all of a job. */
export type JobCalculation = (layout: Layout, job: Job) => readonly Working[];

/** Every kind of calculation on a run, in the order a checker reads them. A new one is a line here. */
const RUN_CALCULATIONS: readonly RunCalculation[] = [
  (run, job) => [windOn(run, job).working],
  (run, job) =>
    slatFigures(run, job).flatMap(({ bending, deflection, sag }) => [
      bending,
      deflection,
      ...(sag ? [sag] : []),
    ]),
  (run, job) => movements(run, job).map(({ working }) => working),
  (run, job) => postBendings(run, job).map(({ working }) => working),
  (run, job) => workingIn(worstDeckPost(run, job)),
  (run, job) => workingIn(embedment(run, job)),
  (run, job) => {
    const holes = holesOf(run, job);
    return holes ? [holes.working, holes.offWorking] : [];
  },
  asBuiltGaps,
  wallWorkings,
  postLineWorking,
  (run, job) => gateFigures(run, job).flatMap(({ workings }) => workings),
];

/** Every kind of calculation that looks at more than one run. */
const JOB_CALCULATIONS: readonly JobCalculation[] = [privacy];

/** The workings of one run. */
export function workingsOfRun(run: RunLayout, job: Job): readonly Working[] {
  return run.sound ? RUN_CALCULATIONS.flatMap((calculate) => calculate(run, job)) : [];
}

/** Every working of a job: run by run, then those of all of it. */
export function workingsOf(layout: Layout, job: Job): readonly Working[] {
  return [
    ...layout.runs.flatMap((run) => workingsOfRun(run, job)),
    ...JOB_CALCULATIONS.flatMap((calculate) => calculate(layout, job)),
  ];
}

const workingIn = (found: { readonly working: Working } | undefined): readonly Working[] =>
  found ? [found.working] : [];
