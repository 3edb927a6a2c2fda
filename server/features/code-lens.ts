import type { LangiumDocument } from 'langium';
import type { CodeLensProvider } from 'langium/lsp';
import type { CodeLens, Range } from 'vscode-languageserver-types';
import { isJob, isRun, type Job, type Run, type SlatFile } from '../../language/grammar/index.ts';
import { COMMANDS } from '../protocol.ts';
import type { KnownTotals } from '../reckoning/index.ts';
import type { SlatServices } from '../services.ts';

/** Behind what belongs to the text before the last change, while the rest is worked out. */
const STALE = ' …';
const STALE_TIP = 'As it was before the last change; it is being worked out. ';
const WAITING = 'being worked out …';
/** Of a run that is not laid out at all. */
const LACKING = 'cannot be worked out as it stands';

/**
 * What each run and the job come to, above them, with a way to what would be better. Answers at once with what is
 * known last, and has the totals of the text as it stands worked out.
 */
export class SlatCodeLens implements CodeLensProvider {
  private readonly services: SlatServices;

  constructor(services: SlatServices) {
    this.services = services;
  }

  provideCodeLens(document: LangiumDocument): CodeLens[] {
    const uri = document.uri.toString();
    const { elements } = document.parseResult.value as SlatFile;
    const runs = elements.filter(isRun);
    if (runs.length === 0) return [];
    const { Totals } = this.services.shared.work;
    Totals.want(uri);
    const known = Totals.of(uri);
    const job = elements.find(isJob);
    return [
      ...(job ? [jobLens(uri, job, known)] : []),
      ...runs.flatMap((run) => [totalsLens(uri, run, known), betterLens(uri, run)]),
    ];
  }
}

function jobLens(uri: string, job: Job, { totals, stale }: KnownTotals): CodeLens {
  const mark = stale && totals ? STALE : '';
  return {
    range: rangeOf(job),
    command: {
      title: totals ? `${totals.job}${mark}` : WAITING,
      tooltip: `${stale && totals ? STALE_TIP : ''}Show what is bought, how it is cut and what it costs`,
      command: COMMANDS.showTakeoff,
      arguments: [uri],
    },
  } as CodeLens;
}

function totalsLens(uri: string, run: Run, { totals, stale }: KnownTotals): CodeLens {
  const own = totals?.runs.find((one) => one.run === run.name);
  return {
    range: rangeOf(run),
    command: {
      title: own ? `${own.text}${stale ? STALE : ''}` : totals && !stale ? LACKING : WAITING,
      tooltip: `${stale && own ? STALE_TIP : ''}${own?.tip ?? 'Show what is bought for the job'}`,
      command: COMMANDS.showMaterials,
      arguments: [uri],
    },
  } as CodeLens;
}

function betterLens(uri: string, run: Run): CodeLens {
  return {
    range: rangeOf(run),
    command: {
      title: 'Look for better choices...',
      command: COMMANDS.findBetter,
      arguments: [uri, run.name],
    },
  };
}

function rangeOf({ $cstNode }: Job | Run): Range {
  const start = $cstNode?.range.start ?? { line: 0, character: 0 };
  return { start, end: start };
}
