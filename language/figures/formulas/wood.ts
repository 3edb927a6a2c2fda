import {
  type DesignValues,
  FLAT_USE_FACTORS,
  INCISED,
  REPETITIVE,
  SIZE_FACTORS,
  WET_SERVICE,
  WET_TIMBER,
  widthFactor,
} from '../../standards/index.ts';

/** How a piece of lumber is used. */
export interface WoodUse {
  /** Load duration factor: 1.6 in wind. */
  readonly duration: number;
  readonly wet: boolean;
  /** Nominal inches: the wide face and the narrow one. */
  readonly nominalWidth: number;
  readonly nominalThickness: number;
  /** Loaded on its wide face. */
  readonly flat?: boolean;
  readonly incised?: boolean;
  /** Shares its load with two or more like it. */
  readonly repetitive?: boolean;
  /** Held against toppling sideways less than fully; 1 where as deep as wide or less. */
  readonly stability?: number;
}

/** Factors on the bending value, each under the symbol the standard gives it, and what they come to; psi. */
export interface AdjustedBending {
  readonly CD: number;
  readonly CM: number;
  readonly CF: number;
  readonly Cfu: number;
  readonly Ci: number;
  readonly Cr: number;
  readonly CL: number;
  readonly allowable: number;
  /** Stiffness, psi, as adjusted. */
  readonly stiffness: number;
}

/** Allowable bending stress and stiffness of sawn lumber by the allowable stress method (NDS 4.3). */
export function adjustedBending(values: DesignValues, use: WoodUse): AdjustedBending {
  const timber = values.size === 'timber';
  const thick = use.nominalThickness >= 4;
  // Southern Pine's values hold the size effect; timbers up to 12" deep have none.
  const CF =
    timber || values.group === 'Southern Pine' ? 1 : widthFactor(SIZE_FACTORS, use.nominalWidth, thick);
  const Cfu = use.flat && !timber ? widthFactor(FLAT_USE_FACTORS, use.nominalWidth, thick) : 1;
  const CM = !use.wet
    ? 1
    : timber
      ? WET_TIMBER.bending
      : values.bending * CF <= WET_SERVICE.bendingOver
        ? 1
        : WET_SERVICE.bending;
  const Ci = use.incised ? INCISED.strength : 1;
  const Cr = use.repetitive ? REPETITIVE.value : 1;
  const CL = use.stability ?? 1;
  const CD = use.duration;
  const softer =
    (use.wet ? (timber ? WET_TIMBER.stiffness : WET_SERVICE.stiffness) : 1) *
    (use.incised ? INCISED.stiffness : 1);
  return {
    CD,
    CM,
    CF,
    Cfu,
    Ci,
    Cr,
    CL,
    allowable: values.bending * CD * CM * CF * Cfu * Ci * Cr * CL,
    stiffness: values.stiffness * softer,
  };
}

/**
 * Beam stability factor of a bending member held only so far apart (NDS 3.3.3.8), from the allowable stress
 * without it, the adjusted minimum stiffness, the effective length, depth and breadth; psi and inches.
 */
export function stabilityFactor(
  allowable: number,
  stiffnessMin: number,
  effectiveLength: number,
  depth: number,
  breadth: number,
): number {
  const slenderness = Math.sqrt((effectiveLength * depth) / breadth ** 2);
  const critical = (1.2 * stiffnessMin) / slenderness ** 2;
  const ratio = critical / allowable;
  const half = (1 + ratio) / 1.9;
  return half - Math.sqrt(half ** 2 - ratio / 0.95);
}
