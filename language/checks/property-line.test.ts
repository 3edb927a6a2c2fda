import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { viewsOf } from '../drawing/index.ts';
import { checkLayout } from './index.ts';

const yard = (line: string, run = '', more = '') => `
job "Yard" { measure inches to 1/16"; ${line} }
board slat { width 5-1/2"; thickness 1"; lengths 16' }
post stake { along 3-1/2"; through 3-1/2"; lengths 16' }
pattern rows { repeat slat; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
run bank { length 10'; posts stake, 2 bays; height 5'; bottom 2"; slats on front face; fill rows; ${run} }
${more}
`;

async function told(text: string) {
  const { layout, job } = await openJob(text);
  return checkLayout(layout, job)
    .filter(({ code }) => code.startsWith('property-line'))
    .map(({ code, args }) => [code.slice(14), args.piece, args.by]);
}

it('measures from the middle of the posts to faces, slats and holes (hand)', async () => {
  // Posts reach 1-3/4" back; slats 1-3/4" and 1" more to the front; holes 12" across reach 6".
  expect(await told(yard('property line 1" behind bank'))).toEqual([['crossed', 'Post P1', '3/4"']]);
  expect(await told(yard('property line 3" behind bank'))).toEqual([['near', 'Post P1', '1-1/4"']]);
  expect(await told(yard('property line 3-3/4" behind bank'))).toEqual([]);
  expect((await told(yard('property line 2" in front of bank')))[0]?.[2]).toBe('3/4"');
  expect(await told(yard('property line 5" behind bank', 'hole 12" diameter'))).toEqual([
    ['crossed', 'The hole of post P1', '1"'],
  ]);
});

it('lets a job set how near is near', async () => {
  expect(await told(yard('property line 3" behind bank; threshold property-line-near 1"'))).toEqual([]);
});

it('looks at other runs where their place is known', async () => {
  // It turns left, toward the back, and goes 4' - 1-3/4" past the line through the end of the first's posts.
  const wing = `run wing { after bank, turns left; length 4'; posts stake, 1 bays; height 5'; bottom 2"; slats on front face; fill rows }`;
  const found = await told(yard("property line 2' behind bank", '', wing));
  expect(found.map(([code]) => code)).toEqual(['crossed']);
  // From the front face of the shared post, 1-3/4" before the middle: 48 - 1.75 - 24 = 22-1/4".
  expect(found[0]?.[2]).toBe('22-1/4"');
});

it('draws the line on the plan', async () => {
  const { layout, job } = await openJob(yard("property line 2' behind bank"));
  const [plan] = viewsOf(layout.runs, job.measure.value, ['plan']);
  expect(plan?.labels.map(({ text }) => text)).toContain('property line, as stated');
});

it('counts what caps stand out past their posts (hand)', async () => {
  // The post reaches 1-3/4" back and its cap 1-1/2" more: 3-1/4" of 3".
  const capped = yard(
    'property line 3" behind bank',
    'caps lid',
    'cap lid { flat; thickness 1"; overhang 1-1/2" }',
  );
  expect(await told(capped)).toEqual([['crossed', 'Cap P1-CAP', '1/4"']]);
});

it('draws caps on the plan as far as they stand out', async () => {
  const { layout, job } = await openJob(
    yard('', 'caps lid', 'cap lid { flat; thickness 1"; overhang 1-1/2" }'),
  );
  const [plan] = viewsOf(layout.runs, job.measure.value, ['plan']);
  const path = plan?.groups.find(({ key }) => key.endsWith('/plan/dressing'))?.path ?? '';
  // Three caps of four lines each; the first begins 1-1/2" (38.1 mm) before station 0 and reaches 3-1/4" (82.55 mm) off the middle.
  expect(path.match(/M/g)).toHaveLength(12);
  expect(path).toContain('-38.1');
  expect(path).toContain('82.55');
});
