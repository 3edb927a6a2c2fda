import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { penRules } from './pen-rules.ts';

it('uses no ink or fill that the theme does not give a color to', () => {
  const theme = readFileSync(new URL('../style/theme.css', import.meta.url), 'utf8');
  const used = new Set([...penRules().matchAll(/var\((--(?:ink|fill)-[a-z-]+)\)/g)].map(([, name]) => name));
  expect(used.size).toBeGreaterThan(5);
  for (const name of used) expect(theme).toContain(`${name}:`);
});

it('takes every color from the theme of the editor', () => {
  for (const file of ['theme', 'page', 'drawing']) {
    const css = readFileSync(new URL(`../style/${file}.css`, import.meta.url), 'utf8');
    expect(css).not.toMatch(/#[0-9a-f]{3,8}\b|\brgba?\(|\bhsla?\(|:\s*(black|white|gray|red|blue)\b/i);
  }
});
