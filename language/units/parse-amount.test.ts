import { expect, it } from 'vitest';
import { parseAmount, spellingsOf } from './parse-amount.ts';

it.each([
  ['15 psf', 15, 'psf'],
  ['15psf', 15, 'psf'],
  ['0.5 kPa', 0.5, 'kPa'],
  ['115 mph', 115, 'mph'],
  ['50 m/s', 50, 'm/s'],
  ['180 km/h', 180, 'km/h'],
  ['9.2 GPa', 9.2, 'GPa'],
  ['23 lb/ft³', 23, 'lb/ft3'],
  ['590 kg/m3', 590, 'kg/m3'],
  ['20 °C', 20, '°C'],
  ['68 degrees F', 68, '°F'],
])('reads %s', (text, value, unit) => {
  expect(parseAmount(text)).toEqual({ value, unit });
});

it.each(['15', 'psf', '15 bar', '-3 psf', '1.2.3 psf', '15 psfs', '5 ft', ''])('does not read %j', (text) => {
  expect(parseAmount(text)).toBeUndefined();
});

it('names the spellings of a dimension', () => {
  expect(spellingsOf('speed')).toEqual(['mph', 'm/s', 'km/h']);
});
