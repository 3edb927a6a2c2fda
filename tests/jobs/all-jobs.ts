import { examples, exampleTexts } from './examples.ts';
import { madeJobs } from './made-jobs.ts';
import { type OpenJob, openJobs } from './open-job.ts';

/** A job of the examples or a made one, with its text as it stands. */
export interface WholeJob {
  readonly name: string;
  readonly path: string;
  readonly text: string;
}

/** The examples first, then the made jobs. */
export const allJobs: readonly WholeJob[] = [
  ...examples,
  ...madeJobs.map(({ name, text }) => ({
    name,
    text,
    path: `/examples/made/${name.replaceAll(' ', '-')}.slat`,
  })),
];

/** Opens jobs by address, as they stand or with another text; everything stays parsed. */
export function openAll(): { open: ReturnType<typeof openJobs>['open']; services: OpenJob['services'] } {
  return openJobs({ ...exampleTexts, ...Object.fromEntries(allJobs.map(({ path, text }) => [path, text])) });
}
