import { expect, it } from 'vitest';
import { SPAN_OVER_THICKNESS } from './index.ts';
import { checked, screen } from './testing/checked.ts';

const found = (text: string) => checked(text, 'span-too-long');
const length = (inches: string) => ['118-1/2"', inches] as const;

it('is the rule that bending gives: 15 psf, a limit of L/180, cedar', () => {
  // Uniform load on a simple span: deflection 5 w L^4 / 384 E I (any handbook of mechanics). With w = p b,
  // I = b t^3 / 12 and deflection L / 180: (L / t)^3 = 384 E / (12 * 5 * 180 p). E 1.1 million psi.
  const psi = 15 / 144;
  const ratio = Math.cbrt((384 * 1.1e6) / (12 * 5 * 180 * psi));
  expect(Math.round(ratio)).toBe(SPAN_OVER_THICKNESS);
});

it('tells the span, the limit and the rule, at the posts', async () => {
  const { findings, messages, open } = await found(screen(length('130-1/2"')));
  expect(findings.map(({ args, at }) => ({ ...args, path: at.path }))).toEqual([
    {
      slat: 'slat',
      span: '60"',
      limit: '54"',
      rule: 'by the rule of 72 times its thickness',
      path: 'Run:bank/PostsStatement.spacing',
    },
  ]);
  expect(findings[0]?.pieces?.every((key) => open.run().pieces.some((piece) => piece.key === key))).toBe(
    true,
  );
  expect(messages[0]).toContain('slat spans 60" between supports; 54" is the most');
});

it('lets a slat span 72 times its thickness, and no more', async () => {
  expect((await found(screen())).findings).toEqual([]);
  expect((await found(screen(length('118-5/8"')))).findings.map(({ args }) => args.span)).toEqual([
    '54-1/16"',
  ]);
});

it('goes by the limit its stock states, where it states one', async () => {
  const stated = (limit: string) => screen(["cedar; lengths 16'", `cedar; span at most ${limit}`]);
  expect((await found(stated('54"'))).findings).toEqual([]);
  const { findings } = await found(stated('53-15/16"'));
  expect(findings.map(({ args }) => [args.limit, args.rule])).toEqual([['53-15/16"', 'its stock allows']]);
  expect(findings[0]?.related?.map(({ at }) => at.path)).toEqual(['Board:slat/SpanLimit.limit']);
});

it('knows no rule for what is not wood', async () => {
  expect((await found(screen(length("20'"), ['kind wood', 'kind steel']))).findings).toEqual([]);
});

it('looks to the height where slats stand upright', async () => {
  const upright = screen(['fill rows', 'rails bar; flip upright; fill rows'], ['height 50"', 'height 70"']);
  // From 2-1/2" to 70" is 67-1/2", less two rails of 3-1/2".
  const { findings } = await found(upright);
  expect(findings.map(({ args, at }) => [args.span, at.path])).toEqual([
    ['60-1/2"', 'Run:bank/HeightStatement'],
  ]);
});
