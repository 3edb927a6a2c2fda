import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import { IMPERIAL, inches } from '../units/index.ts';
import { elevationOf } from './elevation.ts';
import { leafElevation } from './leaf-elevation.ts';
import { randomRun } from './testing/random-runs.ts';
import { runByHand } from './testing/run-by-hand.ts';
import { escapeXml, writeSvg } from './write-svg.ts';

interface Node {
  readonly nodeName: string;
  readonly textContent: string;
  readonly childNodes: readonly Node[];
  readonly attrs?: Iterable<{ readonly name: string; readonly value: string }>;
  innerHTML: string;
}

let parse: (svg: string) => Node;

beforeAll(async () => {
  // svgdom, an independent reader of SVG, brings no types.
  const { createSVGDocument } = (await import('svgdom' as string)) as {
    createSVGDocument: () => { documentElement: Node };
  };
  parse = (svg) => {
    const root = createSVGDocument().documentElement;
    root.innerHTML = svg.replace(/^<\?xml[^>]*\?>\n/, '');
    return root;
  };
});

function elements(node: Node): Node[] {
  return [node, ...Array.from(node.childNodes ?? []).flatMap(elements)].filter(
    (one) => !one.nodeName.startsWith('#'),
  );
}

const ALLOWED = new Set(['svg', 'title', 'desc', 'style', 'rect', 'path', 'text', 'circle']);
const NASTY = `"><script>alert('1')</script><!-- ]]> & </text>`;

it('is read back as what was written, with nothing from the file as markup', () => {
  const run = runByHand({
    name: NASTY,
    side: NASTY,
    bays: [inches(60), inches(42)],
    widths: [inches(5.5)],
    gap: inches(0.5),
    gate: { bay: 2, name: NASTY, hinges: 'left', upright: true },
  });
  const leaf = run.leaves[0];
  if (!leaf) throw new Error('no leaf');
  for (const view of [elevationOf(run, IMPERIAL), leafElevation(run, leaf, IMPERIAL)]) {
    const found = elements(parse(writeSvg(view)));
    for (const { nodeName } of found) expect(ALLOWED).toContain(nodeName);
    for (const one of found) {
      for (const { name } of one.attrs ?? []) expect(name).not.toMatch(/^on|href/i);
    }
    expect(found.find((one) => one.nodeName === 'title')?.textContent).toBe(view.title);
    expect(view.title).toContain(NASTY);
    expect(found.filter((one) => one.nodeName === 'path').length).toBeGreaterThanOrEqual(view.groups.length);
  }
});

it('is well formed and without numbers that are none, for any run', () => {
  fc.assert(
    fc.property(randomRun, (hand) => {
      const run = runByHand(hand);
      const svg = writeSvg(elevationOf(run, run.spec.measure));
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(elements(parse(svg)).length).toBeGreaterThan(10);
    }),
    { numRuns: 25 },
  );
});

it('refers to nothing outside itself', () => {
  const svg = writeSvg(elevationOf(runByHand({ bays: [inches(60)], widths: [inches(3)], gap: 0 }), IMPERIAL));
  expect(svg.match(/https?:[^"]*/g)).toEqual(['http://www.w3.org/2000/svg']);
  expect(svg).not.toMatch(/url\(|@import|<image|<use|href/);
});

it('replaces characters that XML does not allow', () => {
  expect(escapeXml('a\u0000b\u001Fc\uD800d\uFFFFe\u{1F600}')).toBe('a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\u{1F600}');
  expect(escapeXml(`<&>"'`)).toBe('&lt;&amp;&gt;&quot;&apos;');
});

it('would notice markup that came through', () => {
  expect(elements(parse('<svg><script>1</script></svg>')).map((one) => one.nodeName)).toContain('script');
});
