import { EmptyFileSystem, URI } from 'langium';
import { checkJob, checkRun } from '../language/checks/index.ts';
import { diffViews, viewsOf } from '../language/drawing/index.ts';
import { createSlatCoreServices } from '../language/grammar/index.ts';
import { createLayoutMemo } from '../language/layout/index.ts';
import { workOut } from './work/work-out.ts';

/** Text that goes through every stage: both directions of slats, a gate, a fit. */
export const SAMPLE = `
job { measure inches to 1/16"; see-through at most 20 % }
board plank { width 5-1/2"; thickness 3/4"; lengths 8', 12' }
rip strip from plank to 2-1/2"
post pole { along 3-1/2"; through 3-1/2" }
rail beam { width 3-1/2"; thickness 1-1/2" }
cleat batten { width 3/4"; thickness 3/4" }
pattern weave(space = 1/2") { repeat plank, 2 of strip; gap space; end on plank; fit gaps 3/8" to 5/8", else rip last }
run sample {
  length 24' over posts; posts pole, at most 6' clear; height 6'; bottom 2"; cleats batten
  slats between posts; fill weave
}
gate wicket in sample { opening 42" from 9'; frame beam; fill weave; flip upright }
`;

const ROUNDS = 12;

/**
 * Sends a sample through the whole chain a few times, apart from all open files, so that the code is
 * warm before the first keystroke. It stands back between rounds for whatever else there is to do.
 */
export async function warmUp(): Promise<void> {
  try {
    const { shared, slat } = createSlatCoreServices(EmptyFileSystem);
    for (let round = 0; round < ROUNDS; round++) {
      await new Promise((resume) => setTimeout(resume));
      const uri = URI.parse(`slatwright-sample:/${round}.slat`);
      const document = shared.workspace.LangiumDocumentFactory.fromString(`${SAMPLE}// ${round}`, uri);
      await shared.workspace.DocumentBuilder.build([document]);
      const { job, layout } = workOut(shared, document, createLayoutMemo());
      checkJob(job);
      for (const run of layout.runs) checkRun(run, job);
      diffViews([], viewsOf(layout.runs, job.measure.value), 0, 1);
      slat.shared.workspace.LangiumDocuments.deleteDocument(uri);
    }
  } catch (error) {
    console.error('the sample cannot be worked out:', error);
  }
}
