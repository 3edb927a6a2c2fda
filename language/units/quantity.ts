/**
 * Units of calculation, other than ticks, with what one of each is in its SI base (m, N, Pa, kg, s). Exact:
 * the international inch is 25.4 mm, the avoirdupois pound 0.453 592 37 kg, standard gravity 9.806 65 m/s²
 * (NIST Special Publication 811, appendix B). Temperatures are points on their scale.
 */
const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;

export const UNITS = {
  in: ['length', INCH],
  ft: ['length', FOOT],
  mm: ['length', 0.001],
  m: ['length', 1],
  in2: ['area', INCH ** 2],
  ft2: ['area', FOOT ** 2],
  mm2: ['area', 1e-6],
  m2: ['area', 1],
  in3: ['volume', INCH ** 3],
  ft3: ['volume', FOOT ** 3],
  mm3: ['volume', 1e-9],
  m3: ['volume', 1],
  in4: ['second moment', INCH ** 4],
  mm4: ['second moment', 1e-12],
  lb: ['force', POUND_FORCE],
  kip: ['force', 1_000 * POUND_FORCE],
  N: ['force', 1],
  kN: ['force', 1_000],
  'in-lb': ['moment', INCH * POUND_FORCE],
  'ft-lb': ['moment', FOOT * POUND_FORCE],
  N·m: ['moment', 1],
  kN·m: ['moment', 1_000],
  psf: ['pressure', POUND_FORCE / FOOT ** 2],
  psi: ['pressure', POUND_FORCE / INCH ** 2],
  ksi: ['pressure', (1_000 * POUND_FORCE) / INCH ** 2],
  Pa: ['pressure', 1],
  kPa: ['pressure', 1_000],
  MPa: ['pressure', 1_000_000],
  GPa: ['pressure', 1_000_000_000],
  plf: ['line load', POUND_FORCE / FOOT],
  'lb/in': ['line load', POUND_FORCE / INCH],
  'N/m': ['line load', 1],
  'kN/m': ['line load', 1_000],
  'psf/ft': ['pressure by depth', POUND_FORCE / FOOT ** 3],
  'kPa/m': ['pressure by depth', 1_000],
  mph: ['speed', (5_280 * FOOT) / 3_600],
  'm/s': ['speed', 1],
  'km/h': ['speed', 1_000 / 3_600],
  'lb mass': ['mass', POUND],
  kg: ['mass', 1],
  'lb/ft3': ['density', POUND / FOOT ** 3],
  'kg/m3': ['density', 1],
  '°F': ['temperature', 5 / 9],
  '°C': ['temperature', 1],
  '/°F': ['expansion', 9 / 5],
  '/°C': ['expansion', 1],
  '%': ['share', 0.01],
  '': ['number', 1],
  '°': ['angle', 1],
} as const satisfies Readonly<Record<string, readonly [dimension: string, base: number]>>;

export type UnitName = keyof typeof UNITS;
export type Dimension = (typeof UNITS)[UnitName][0];

/** A number with its unit. */
export interface Amount {
  readonly value: number;
  readonly unit: UnitName;
}

export function dimensionOf(unit: UnitName): Dimension {
  return UNITS[unit][0];
}

/**
 * An amount's value in another unit of its dimension. Units of two dimensions are a defect and throw;
 * temperatures convert as points on their scales, the rest by their factors.
 */
export function convert({ value, unit }: Amount, to: UnitName): number {
  const [dimension, base] = UNITS[unit];
  const [other, otherBase] = UNITS[to];
  if (dimension !== other) throw new Error(`${unit} is a ${dimension}, ${to} a ${other}`);
  if (unit === to) return value;
  if (dimension === 'temperature') return to === '°C' ? ((value - 32) * 5) / 9 : (value * 9) / 5 + 32;
  return (value * base) / otherBase;
}
