import { VIEW_KINDS, type View } from '../../language/drawing/index.ts';
import type { RunLayout } from '../../language/layout/index.ts';
import { createLayoutMemo } from '../../language/layout/index.ts';
import { goodRuns, type LastGood, shownRuns, viewsOfShown } from '../../server/work/picture.ts';
import type { PlacedFinding } from '../../server/work/place-findings.ts';
import { exampleTexts, openJobs } from '../jobs/index.ts';

/** Longest time, in milliseconds, that any text may take from keystroke to findings and picture. */
export const LONGEST = 1000;

/** What a text came to. */
export interface Outcome {
  readonly milliseconds: number;
  readonly findings: readonly PlacedFinding[];
  readonly views: readonly View[];
}

/** Types texts into one file of the examples, one after the other, as an editor would. */
export function createTypist(path: string) {
  const { open } = openJobs(exampleTexts);
  const memo = createLayoutMemo();
  let last: LastGood = new Map();
  let slowest = { milliseconds: 0, text: '' };
  let cases = 0;

  async function once(text: string, memory = memo): Promise<Outcome> {
    const since = stopwatch();
    const { job, layout, findings } = await open(path, text, memory);
    const halfTyped = findings.some(({ code }) => code === 'syntax');
    const { runs, stale } = shownRuns({ job, layout }, last, halfTyped);
    const views = viewsOfShown(runs, stale, job, VIEW_KINDS);
    const milliseconds = since();
    if (halfTyped)
      for (const name of last.keys())
        if (!runs.some((run) => run.spec.name === name)) throw new Error(`the picture of ${name} is gone`);
    last = goodRuns(runs);
    for (const run of layout.runs) sane(run);
    for (const view of views) saneView(view);
    for (const finding of findings) saneFinding(finding, text);
    return { milliseconds, findings, views };
  }

  return {
    /** Puts a text through; throws with the text where anything is wrong with what comes out. */
    async type(text: string): Promise<Outcome> {
      cases++;
      try {
        let outcome = await once(text);
        // Others may be using this machine's memory: what is slow must be slow again, with nothing of it remembered.
        for (let again = 0; again < 2 && outcome.milliseconds > LONGEST; again++) {
          const second = await once(`${text}\n`, createLayoutMemo());
          if (second.milliseconds < outcome.milliseconds)
            outcome = { ...outcome, milliseconds: second.milliseconds };
        }
        if (outcome.milliseconds > slowest.milliseconds)
          slowest = { milliseconds: outcome.milliseconds, text };
        if (outcome.milliseconds > LONGEST) throw new Error(`${Math.round(outcome.milliseconds)} ms`);
        return outcome;
      } catch (error) {
        throw new Error(`${error instanceof Error ? error.stack : String(error)}\n\n${shortened(text)}`);
      }
    },
    /** Forgets how long the first texts took, while nothing was warm. */
    forget() {
      slowest = { milliseconds: 0, text: '' };
    },
    get slowest() {
      return { milliseconds: Math.round(slowest.milliseconds), text: shortened(slowest.text), cases };
    },
  };
}

/** What a core has worked for this thread or, where Node cannot tell, for its whole process. */
const worked = (process.threadCpuUsage ?? process.cpuUsage).bind(process);

/** Milliseconds from now on, less those in which others had the core. */
function stopwatch(): () => number {
  const before = performance.now();
  const then = worked();
  return () => {
    const { user, system } = worked(then);
    return Math.min(performance.now() - before, (user + system) / 1000);
  };
}

const shortened = (text: string) =>
  text.replace(/(.)\1{60,}/gs, (all, one: string) => `${one} (${all.length} times)`);

const seenRuns = new WeakSet<RunLayout>();
const seenGroups = new WeakSet<View['groups'][number]>();

function sane(run: RunLayout): void {
  if (seenRuns.has(run)) return;
  seenRuns.add(run);
  const numbers = [run.ground, run.bottom, run.top, run.postTop, run.embed.value];
  for (const { from, to } of [...run.posts, ...run.bays]) numbers.push(from, to);
  for (const { x0, x1, z0, z1, depth } of run.openings) numbers.push(x0, x1, z0, z1, depth);
  for (const { cut, solid } of run.pieces) {
    numbers.push(cut.width, cut.thickness, cut.longPoint, cut.shortPoint);
    for (const { miter, bevel } of cut.ends) numbers.push(miter, bevel);
    for (const vertex of solid.vertices) numbers.push(...vertex);
    if (!(cut.width > 0 && cut.thickness > 0 && cut.longPoint > 0)) throw new Error('a piece of no size');
  }
  for (const { chosen, choices, leftover, space } of run.fits) {
    numbers.push(leftover, space);
    for (const { gap, lead, tail, count } of chosen ? [chosen, ...choices] : choices)
      numbers.push(gap, lead, tail, count);
  }
  if (!numbers.every(Number.isFinite)) throw new Error(`a number of run ${run.key} is none`);
}

const NO_NUMBER = /NaN|Infinity|undefined|\[object|null/;

function saneView(view: View): void {
  if (![...view.box, view.letter].every(Number.isFinite)) throw new Error(`view ${view.key} has no place`);
  for (const group of view.groups) {
    if (seenGroups.has(group)) continue;
    seenGroups.add(group);
    if (NO_NUMBER.test(group.path)) throw new Error(`the path of ${group.key} holds no number`);
    for (const { box } of group.hits)
      if (!box.every(Number.isFinite)) throw new Error(`a hit of ${group.key}`);
  }
  for (const { key, text, x, y, room, priority, kind } of view.labels) {
    if (![x, y, room, priority].every(Number.isFinite)) throw new Error(`label ${key} has no place`);
    if (kind === 'dimension' && NO_NUMBER.test(text)) throw new Error(`label ${key} says ${text}`);
  }
}

function saneFinding({ code, message, range, fixes }: PlacedFinding, text: string): void {
  const said = `${message} ${fixes.map(({ title }) => title).join(' ')}`;
  const found = NO_NUMBER.exec(said)?.[0];
  if (message === '' || (found && !text.includes(found))) throw new Error(`${code} says: ${said}`);
  const { start, end } = range;
  const place = [start.line, start.character, end.line, end.character];
  if (!place.every((at) => Number.isInteger(at) && at >= 0))
    throw new Error(`${code} has no place: ${place}`);
  if (end.line < start.line || (end.line === start.line && end.character < start.character))
    throw new Error(`${code} ends before it begins`);
  if (start.line > text.split(/\r\n|\r|\n/).length) throw new Error(`${code} is past the end of the text`);
}
