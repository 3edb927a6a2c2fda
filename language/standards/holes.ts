import { fromMemory, type Published, type PublishedValue, primary, secondary, valued } from './source.ts';

/** A bag of concrete mix and what it yields, ft3. */
export interface Bag extends Published {
  readonly pounds: number;
  readonly yields: number;
}

const BAGS_SEEN = secondary('printed on bags of concrete mix', 'yield');

export const BAGS: readonly Bag[] = [
  { pounds: 40, yields: 0.3, ...BAGS_SEEN },
  { pounds: 50, yields: 0.375, ...BAGS_SEEN },
  { pounds: 60, yields: 0.45, ...BAGS_SEEN },
  { pounds: 80, yields: 0.6, ...BAGS_SEEN },
];

/** Bags of 20 kg to the cubic meter. */
export const METRIC_BAGS: PublishedValue = valued(
  108,
  '/m3',
  secondary('makers of concrete mix', 'yield of 20 kg'),
);

/** Ordered beyond what the sum comes to. */
export const CONCRETE_WASTE: PublishedValue = valued(0.1, '', secondary('common practice', 'allowance'));

/** Holes in concrete, as many times the post is wide. */
export const HOLE_WIDTHS: PublishedValue = valued(
  3,
  '',
  secondary('common practice', 'holes set in concrete'),
);
/** Concrete around the post, in inches. */
export const COVER: PublishedValue = valued(2.5, 'in', secondary('common practice', '65 to 75 mm'));
/** Gravel below the post, in inches. */
export const GRAVEL: PublishedValue = valued(6, 'in', secondary('common practice', '4 to 6 in'));

/** The two meanings of "one third in the ground": of the whole post, or of its height above ground. */
export const THIRD_OF_WHOLE: PublishedValue = valued(1 / 3, '', secondary('common practice', 'of the post'));
export const THIRD_OF_HEIGHT: PublishedValue = valued(
  1 / 3,
  '',
  secondary('common practice', 'of the height'),
);

/** Frost depths of three places, in inches: examples and no map. */
export const FROST_EXAMPLES: readonly (PublishedValue & { readonly place: string })[] = [
  { place: 'Lakewood, Washington', ...valued(12, 'in', primary('municipal design criteria', '15.05.070')) },
  { place: 'Orem, Utah', ...valued(30, 'in', primary('municipal design criteria', 'adopted codes')) },
  { place: 'Lancaster, Ohio', ...valued(32, 'in', primary('municipal design criteria', '1301.11')) },
];

/** Weight of concrete, lb/ft3. */
export const CONCRETE_DENSITY: PublishedValue = valued(
  145,
  'lb/ft3',
  fromMemory('ACI 318', 'normal weight concrete'),
);
