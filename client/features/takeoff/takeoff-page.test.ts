import { expect, it } from 'vitest';
import { asCsv } from '../../../server/sheets/index.ts';
import { csvRows } from './csv-rows.ts';
import { takeoffPage } from './takeoff-page.ts';

const ROWS = [
  ['stock', 'width', 'note'],
  ['plank', '3-1/2"', 'a, b'],
  ['=odd', '', 'two\r\nlines'],
];

it('reads back what is written as comma-separated values', () => {
  expect(csvRows(asCsv(ROWS))).toEqual(ROWS);
  expect(csvRows('')).toEqual([]);
  expect(csvRows('a,b\n\nc,"')).toEqual([
    ['a', 'b'],
    ['c', ''],
  ]);
});

it('shows the order as a table and sheets as pictures, and takes no name for markup', () => {
  const page = takeoffPage('<b>yard</b>.slat', {
    order: asCsv([['stock'], ['a | b'], ['![x](y)']]),
    sheets: [{ name: 'cut-[a].svg', svg: '<svg/>' }],
    notes: ['*plank* is not proven'],
  });
  expect(page).not.toContain('<b>');
  expect(page).toContain('| a &#124; b |');
  expect(page).not.toContain('![x](y)');
  expect(page).not.toContain('*plank*');
  // Base64 of the four characters and the slash, by hand: "<svg/>" is PHN2Zy8+.
  expect(page).toContain('](data:image/svg+xml;base64,PHN2Zy8+)');
});
