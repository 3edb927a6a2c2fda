import { type Amount, type Dimension, dimensionOf, type UnitName } from './quantity.ts';

/** Spellings of units as a text states them; loads on a screen, speeds, and properties of materials. */
const SPELLINGS: Readonly<Record<string, UnitName>> = {
  psf: 'psf',
  psi: 'psi',
  ksi: 'ksi',
  Pa: 'Pa',
  kPa: 'kPa',
  MPa: 'MPa',
  GPa: 'GPa',
  mph: 'mph',
  'm/s': 'm/s',
  'km/h': 'km/h',
  'lb/ft3': 'lb/ft3',
  pcf: 'lb/ft3',
  'kg/m3': 'kg/m3',
  lb: 'lb',
  lbs: 'lb',
  N: 'N',
  kN: 'kN',
  '°F': '°F',
  '°C': '°C',
  'degrees F': '°F',
  'degrees C': '°C',
};

/** A number and a unit that is no length; the grammar's terminal AMOUNT is the same text. */
export const AMOUNT_PATTERN =
  /\d+(?:\.\d+)?[ \t]*(?:psf|psi|ksi|kPa|MPa|GPa|Pa|mph|m\/s|km\/h|lb\/ft3|lb\/ft³|pcf|kg\/m3|kg\/m³|lbs?|kN|N|°[ \t]*[CF]|degrees[ \t]+[CF])(?![\w\u00AA-\u1FFF\u3040-\uD7FF-])/;

const WHOLE = new RegExp(`^(${AMOUNT_PATTERN.source})$`);

/** An amount as stated, or undefined where the text is none. Never negative, never NaN. */
export function parseAmount(text: string): Amount | undefined {
  if (!WHOLE.test(text)) return undefined;
  const number = /^[\d.]+/.exec(text)?.[0] ?? '';
  const spelled = text
    .slice(number.length)
    .trim()
    .replace('³', '3')
    .replace(/^°[ \t]*/, '°')
    .replace(/[ \t]+/, ' ');
  const unit = SPELLINGS[spelled];
  return unit === undefined ? undefined : { value: Number(number), unit };
}

/** Spellings that state a dimension, for messages. */
export function spellingsOf(dimension: Dimension): readonly string[] {
  return Object.keys(SPELLINGS).filter((spelling) => {
    const unit = SPELLINGS[spelling];
    return unit !== undefined && dimensionOf(unit) === dimension;
  });
}
