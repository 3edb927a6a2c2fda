import { afterEach, expect, it } from 'vitest';
import { type Client, connect } from './index.ts';
import { JOB, LIBRARY } from './sample.ts';

let client: Client;
afterEach(() => client.stop());

it('tells findings with code, page and exact place, and takes them back when they are mended', async () => {
  client = await connect({ 'library.slat': LIBRARY, 'job.slat': JOB });
  const atFirst = await client.open('job.slat');
  expect(atFirst.filter(({ severity }) => severity === 1)).toEqual([]);
  const found = await client.edit('job.slat', `length 18'`, 'length 18');
  const told = found.find(({ code }) => code === 'unit-missing');
  expect(told).toMatchObject({
    severity: 1,
    source: 'slatwright',
    codeDescription: { href: 'slatwright-finding:/unit-missing.md' },
    range: { start: { line: 8, character: 9 }, end: { line: 8, character: 11 } },
  });
  const mended = await client.edit('job.slat', 'length 18 ', `length 18' `);
  expect(mended).toEqual(atFirst);
});
