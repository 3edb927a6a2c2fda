import { URI } from 'langium';
import { expect, it } from 'vitest';
import { createSlatCoreServices, syntaxFindings } from './index.ts';

const { shared } = createSlatCoreServices();

/** Findings as `line:from-to message`, counted from 1 as editors show them. */
function told(text: string): string[] {
  const document = shared.workspace.LangiumDocumentFactory.fromString(text, URI.file('/a.slat'));
  return syntaxFindings(document).map(({ range: { start, end }, message }) => {
    return `${start.line + 1}:${start.character + 1}-${end.character + 1} ${message}`;
  });
}

const inRun = (line: string) => `run r {\n  ${line}\n  height 6'\n}`;
const LENGTH = 'a length such as 24\' 3" or 2400 mm';
const SAID_SHORT = 'or others';

it.each([
  // Words of the language where a name belongs.
  [
    'board post {\n}',
    '1:7-11 `post` is a word of the language; to use it as a name, put it in quotes: "post".',
  ],
  [
    inRun("posts post, at most 5' clear"),
    '2:9-13 `post` is a word of the language; to use it as a name, put it in quotes: "post".',
  ],
  [inRun("posts at most 5' clear"), '2:9-11 After `posts` comes the name of stock, not `at`.'],
  ['board 2x4 {\n}', '1:7-10 A name begins with a letter; put any other in quotes: "2x4".'],
  ['run {\n}', '1:5-6 After `run` comes a name, not `{`.'],
  // Something missing in a statement.
  [inRun('length'), `2:3-9 After \`length\` comes ${LENGTH}.`],
  [inRun("length 24' over"), '2:14-18 After `over` comes `posts`.'],
  [inRun('posts a, 4'), '2:12-13 After `4` comes `bays` or `posts`.'],
  [inRun('end'), '2:3-6 After `end` comes `gap`.'],
  [inRun('slats between'), '2:9-16 After `between` comes `posts` or `frame`.'],
  ['rip a to 2"', '1:7-9 After `a` comes `from`, not `to`.'],
  ['gate g {\n}', '1:8-9 After `g` comes `in`, not `{`.'],
  ['gate g in {\n}', '1:11-12 After `in` comes the name of a run, not `{`.'],
  ['job {\n  see-through at most 20\n}', '2:23-25 After `20` comes `%`.'],
  [
    'job {\n  measure\n}',
    '2:3-10 After `measure` comes the unit to measure in, such as `inches`, `feet` or `mm`.',
  ],
  ['use', '1:1-4 After `use` comes a text in quotes.'],
  ['pattern p {\n  gap\n  end on a\n}', `2:3-6 After \`gap\` comes ${LENGTH}.`],
  ['pattern p {\n  repeat a,\n  gap 1"\n}', '2:11-12 After `,` comes a number or the name of stock.'],
  ['board b { width    thickness 1" }', `1:20-29 After \`width\` comes ${LENGTH}, not \`thickness\`.`],
  // Something else than what belongs there.
  ['pattern p {\n  repeat a b\n}', '2:12-13 After `a` comes `,` or the end of the line, not `b`.'],
  [
    'pattern p {\n  fit grow\n}',
    `2:7-11 After \`fit\` comes \`move\`, \`gaps\`, \`short\`, \`rip\`, \`change\` ${SAID_SHORT}, not \`grow\`.`,
  ],
  [
    inRun('flip upright top edge to up'),
    '2:28-30 After `to` comes `left`, `right`, `hinges` or `latch`, not `up`.',
  ],
  [
    inRun("length 18' ovr posts"),
    "2:14-17 After `18'` comes `over`, `between` or the end of the line, not `ovr`.",
  ],
  [inRun('fill p(a 3")'), '2:12-14 After `a` comes `=`, not `3"`.'],
  // Braces and parentheses.
  ["run bank {\n  height 6'\n", '2:10-12 Run bank is not closed: write } where it ends.'],
  ["run bank {\n  height 6'\ngate g in bank {\n}", '3:1-5 Run bank is not closed: write } before `gate`.'],
  ["run bank\n  height 6'\n}", '1:5-9 An opening brace { is missing after `bank`.'],
  ['}', '1:1-2 This } closes nothing; leave it out.'],
  ['pattern p(a = 1" {\n}', '1:18-19 A closing parenthesis ) is missing after `1"`.'],
  [inRun('fill p(a = b'), '2:14-15 A closing parenthesis ) is missing after `b`.'],
  // Words that begin nothing here.
  [inRun("hieght 6'"), '2:3-9 `hieght` is no statement of a run; did you mean `height`?'],
  [inRun('post a, 4 bays'), '2:3-7 `post` is no statement of a run; did you mean `posts`?'],
  [inRun('hinges on left'), '2:3-9 `hinges` belongs in a gate, not in a run.'],
  [
    inRun('xyzzy 6'),
    `2:3-8 \`xyzzy\` begins no statement of a run; statements begin with \`seen\`, \`length\`, \`posts\`, \`embed\`, \`tops\` ${SAID_SHORT}.`,
  ],
  [inRun('butt'), '2:3-7 `butt` begins no statement of a run; write `corner butt`.'],
  [
    'board a { width 5" thicknes 1" }',
    '1:20-28 `thicknes` is no statement of a board; did you mean `thickness`?',
  ],
  ['rum bank {\n}', '1:1-4 `rum` begins nothing that a file holds; did you mean `run`?'],
  [
    'width 5"',
    '1:1-6 `width` belongs inside the braces of a board, a post, a rail, a cleat, a channel or others.',
  ],
  // Lengths and signs.
  [inRun("length 12' 3 over posts"), '2:14-15 Give `3` its unit: 12\' 3".'],
  [
    inRun('length 5 smoots'),
    '2:12-18 `smoots` is no unit; lengths are written with \' and ", or with mm, cm or m.',
  ],
  ['board b { $ }', '1:11-12 `$` means nothing here. Leave it out.'],
])('explains %j', (text, expected) => {
  expect(told(text)).toEqual([expected]);
});

it('tells of each damaged statement once', () => {
  const text = 'run r {\n  length\n  hieght 5\n  fill\n  slats on front face\n}\nboard b {\n  width\n}';
  expect(told(text)).toHaveLength(4);
});

it('tells of a lost head once, not of each statement below it', () => {
  expect(told("frobnicate bank {\n  seen from yard\n  length 24'\n  height 6'\n}")).toHaveLength(1);
});

it('says nothing of a text that can be read', () => {
  expect(
    told('run r {\n  posts a, at most 5\' clear\n  flip upright, end for end    end gap 1/8"\n}'),
  ).toEqual([]);
});
