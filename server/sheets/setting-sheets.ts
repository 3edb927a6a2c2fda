import { settingSheet } from '../../language/drawing/index.ts';
import type { Layout } from '../../language/layout/index.ts';
import type { Job } from '../../language/model/index.ts';
import type { SheetFile } from '../protocol.ts';
import { fileNameOf } from './file-name.ts';

/** Where posts are set: a sheet for each run that has something to set them with, as SVG. */
export function settingSheets({ runs }: Layout, job: Job): readonly SheetFile[] {
  const taken = new Set<string>();
  const name = job.name === undefined ? '' : `${job.name}: `;
  return runs.flatMap((run): SheetFile[] => {
    const text = settingSheet(`${name}setting out ${run.spec.name}`, run, job.measure.value);
    return text === undefined
      ? []
      : [{ name: fileNameOf(`setting-out-${run.spec.name}`, '.svg', taken), text }];
  });
}
