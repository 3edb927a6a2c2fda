import { expect, it } from 'vitest';
import { writeSvg } from '../../language/drawing/index.ts';
import { examples, exampleTexts, openJobs } from '../jobs/index.ts';
import { faultyTexts } from './faulty-texts.ts';
import { listFindings, listPieces } from './list.ts';

// What stands in the folders beside this file was looked at when it was written, and is looked at again
// whenever it changes. `npx vitest run tests/golden -u` writes it anew.

const { open } = openJobs({ ...exampleTexts, ...faultyTexts });

it.each(examples)('$name is cut, told and drawn as it was', async ({ name, path }) => {
  const { job, layout, findings, views } = await open(path);
  const kept = (file: string) => `./${name}/${file}`;
  await expect(listPieces(layout.runs, job.measure.value)).toMatchFileSnapshot(kept('pieces.txt'));
  await expect(listFindings(findings)).toMatchFileSnapshot(kept('findings.txt'));
  const drawn = views();
  expect(drawn.length).toBeGreaterThan(0);
  for (const view of drawn) {
    const file = view.key.replace(/[^\w-]+/g, '-');
    await expect(writeSvg(view)).toMatchFileSnapshot(kept(`${file}.svg`));
  }
});

it('tells of the faulty jobs in the words it did', async () => {
  let told = '';
  for (const path of Object.keys(faultyTexts).sort()) {
    const { findings } = await open(path);
    if (findings.length > 0) told += `${path.replace('/faulty/', '')}\n${listFindings(findings)}\n`;
  }
  await expect(told).toMatchFileSnapshot('./faulty/findings.txt');
});
