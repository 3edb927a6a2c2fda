import { URI } from 'langium';
import { changeToEdit } from '../../language/grammar/index.ts';
import type { Job } from '../../language/model/index.ts';
import { type Better, type ChoiceFigures, searchBetter } from '../../language/takeoff/index.ts';
import { formatLength, formatMoney, type Ticks } from '../../language/units/index.ts';
import { betterTask, verdictOf } from '../work/better-task.ts';
import type { Answers } from './ask.ts';
import type { Subject } from './begin-work.ts';
import type { Sliced } from './sliced.ts';
import { percent } from './words.ts';

type Choice = NonNullable<Answers['better']>['choices'][number];

/** Choices for a run that nothing else beats, each told beside the run as it stands, with its edits. */
export function seekBetter({ shared, document, work }: Subject, run: string): Sliced<Answers['better']> {
  const { job } = work;
  const task = betterTask(shared, document, job, run);
  const search = task && searchBetter(task);
  return {
    done: () => search?.done() ?? true,
    run: (enough) => search?.run(enough),
    found: () => {
      const found = search?.found();
      if (!found) return null;
      const done = search?.done() ?? true;
      const { tried, kept, now } = found;
      return {
        run,
        tried,
        kept,
        done,
        now: wordsOf(now, job),
        verdict: verdictOf(found),
        choices: choices(found),
      };
    },
  };

  function choices({ now, choices }: Better): readonly Choice[] {
    return choices.map(({ title, changes, figures }) => ({
      title,
      cost: costBeside(figures, now, job),
      figures: figuresBeside(figures, now, job),
      edits: changes.flatMap((change) => {
        const target = shared.workspace.LangiumDocuments.getDocument(URI.parse(change.uri));
        const edit = target && changeToEdit(target, change);
        return edit ? [{ uri: change.uri, ...edit.range, text: edit.newText }] : [];
      }),
    }));
  }
}

function wordsOf(now: ChoiceFigures, job: Job): string {
  return [
    costOf(now, job),
    `waste ${percent(now.waste)}`,
    `open ${percent(now.seeThrough)}`,
    ...now.seen.map(({ place, viewer, share }) => `${place} from ${viewer} ${percent(share)}`),
    `uneven ${formatLength(now.uneven, job.measure.value)}`,
  ].join(', ');
}

function costOf({ cost, bought }: ChoiceFigures, job: Job): string {
  return cost ? formatMoney(cost) : `${formatLength(bought, job.measure.value)} bought`;
}

function costBeside(figures: ChoiceFigures, now: ChoiceFigures, job: Job): string {
  const told = costOf(figures, job);
  if (figures.cost && now.cost) {
    const { minor, currency } = figures.cost;
    return `${told}${change(minor - now.cost.minor, (by) => formatMoney({ minor: by, currency }))}`;
  }
  return `${told}${change(figures.bought - now.bought, (by) => formatLength(by, job.measure.value))}`;
}

function figuresBeside(figures: ChoiceFigures, now: ChoiceFigures, job: Job): string {
  const length = (ticks: Ticks) => formatLength(ticks, job.measure.value);
  const share = (one: number, other: number) =>
    `${percent(one)}${change(Math.round((one - other) * 1000), (tenths) => `${tenths / 10}`)}`;
  return [
    `waste ${share(figures.waste, now.waste)}`,
    `open ${share(figures.seeThrough, now.seeThrough)}`,
    ...figures.seen.map(
      ({ place, viewer, share: seen }, at) =>
        `${place} from ${viewer} ${share(seen, now.seen[at]?.share ?? seen)}`,
    ),
    `uneven ${length(figures.uneven)}${change(figures.uneven - now.uneven, length)}`,
  ].join(', ');
}

/** By how much it is other than as it stands; nothing where it is the same. */
function change(by: number, show: (by: number) => string): string {
  return by === 0 ? '' : ` (${by > 0 ? '+' : '-'}${show(Math.abs(by))})`;
}
