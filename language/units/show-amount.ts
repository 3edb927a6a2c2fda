import { type Amount, convert, type UnitName } from './quantity.ts';

export type System = 'imperial' | 'metric';

/** What the other system's reader is shown for a unit; one missing is shown as it is. */
const METRIC_FOR: Partial<Record<UnitName, UnitName>> = {
  in: 'mm',
  ft: 'm',
  in2: 'mm2',
  ft2: 'm2',
  in3: 'mm3',
  ft3: 'm3',
  in4: 'mm4',
  lb: 'kN',
  kip: 'kN',
  'in-lb': 'N·m',
  'ft-lb': 'kN·m',
  psf: 'kPa',
  psi: 'MPa',
  ksi: 'MPa',
  plf: 'kN/m',
  'lb/in': 'kN/m',
  'psf/ft': 'kPa/m',
  mph: 'm/s',
  'lb mass': 'kg',
  'lb/ft3': 'kg/m3',
  '°F': '°C',
  '/°F': '/°C',
};

const IMPERIAL_FOR: Partial<Record<UnitName, UnitName>> = {
  mm: 'in',
  m: 'ft',
  mm2: 'in2',
  m2: 'ft2',
  mm3: 'in3',
  m3: 'ft3',
  mm4: 'in4',
  N: 'lb',
  kN: 'lb',
  N·m: 'ft-lb',
  kN·m: 'ft-lb',
  Pa: 'psf',
  kPa: 'psf',
  MPa: 'psi',
  GPa: 'psi',
  'N/m': 'plf',
  'kN/m': 'plf',
  'kPa/m': 'psf/ft',
  'm/s': 'mph',
  'km/h': 'mph',
  kg: 'lb mass',
  'kg/m3': 'lb/ft3',
  '°C': '°F',
  '/°C': '/°F',
};

/** The same amount in the unit a reader of the system expects. */
export function inSystem(amount: Amount, system: System): Amount {
  const to = (system === 'metric' ? METRIC_FOR : IMPERIAL_FOR)[amount.unit];
  return to === undefined ? amount : { value: convert(amount, to), unit: to };
}

/** An amount as it is read, to four significant digits: `16.4 psf`, `0.785 kPa`, `1,342 ft-lb`, `72 %`. */
export function formatAmount({ value, unit }: Amount): string {
  const number = formatNumber(value);
  if (unit === '') return number;
  const spelled = unit === 'lb mass' ? 'lb' : unit;
  return spelled === '°' ? `${number}°` : `${number} ${spelled.replace(/(?<=[nmt])([234])$/, superscript)}`;
}

/** A number to four significant digits, with commas by thousands, and by tens of powers when it is minute. */
export function formatNumber(value: number): string {
  if (value === 0 || !Number.isFinite(value)) return String(value);
  const size = Math.abs(value);
  if (size < 0.001) {
    const power = Math.floor(Math.log10(size));
    return `${Number((value / 10 ** power).toPrecision(3))} × 10^${power}`;
  }
  const rounded = size >= 10_000 ? Math.round(value) : Number(value.toPrecision(4));
  const [whole = '', rest] = String(rounded).split('.');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ',');
  return rest === undefined ? grouped : `${grouped}.${rest}`;
}

const superscript = (digit: string): string => ({ '2': '²', '3': '³', '4': '⁴' })[digit] ?? digit;
