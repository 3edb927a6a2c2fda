import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';

const plan = async (measured: string, mounting = 'on front face') => {
  const { views } = await openJob(`job { measure inches to 1/16" }
board slat { width 3-1/2"; thickness 3/4" }
post stake { along 3-1/2"; through 3-1/2" }
cleat nib { width 3/4"; thickness 3/4" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank { length 118-1/2"; posts stake, 2 bays; height 50"; bottom 2-1/2"; slats ${mounting}; fill rows; cleats nib }
measured bank { ${measured} }
`);
  const view = views().find(({ kind }) => kind === 'plan');
  const texts = view?.labels.filter(({ key }) => key.includes('post-line')).map(({ text }) => text) ?? [];
  return { texts, line: view?.groups.find(({ key }) => key === 'bank/plan/post-line') };
};

// One of three posts an inch to the front: the line is half an inch there, and slats lie on that post.
it('writes how far posts are off and what shims they take, and draws the line', async () => {
  const { texts, line } = await plan('post 2 off 1" toward front');
  expect(texts).toEqual(['shim 1"', '1" to front', 'shim 1"']);
  // Half an inch to the front, 12.7 mm down the sheet, from end to end of 118-1/2".
  expect(line?.path).toBe('M0 12.7H3009.9');
});

it('names the face of a shim where slats lie on both, and tells no shim where they stand between', async () => {
  expect((await plan('post 2 off 1" toward front', 'on both faces')).texts).toEqual([
    'shim 1" at front',
    '1" to front, shim 1" at back',
    'shim 1" at front',
  ]);
  expect((await plan('post 2 off 1" toward back', 'between posts')).texts).toEqual(['1" to back']);
});

it('writes nothing of what a rule does not show', async () => {
  const { texts, line } = await plan('post 2 off 1/64" toward front');
  expect(texts).toEqual([]);
  expect(line).toBeDefined();
});

it('draws nothing where no post was measured off the line', async () => {
  expect(await plan('post 2 leans left 1/8" in 4\'')).toEqual({ texts: [], line: undefined });
});
