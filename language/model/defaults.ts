import { feet, IMPERIAL, inches, METRIC, type Measure, mm, type Ticks } from '../units/index.ts';
import type { EndRule, MaterialKind, Mounting } from './job.ts';

/** A length assumed where none is stated, in the round figures of either trade. */
export interface DefaultLength {
  readonly imperial: Ticks;
  readonly metric: Ticks;
  readonly basis: 'common practice';
  readonly note: string;
}

/** A length by inches and by millimeters; feet are twelve inches. */
function habit(imperial: Ticks, metric: Ticks, note: string): DefaultLength {
  return { imperial, metric, basis: 'common practice', note };
}

/** Every length the trade takes for granted. */
export const DEFAULT_LENGTHS = {
  gap: habit(inches(1 / 2), mm(12), 'between slats'),
  edgeGap: habit(0, 0, 'none outside the first and the last slat'),
  endGap: habit(inches(1 / 8), mm(3), 'at each end of a slat, so that it can swell'),
  channelGap: habit(inches(3 / 8), mm(10), 'at each end of a slat in a channel'),
  grooveDepth: habit(inches(5 / 8), mm(15), 'of grooves that slats end in'),
  grooveRoom: habit(inches(1 / 16), mm(1.5), 'wider than the slat a groove is'),
  bottom: habit(inches(2), mm(50), 'above ground, so that the slats stay dry'),
  kick: habit(inches(1 / 2), mm(12), 'under a kick board, so that it can be set without digging'),
  taper: habit(inches(2), mm(50), 'at the narrow end of a tapered course'),
  ground: habit(0, 0, 'at the datum'),
  tops: habit(0, 0, 'posts end level with the highest slat'),
  hingeGap: habit(inches(1 / 4), mm(6), 'beside the hinges of a gate'),
  latchGap: habit(inches(1 / 2), mm(12), 'beside the latch of a gate'),
  wallGap: habit(inches(1 + 1 / 2), mm(40), 'between an end post and a wall, so that both stay dry'),
  filler: habit(inches(1 / 2), mm(12), 'least width of a scribed filler'),
  strip: habit(inches(6), mm(150), 'of the low strip of temporary bracing above the ground'),
  stake: habit(feet(2), mm(600), 'of stakes, two thirds of them in the ground'),
  spacing: habit(feet(6), mm(1_800), 'at most, clear between posts'),
} as const;

/** What checking and squaring its ends takes off a board where the job states no trim (common practice). */
export const LEAST_TRIM = { imperial: inches(1 / 4), metric: mm(6) } as const;

export type DefaultName = keyof typeof DEFAULT_LENGTHS;

/** What is taken for granted besides lengths: common practice, or the plainest reading of the text. */
export const DEFAULT_MOUNTING: Mounting = { kind: 'between' };
export const DEFAULT_GATE_MOUNTING: Mounting = { kind: 'face', face: 'front' };
/** A repeat is cut short only where the text says so. */
export const DEFAULT_END: EndRule = { kind: 'whole' };
/** A cap is a plain board unless it says otherwise. */
export const DEFAULT_CAP: 'flat' | 'hipped' = 'flat';
export const DEFAULT_SIDE = 'front';
export const DEFAULT_MATERIAL: MaterialKind = 'wood';
/** Where a pattern's top edge goes when it is turned upright and nothing else is said. */
export const DEFAULT_TOP_EDGE = 'left';
/** Trim and kick boards stand at the ground. */
export const DEFAULT_TRIM_EDGE = 'bottom';
/** Drawn so until the text says on which side the hinges are. */
export const DEFAULT_HINGES = 'left';

export const DEFAULT_MEASURES: Readonly<Record<'imperial' | 'metric', Measure>> = {
  imperial: IMPERIAL,
  metric: METRIC,
};

/** Whether a measure counts in meters; decides which of two round figures a default takes. */
export function isMetric({ unit }: Measure): boolean {
  return unit === 'mm' || unit === 'cm' || unit === 'm';
}
