import { expect, it } from 'vitest';
import { allJobs, openAll } from '../../tests/jobs/index.ts';

/** A view from an eye is keyed by whose eye it is. */
const viewerOf = (key: string): string => key.split('/')[1] ?? '';

it.each(allJobs)('$name: every drawing names the side it is seen from', async ({ path }) => {
  const { views } = await openAll().open(path);
  const all = views();
  expect(all.length).toBeGreaterThan(0);
  for (const view of all) {
    expect(view.side, view.key).not.toBe('');
    expect(view.title, view.key).not.toBe('');
    // It is written on the sheet too, so that paper shows it.
    expect(
      view.labels.some(({ text }) =>
        view.kind === 'eye' ? text.includes(viewerOf(view.key)) : /\bseen (from|toward)\b/.test(text),
      ),
      view.key,
    ).toBe(true);
  }
});
