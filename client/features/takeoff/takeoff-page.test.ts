import { expect, it } from 'vitest';
import { takeoffPage } from './takeoff-page.ts';

it('shows the order as a table and sheets as pictures, and takes no name for markup', () => {
  const page = takeoffPage('<b>yard</b>.slat', {
    order: [['stock'], ['a | b'], ['![x](y)']],
    csv: { name: 'order.csv', text: '' },
    sheets: [{ name: 'cut-[a].svg', text: '<svg/>' }],
    notes: ['*plank* is not proven'],
  });
  expect(page).not.toContain('<b>');
  expect(page).toContain('| a &#124; b |');
  expect(page).not.toContain('![x](y)');
  expect(page).not.toContain('*plank*');
  // Base64 of the four characters and the slash, by hand: "<svg/>" is PHN2Zy8+.
  expect(page).toContain('](data:image/svg+xml;base64,PHN2Zy8+)');
});
