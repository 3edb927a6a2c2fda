import type { LumberGroup } from './lumber-design.ts';
import { fromMemory, type Published, primary, secondary } from './source.ts';

/** Clear wood at 12 % moisture: specific gravity, breaking stress and stiffness in psi; averages, no design values. */
export interface ClearWood extends Published {
  readonly gravity: number;
  readonly breaking: number;
  readonly stiffness: number;
}

/** From green to ovendry, percent. */
export interface Shrinkage extends Published {
  readonly radial: number;
  readonly tangential: number;
}

/** Change of width for each percent of moisture, as a share of the width. */
export interface MovementCoefficients extends Published {
  readonly radial?: number;
  readonly tangential: number;
}

/** A species as a material names it. */
export interface Species {
  readonly word: string;
  readonly called: string;
  readonly clear: ClearWood;
  readonly shrinkage?: Shrinkage;
  readonly movement?: MovementCoefficients;
  /** Lumber it is graded with, where there are design values. */
  readonly group?: LumberGroup;
}

const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190';
const clear = (gravity: number, breaking: number, stiffness: number, published: Published): ClearWood => ({
  gravity,
  breaking,
  stiffness: Math.round(stiffness * 1_000_000),
  ...published,
});
const shrinks = (radial: number, tangential: number, published: Published): Shrinkage => ({
  radial,
  tangential,
  ...published,
});
const moves = (tangential: number, published: Published, radial?: number): MovementCoefficients => ({
  ...(radial === undefined ? {} : { radial }),
  tangential,
  ...published,
});

const CLEAR = primary(HANDBOOK, 'Table 5-3b');
const GREEN_TO_DRY = primary(HANDBOOK, 'Table 4-3');
const BY_PERCENT = primary(HANDBOOK, 'Table 13-5');
const BY_PERCENT_QUOTED = secondary(HANDBOOK, 'Table 13-5');
const BY_PERCENT_RECALLED = fromMemory(HANDBOOK, 'Table 13-5');

