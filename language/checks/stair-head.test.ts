import { expect, it } from 'vitest';
import { type Checked, checked, fixed, screen } from './testing/checked.ts';

const DECK = `deck terrace {
  surface up 30"
  boards 1"
  joists 1-1/2" by 7-1/4"
  ground down 0"
  STAIRS
}
`;

/** The sound screen on a deck: posts of 3-1/2" at 0, 57-1/2" and 115", or as a gate asks. */
function onDeck(stairs: string, gate?: string): string {
  const text = screen(
    [
      'run bank {',
      `${DECK.replace('STAIRS', stairs)}run bank {\n  on terrace, posts to footing; seen from terrace`,
    ],
    ...(gate === undefined ? [] : [['posts stake, 2 bays', 'posts stake, at most 54" clear'] as const]),
  );
  return gate === undefined ? text : `${text}gate down in bank { frame bar; fill rows; ${gate} }\n`;
}

const CODES = ['gate-over-stairs', 'stair-head-blocked', 'gate-narrower-than-stairs'];
const told = async (text: string) => {
  const found: Checked = await checked(text);
  return { ...found, findings: found.findings.filter(({ code }) => CODES.includes(code)) };
};
const codes = async (text: string) => (await told(text)).findings.map(({ code }) => code);

const STAIRS = 'stairs from 44" to 74"';
/** Leaves all of these stairs free: hinge gap and leaf, of slats on a frame, take 1/4" and 2-1/4". */
const WIDE = 'opening 36" from 41"; hinges on left';

it('tells of a gate that opens over the stairs, and lets it open onto the deck', async () => {
  const over = await told(onDeck(STAIRS, `${WIDE}; opens to garden`));
  expect(over.findings.map(({ code }) => code)).toEqual(['gate-over-stairs']);
  expect(over.findings[0]?.args.stated).toBe(1);
  const [fix] = over.findings[0]?.fixes ?? [];
  expect(fix?.changes[0]?.text).toBe('opens to front');
  const after = await fixed(over, fix);
  expect(after.findings.filter(({ code }) => CODES.includes(code))).toEqual([]);
});

it('wants it said which way a gate there opens', async () => {
  const unsaid = await told(onDeck(STAIRS, WIDE));
  expect(unsaid.findings.map(({ code, args }) => [code, args.stated])).toEqual([['gate-over-stairs', 0]]);
  const after = await fixed(unsaid, unsaid.findings[0]?.fixes?.[0]);
  expect(after.findings.filter(({ code }) => CODES.includes(code))).toEqual([]);
});

it('says nothing of a gate that opens onto the deck, of one beside the stairs, and of a deck without', async () => {
  expect(await codes(onDeck(STAIRS, `${WIDE}; opens to terrace`))).toEqual([]);
  expect(await codes(onDeck('stairs from 200" to 230"', `${WIDE}; opens to garden`))).toEqual([]);
  expect(await codes(onDeck('', `${WIDE}; opens to garden`))).toEqual([]);
});

it('tells of slats and posts before stairs, not of stairs past the run', async () => {
  const { findings } = await told(onDeck(STAIRS));
  // By hand: bay 1 is from 3-1/2" to 57-1/2", post 2 from there to 61", bay 2 on to 115".
  expect(findings.map(({ code, args }) => [code, args.what])).toEqual([
    ['stair-head-blocked', 'bay 1 and post 2'],
  ]);
  expect(await codes(onDeck('stairs from 118-1/2" to 150"'))).toEqual([]);
});

it('reckons what an open gate leaves of the stairs, and widens it', async () => {
  const narrow = await told(onDeck(STAIRS, 'opening 30" from 44"; hinges on left; opens to terrace'));
  expect(narrow.findings.map(({ code }) => code)).toEqual(['gate-narrower-than-stairs']);
  // By hand: of 30" the hinge gap takes 1/4", the leaf, slats of 3/4" on a frame of 1-1/2", 2-1/4".
  expect(narrow.findings[0]?.args).toMatchObject({
    clear: '27-1/2"',
    wide: '30"',
    opening: '32-1/2"',
    station: '41-1/2"',
  });
  const after = await fixed(narrow, narrow.findings[0]?.fixes?.[0]);
  expect(after.findings.filter(({ code }) => CODES.includes(code))).toEqual([]);
  // Hung on the other side, and beside the stairs by 6": 24" less nothing at the left; the leaf is past their end.
  const aside = await told(onDeck(STAIRS, 'opening 36" from 50"; hinges on right; opens to terrace'));
  expect(aside.findings[0]?.args).toMatchObject({ clear: '24"', opening: '42"', station: '44"' });
});

it('takes what both leaves of a pair take', async () => {
  const pair = await told(
    onDeck(STAIRS, 'opening 32" from 43"; leaves two; hinges on left; opens to terrace'),
  );
  // By hand: from 43 + 2-1/2 to 75 - 2-1/2.
  expect(pair.findings.map(({ code, args }) => [code, args.clear])).toEqual([
    ['gate-narrower-than-stairs', '27"'],
  ]);
});
