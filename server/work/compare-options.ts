import type { LangiumDocument } from 'langium';
import type { SlatSharedServices } from '../../language/grammar/index.ts';
import { createLayoutMemo } from '../../language/layout/index.ts';
import { type OptionFigures, optionFigures } from '../../language/takeoff/index.ts';
import { workOutOption } from './work-out.ts';

/** The job as it stands and each of its options, worked out in full. */
export function compareOptions(
  shared: SlatSharedServices,
  document: LangiumDocument,
  enough: () => boolean,
): readonly OptionFigures[] {
  const base = workOutOption(shared, document, undefined, createLayoutMemo());
  const names = base.job.options.map(({ value }) => value);
  return [
    optionFigures(base.job, base.layout, undefined, enough),
    ...names.map((name) => {
      const { job, layout } = workOutOption(shared, document, name, createLayoutMemo());
      return optionFigures(job, layout, name, enough);
    }),
  ];
}
