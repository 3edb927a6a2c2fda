import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

/** What is told of a leaf of slats 3/4" thick in a frame as thick as `frame` says. */
function told(frame: string, leaf: string, code = 'brace-no-room') {
  const gate = `rail edge { width 3-1/2"; thickness ${frame} }
gate door in bank { opening 40" from 5'; hinges on left; hinge gap 1/4"; latch gap 1/2"; frame edge; ${leaf}; fit gaps 1/4" to 1" }
`;
  const text = screen(['118-1/2"', "16'"], ['2 bays', '3 bays']);
  return checked(`${text}${gate}`, code);
}

// By hand. Between cleats of 3/4": 2 x 3/4 + 3/4 + 1-1/2 = 3-3/4" with a brace of 1-1/2", 2-7/16" with a cable of
// 3/16". In grooves slats stand in the middle, and half of what is needed is behind it: 2 (3/8 + 3/4) = 2-1/4" with a
// brace of 3/4", 2 (3/8 + 3/16) = 1-1/8" with a cable.
it.each([
  ['1-1/2"', 'slats between frame; cleats nib; brace bar', 'cleats', '3-3/4"'],
  ['1-1/2"', 'slats between frame; cleats nib; brace cable', 'cleats', '2-7/16"'],
  ['1-1/2"', 'slats in grooves, 3/8" deep; brace slat', 'grooves', '2-1/4"'],
  ['1"', 'slats in grooves, 3/8" deep; brace cable', 'grooves', '1-1/8"'],
  ['1"', 'slats on both faces; brace bar', 'faces', '1-1/2"'],
])('advises nothing that would not help: %s, %s', async (frame, leaf, held, needs) => {
  const { findings, messages } = await told(frame, leaf);
  const by = leaf.endsWith('cable') ? 'cable' : 'brace';
  expect(findings.map(({ args }) => args)).toEqual([{ gate: 'door', by, held, needs, room: frame }]);
  const [message = ''] = messages;
  expect(message.includes('thinner brace')).toBe(by === 'brace');
  expect(message.includes('`brace cable`')).toBe(by === 'brace');
  expect(message.includes('cleats')).toBe(held === 'cleats');
  expect(message).toContain(held === 'faces' ? 'slats on one face' : 'slats on the face');
});

it('does not tell of what goes in', async () => {
  expect((await told('3-3/4"', 'slats between frame; cleats nib; brace bar')).findings).toEqual([]);
  expect((await told('1-1/8"', 'slats in grooves, 3/8" deep; brace cable')).findings).toEqual([]);
});

// By hand. The bottom rail goes from 2-1/2" to 6"; one with its middle at 7-7/8" begins at 7-7/8 - 1-3/4 = 6-1/8", 1/8" above.
it('tells of a cable thicker than a space between two rails', async () => {
  const { findings, messages } = await told(
    '1-1/2"',
    'slats on front face; brace cable; rails at 7-7/8"',
    'brace-too-wide',
  );
  expect(findings.map(({ args }) => args)).toEqual([{ gate: 'door', by: 'cable', width: '3/16"' }]);
  expect(messages[0]).not.toContain('narrower brace');
});
