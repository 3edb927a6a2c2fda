import type { LangiumDocument } from 'langium';
import type { SlatSharedServices } from '../../language/grammar/index.ts';
import type { Work } from '../work/work-out.ts';
import type { Answers, Ask, AskKind } from './ask.ts';
import { seekBetter } from './better-choices.ts';
import { tellPile } from './pile-told.ts';
import { seekSheets } from './sheets.ts';
import type { Sliced } from './sliced.ts';
import { seekTotals } from './totals.ts';

/** A document with what it comes to. */
export interface Subject {
  readonly shared: SlatSharedServices;
  readonly document: LangiumDocument;
  readonly work: Work;
}

/** Begins what is asked for. Nothing of it has a clock; who goes on with it does. */
export function beginWork<A extends Ask>(subject: Subject, ask: A): Sliced<Answers[A['kind']]> {
  return begin(subject, ask) as Sliced<Answers[A['kind']]>;
}

function begin(subject: Subject, ask: Ask): Sliced<Answers[AskKind]> {
  switch (ask.kind) {
    case 'totals':
      return seekTotals(subject.work);
    case 'better':
      return seekBetter(subject, ask.run);
    case 'pile':
      return tellPile(subject);
    case 'sheets':
      return seekSheets(subject.work);
  }
}
