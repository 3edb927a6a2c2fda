import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

/** A leaf is its opening less 1/4" at the hinges and 1/2" at the latch. */
function found(opening: string, frame = 'bar') {
  const gate = `gate door in bank { opening ${opening} from 5'; hinges on left; frame ${frame}; flip upright; fit gaps 1/4" to 1" }\n`;
  const iron = 'material iron { kind steel }\nrail tube { width 2"; thickness 2"; made of iron }\n';
  return checked(`${iron}${screen(['118-1/2"', "16'"], ['2 bays', '3 bays'])}${gate}`, 'leaf-too-wide');
}

it('tells how wide the leaf is, at the opening', async () => {
  const { findings, messages } = await found('48-3/4"');
  expect(findings.map(({ args }) => args)).toEqual([
    { gate: 'door', width: '48"', limit: '42"', far: '', most: '60"' },
  ]);
  expect(findings[0]?.at.path).toBe('Gate:door/Opening.width');
  expect(findings[0]?.pieces?.length).toBeGreaterThan(5);
  expect(messages[0]).toContain('The leaf of door is 48" wide; past 42" a wooden leaf sags');
});

it('lets a leaf be 42 inches wide, and no wider', async () => {
  expect((await found('42-3/4"')).findings).toEqual([]);
  expect((await found('42-13/16"')).findings).toHaveLength(1);
});

it('says nothing of a frame that is not wood', async () => {
  expect((await found('60"', 'tube')).findings).toEqual([]);
  expect((await found('60"', 'bar')).findings).toHaveLength(1);
});

it('is firmer past 60 inches', async () => {
  expect((await found('60-3/4"')).messages[0]).toContain('past 42"');
  expect((await found('60-13/16"')).messages[0]).toContain('past 60" no brace keeps');
});
