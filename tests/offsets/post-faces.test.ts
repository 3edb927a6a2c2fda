import { expect, it } from 'vitest';
import { openJobs, textAfter } from '../jobs/index.ts';

const text = (latch: string, slats = 'slats between posts; cleats stop') => `
job "planes" { measure mm to 1 mm }
board slat { width 90 mm; thickness 20 mm }
post p90 { along 90 mm; through 90 mm }
post p120 { along 120 mm; through 120 mm }
post p140 { along 140 mm; through 90 mm }
post p200 { along 200 mm; through 200 mm }
cleat stop { width 20 mm; thickness 20 mm }
rail bar { width 70 mm; thickness 45 mm }
pattern plain { repeat slat; gap 20 mm; end anywhere; fit gaps 10 mm to 30 mm, else rip last }
run yard {
  length 6 m
  height 1.8 m; bottom 50 mm
  posts p90, at most 2 m clear
  ${slats}
  fill plain
}
gate door in yard {
  opening 1 m from 2 m
  posts ${latch}
  frame bar
  brace none
}
`;

async function told(latch: string, slats?: string) {
  const { open } = openJobs({});
  const job = await open('/made/planes.slat', text(latch, slats));
  return { job, open, found: job.findings.filter(({ code }) => code === 'plane-offset') };
}

// Half of what one post is deeper than the other: (120 - 90) / 2 = 15; (200 - 90) / 2 = 55 is a clear step.
it.each([
  ['p120', ['15 mm']],
  ['p120, p140', ['15 mm']],
  ['p140, p120', ['15 mm']],
  ['p140', []],
  ['p90', []],
  ['p200', []],
])('compares the faces of gate posts with those of the run: %s', async (posts, offsets) => {
  const { found } = await told(posts);
  expect(found.map(({ message }) => / is (.*?) off that of the other posts/.exec(message)?.[1])).toEqual(
    offsets,
  );
});

it('knows that posts are flush where slats lie on them, and takes all of it on the other face', async () => {
  const { found } = await told('p120', 'slats on front face');
  // 120 - 90 = 30 mm on the back is a clear step from 25 mm on.
  expect(found).toEqual([]);
});

it('offers posts that are as deep', async () => {
  const { job, open, found } = await told('p140, p120');
  const fixes = found[0]?.fixes ?? [];
  expect(fixes.map(({ title }) => title)).toEqual([
    'Use p90, as deep as the other posts',
    'Use p140, as deep as the other posts',
  ]);
  const after = textAfter(job.document, fixes[1]?.changes ?? []);
  expect(after).toContain('posts p140, p140\n');
  const mended = await open('/made/planes.slat', after);
  expect(mended.findings.map(({ code }) => code)).not.toContain('plane-offset');
});