export const SPECIES: readonly Species[] = [
  {
    word: 'western-redcedar',
    called: 'western redcedar',
    clear: clear(0.32, 7_500, 1.11, secondary(HANDBOOK, 'Table 5-3b; specific gravity from memory')),
    shrinkage: shrinks(2.4, 5, GREEN_TO_DRY),
    movement: moves(0.00234, BY_PERCENT_RECALLED, 0.00111),
    group: 'Western Cedars',
  },
  {
    word: 'redwood',
    called: 'redwood, young growth',
    clear: clear(0.35, 7_900, 1.1, CLEAR),
    shrinkage: shrinks(2.2, 4.9, GREEN_TO_DRY),
    movement: moves(0.00229, BY_PERCENT_RECALLED, 0.00101),
    group: 'Redwood',
  },
  {
    word: 'redwood-old',
    called: 'redwood, old growth',
    clear: clear(0.4, 10_000, 1.34, CLEAR),
    shrinkage: shrinks(2.6, 4.4, GREEN_TO_DRY),
    movement: moves(0.00205, BY_PERCENT_RECALLED, 0.0012),
    group: 'Redwood',
  },
  {
    word: 'douglas-fir',
    called: 'Douglas-fir, coast',
    clear: clear(0.48, 12_400, 1.95, primary(HANDBOOK, 'Table 5-3b, by a university table')),
    shrinkage: shrinks(4.8, 7.6, GREEN_TO_DRY),
    movement: moves(0.00267, BY_PERCENT_QUOTED),
    group: 'Douglas Fir-Larch',
  },
  {
    word: 'southern-pine',
    called: 'southern pine, loblolly',
    clear: clear(0.51, 12_800, 1.79, fromMemory(HANDBOOK, 'Table 5-3b')),
    shrinkage: shrinks(4.8, 7.4, fromMemory(HANDBOOK, 'Table 4-3')),
    movement: moves(0.00265, BY_PERCENT_QUOTED),
    group: 'Southern Pine',
  },
  {
    word: 'shortleaf-pine',
    called: 'shortleaf pine',
    clear: clear(0.51, 13_100, 1.75, CLEAR),
    movement: moves(0.00265, BY_PERCENT_QUOTED),
    group: 'Southern Pine',
  },
  {
    word: 'slash-pine',
    called: 'slash pine',
    clear: clear(0.59, 16_300, 1.98, CLEAR),
    movement: moves(0.00265, BY_PERCENT_QUOTED),
    group: 'Southern Pine',
  },
  {
    word: 'ponderosa-pine',
    called: 'ponderosa pine',
    clear: clear(0.4, 9_400, 1.29, CLEAR),
  },
  {
    word: 'larch',
    called: 'western larch',
    clear: clear(0.52, 13_000, 1.87, fromMemory(HANDBOOK, 'Table 5-3b')),
    shrinkage: shrinks(4.5, 9.1, fromMemory(HANDBOOK, 'Table 4-3')),
    movement: moves(0.00323, BY_PERCENT_RECALLED, 0.00155),
    group: 'Douglas Fir-Larch',
  },
  {
    word: 'white-oak',
    called: 'white oak',
    clear: clear(0.68, 15_200, 1.78, secondary(HANDBOOK, 'Table 5-3b; stiffness from memory')),
    shrinkage: shrinks(5.6, 10.5, GREEN_TO_DRY),
    movement: moves(0.00365, BY_PERCENT, 0.0018),
  },
  {
    word: 'white-ash',
    called: 'white ash',
    clear: clear(0.6, 15_000, 1.74, secondary(HANDBOOK, 'Table 5-3b; breaking stress from memory')),
    shrinkage: shrinks(4.9, 7.8, GREEN_TO_DRY),
    movement: moves(0.00274, BY_PERCENT, 0.00169),
  },
  {
    word: 'ipe',
    called: 'ipe',
    clear: clear(
      0.91,
      25_360,
      3.14,
      primary('USDA FPL technology sheet, Tabebuia', 'lapacho group, 12 %; specific gravity 0.85 to 0.97'),
    ),
    shrinkage: shrinks(6.6, 8, secondary(HANDBOOK, 'Table 4-4')),
  },
  {
    word: 'teak',
    called: 'teak',
    clear: clear(0.55, 14_600, 1.55, primary(HANDBOOK, 'Table 5-5b')),
  },
];

const BY_WORD = new Map(SPECIES.map((species) => [species.word, species]));

/** The species a word stands for, or undefined. */
export function speciesOf(word: string): Species | undefined {
  return BY_WORD.get(word);
}

/** Lumber as sawn, all but redwood and cedars: percent from green at moisture `M` is `a - b M`. */
export const LUMBER_SHRINKAGE: Published & {
  readonly width: readonly [a: number, b: number];
  readonly thickness: readonly [a: number, b: number];
  /** Moisture it holds for, percent. */
  readonly valid: readonly [from: number, to: number];
} = {
  width: [6.031, 0.215],
  thickness: [5.062, 0.181],
  valid: [8, 19],
  ...primary('USDA FPL-RP-489', 'moisture content and shrinkage of lumber'),
};

/** Wood swells and shrinks with moisture up to about here, percent. */
export const FIBER_SATURATION: Published & { readonly percent: number } = {
  percent: 28,
  ...fromMemory(HANDBOOK, 'chapter 4, 26 to 30 %'),
};

/** Softwood of a species not named: the middle of the species known here. */
export const UNNAMED_WOOD: Published & {
  readonly stiffness: number;
  readonly gravity: number;
  readonly tangential: number;
} = {
  stiffness: 1_100_000,
  gravity: 0.36,
  tangential: 0.0026,
  ...secondary(HANDBOOK, 'Table 5-3b, western redcedar and young redwood, the softest sold for screens'),
};
