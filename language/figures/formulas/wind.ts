import {
  DIRECTIONALITY,
  ELEVATION_RATE,
  type Exposure,
  GROUND_REDUCTION,
  KZ_TABLE,
  LOWEST_KZ_HEIGHT,
  OPEN_FRAME,
  POROSITY_POWER,
  RETURN_REDUCTION,
  SOLID_WALL,
  VELOCITY_PRESSURE,
  WIND_RULES,
  WINDWARD_EDGE,
  type WindEdition,
} from '../../standards/index.ts';
import { interpolate } from './interpolate.ts';

/** Velocity pressure coefficient at a height in feet: `2.01 (z / zg)^(2 / alpha)`, 2.41 in ASCE 7-22; z at least 15 ft. */
export function kz(edition: WindEdition, exposure: Exposure, height: number): number {
  const rules = WIND_RULES[edition];
  const { alpha, zg } = rules.exposures[exposure];
  return rules.kzFactor.value * (Math.max(LOWEST_KZ_HEIGHT.value, height) / zg) ** (2 / alpha);
}

/** The same by the rounded entries of the printed table, interpolated between heights. */
export function kzOfTable(exposure: Exposure, height: number): number {
  return interpolate(KZ_TABLE.heights, KZ_TABLE.rows[exposure], height);
}

/** Ground elevation factor, from feet above the sea. */
export function ke(elevation: number): number {
  return Math.exp(-ELEVATION_RATE.value * elevation);
}

export interface VelocityPressure {
  /** mph. */
  readonly speed: number;
  readonly kz: number;
  readonly kzt?: number;
  readonly ke?: number;
  /** Importance, of ASCE 7-05 alone. */
  readonly importance?: number;
}

/** psf, directionality included, by whichever place it stands at in the edition. */
export function velocityPressure({
  speed,
  kz: atHeight,
  kzt = 1,
  ke: ground = 1,
  importance = 1,
}: VelocityPressure): number {
  return VELOCITY_PRESSURE.value * atHeight * kzt * DIRECTIONALITY.value * ground * speed ** 2 * importance;
}

/** Force coefficient of a solid wall, by the height of its face over that of its top, and length over height of face. */
export function solidCoefficient(faceOverTop: number, lengthOverFace: number): number {
  const rows = SOLID_WALL.rows.toReversed();
  return interpolate(
    rows.map(({ ratio }) => ratio),
    rows.map(({ cf }) => interpolate(SOLID_WALL.lengths, cf, lengthOverFace)),
    faceOverTop,
  );
}

/**
 * Case C: the coefficient of a stretch at the windward edge, counted from 0, with the relief of the gap to the
 * ground and of a return wall (its length over the height of the face; on the first stretch only). Undefined where
 * the case does not arise or the stretch is past the second.
 */
export function edgeCoefficient(
  stretch: 0 | 1,
  faceOverTop: number,
  lengthOverFace: number,
  returnOverFace = 0,
): number | undefined {
  const row = WINDWARD_EDGE.stretches[stretch];
  if (!row || lengthOverFace < 2) return undefined;
  const ground = faceOverTop > GROUND_REDUCTION.over ? GROUND_REDUCTION.from - faceOverTop : 1;
  const returns =
    stretch === 0 ? interpolate(RETURN_REDUCTION.lengths, RETURN_REDUCTION.factors, returnOverFace) : 1;
  return interpolate(WINDWARD_EDGE.lengths, row, lengthOverFace) * ground * returns;
}

/** What openings leave of the load on a solid wall, by its solidity (0 to 1). */
export function porosityFactor(solidity: number): number {
  return 1 - (1 - Math.min(1, Math.max(0, solidity))) ** POROSITY_POWER.power;
}

/** Force coefficient on the solid area of an open frame of flat-sided members. */
export function openCoefficient(solidity: number): number {
  const row = OPEN_FRAME.rows.find(({ below }) => solidity < below) ?? OPEN_FRAME.rows.at(-1);
  return row?.cf ?? 0;
}
