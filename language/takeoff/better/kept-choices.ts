import { hashOf, type Layout, type RunLayout, type TextChange } from '../../layout/index.ts';
import type { Ticks } from '../../units/index.ts';
import type { Better, BetterChoice, BetterTask } from './better-task.ts';
import { type ChoiceFigures, figuresOf, unevennessOf } from './choice-figures.ts';
import { addsNothing, closes, countCodes, faultsOf, keepsHidden } from './choice-limits.ts';
import { type Scores, spreadOver, unbeaten } from './front.ts';

/** More choices are no help. */
const MOST_SHOWN = 8;

/** A run laid out, within the layout of its whole job. */
export interface Laid {
  readonly run: RunLayout;
  readonly layout: Layout;
}

/** What a search has laid out and kept so far. */
export interface KeptChoices {
  /** Keeps what was laid out if it is within the limits, under the edits and words that build it. */
  weigh(laid: Laid, changes: readonly TextChange[], says: readonly string[]): void;
  /** How many were laid out, the run as it stands among them. */
  tried(): number;
  summary(): Better;
}

interface Kept extends BetterChoice {
  readonly scores: Scores;
  readonly now: boolean;
}

/** Begins with the run as it stands; undefined where nothing of it can be weighed. */
export function keepChoices(base: Laid, { job, told }: BetterTask): KeptChoices | undefined {
  const now = figuresOf(base.run, base.layout, job);
  if (!now) return undefined;
  const toldBefore = countCodes(told(base.run, job));
  const faultsBefore = faultsOf(base.layout);
  const { step } = job.measure.value;
  const standing = builtBy(base.run);
  const scored = (figures: ChoiceFigures) => ({ figures, scores: scoresOf(figures, now, step) });
  const kept: Kept[] = [{ title: 'as it stands', changes: [], built: standing, ...scored(now), now: true }];
  /** Where what is so built is kept, or that it is not. */
  const seen = new Map<string, number | undefined>([[standing, undefined]]);
  let [tried, within] = [1, 1];

  /** The same pieces by another way: kept by the name under which they are least out of the ordinary. */
  function rename(built: string, run: RunLayout, named: Pick<BetterChoice, 'title' | 'changes'>): void {
    const at = seen.get(built);
    const held = at === undefined ? undefined : kept[at];
    const uneven = unevennessOf(run);
    if (at === undefined || !held || uneven >= held.figures.uneven) return;
    kept[at] = { ...named, built, ...scored({ ...held.figures, uneven }), now: false };
  }

  return {
    tried: () => tried,
    weigh: ({ run, layout }, changes, says) => {
      tried++;
      const built = builtBy(run);
      const title = says.join('; ');
      if (seen.has(built)) {
        rename(built, run, { title, changes });
        return;
      }
      seen.set(built, undefined);
      if (!closes(run) || faultsOf(layout) > faultsBefore) return;
      if (!addsNothing(told(run, job), toldBefore)) return;
      const figures = figuresOf(run, layout, job);
      if (!figures || !keepsHidden(figures, now)) return;
      within++;
      seen.set(built, kept.length);
      kept.push({ title, changes, built, ...scored(figures), now: false });
    },
    summary: () => {
      const best = unbeaten(kept, ({ scores }) => scores);
      const others = best.filter((one) => !one.now);
      const choices = spreadOver(others, MOST_SHOWN, ({ scores }) => scores);
      return {
        now,
        beaten: others.length === best.length,
        choices: choices.map(({ title, changes, figures, built }) => ({ title, changes, figures, built })),
        tried,
        kept: within,
      };
    },
  };
}

/** Money where the run as it stands has a price, else length; unevenness as a tape shows it. */
function scoresOf(
  { cost, bought, waste, seeThrough, seen, uneven }: ChoiceFigures,
  now: ChoiceFigures,
  step: Ticks,
): Scores {
  return [
    now.cost ? (cost?.minor ?? Infinity) : bought,
    rounded(waste),
    rounded(seeThrough),
    ...seen.map(({ share }) => rounded(share)),
    Math.round(uneven / step),
  ];
}

/** A tenth of a percent is no one's choice. */
const rounded = (share: number): number => Math.round(share * 1000) / 1000;

/** What is built, whatever put it there: the same for the same pieces in the same places. */
export function builtBy({ pieces }: RunLayout): string {
  return hashOf(pieces.map(({ key, cut, solid }) => [key, cut, solid.vertices]));
}
