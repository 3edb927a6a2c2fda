import type { LangiumDocument } from 'langium';
import { describeChoice, warningCodes } from '../../language/checks/index.ts';
import type { SlatFile, SlatSharedServices } from '../../language/grammar/index.ts';
import { fillWays, type Job } from '../../language/model/index.ts';
import type { Better, BetterTask } from '../../language/takeoff/index.ts';
import { jobContext } from './work-out.ts';

/** What a search for better choices of a run needs; undefined where the text does not fill that run. */
export function betterTask(
  shared: SlatSharedServices,
  document: LangiumDocument,
  job: Job,
  run: string,
): BetterTask | undefined {
  const root = document.parseResult.value as SlatFile;
  const fills = fillWays(root, jobContext(shared, document), job.measure.value, run);
  // No choice may add to the errors and warnings of a run; habits of the trade are for the builder to weigh.
  return fills && { job, run, fills, told: warningCodes, describe: describeChoice };
}

/** What is to be said of all choices together. */
export function verdictOf({ choices, beaten }: Better): string {
  if (choices.length === 0) return 'Nothing better was found.';
  return beaten
    ? 'At least one of them is better in something and worse in nothing.'
    : 'Each is better in something and worse in something else.';
}
