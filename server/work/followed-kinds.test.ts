import { expect, it } from 'vitest';
import type { ViewKind } from '../../language/drawing/index.ts';
import { BANK } from '../reckoning/testing/bank.ts';
import { openTexts } from '../testing/index.ts';

const LOOK = `viewer passer { at 10' along bank, 12' in front }
place bench { at 10' along bank, 8' behind; width 6'; from 1' to 4' above ground }
hide bench from passer 85 %
`;

/** What is sent of a picture: its kinds, and the boxes by which a click finds pieces. */
async function sent(kinds: readonly ViewKind[]) {
  const { shared, document } = await openTexts({ 'a.slat': BANK + LOOK });
  const { delta } = await shared.work.Keeper.follow(document.uri.toString(), undefined, kinds);
  const kindOf = new Map(delta.views.map(({ key, kind }) => [key, kind]));
  const hits = delta.put.flatMap(({ view, groups }) =>
    groups.flatMap((group) => group.hits.map(() => kindOf.get(view))),
  );
  return { kinds: new Set(kindOf.values()), hits };
}

it('draws and sends the kinds of views that are shown, with the boxes for clicks, and none of the others', async () => {
  const all = await sent(['plan', 'front', 'back', 'section', 'eye']);
  expect([...all.kinds].sort()).toEqual(['back', 'eye', 'front', 'plan', 'section']);
  for (const kind of ['plan', 'front', 'back', 'section', 'eye'] as const) {
    const one = await sent([kind]);
    expect([...one.kinds]).toEqual([kind]);
    expect(one.hits.every((of) => of === kind)).toBe(true);
    expect(one.hits).toHaveLength(all.hits.filter((of) => of === kind).length);
    expect(one.hits.length).toBeGreaterThan(0);
  }
});
