import type { Material, Stock } from '../../model/index.ts';
import {
  DESIGN_VALUES,
  type DesignValues,
  designValuesOf,
  LOAD_DURATION,
  MATERIAL_CLASSES,
  nominalOf,
  type Published,
  UNNAMED_WOOD,
} from '../../standards/index.ts';
import { inches, type Ticks } from '../../units/index.ts';
import { type AdjustedBending, adjustedBending } from '../formulas/index.ts';

/** A number with where it comes from, in words; `published` where a table has it. */
export interface Known {
  readonly value: number;
  readonly from: string;
  readonly published?: Published;
}

/** Allowable bending stress in wind and stiffness of a section, psi. */
export interface Strength {
  /** Missing where nothing is published or stated. */
  readonly allowable?: Known;
  readonly stiffness: Known;
  /** For wood by its table: the reference value and the factors on it. */
  readonly lumber?: { readonly values: DesignValues; readonly factors: AdjustedBending };
}

const own = (value: number, material: Material): Known => ({ value, from: `stated for ${material.name}` });

/**
 * What a section bears in wind, outdoors: the builder's own value, that of sawn lumber with its factors, or the
 * yield of a metal over its margin. Sizes in ticks; `flat` when the wind is on its wide face.
 */
export function strengthOf(
  material: Material | undefined,
  { width, thickness, flat }: { readonly width: Ticks; readonly thickness: Ticks; readonly flat: boolean },
): Strength {
  const kind = material?.kind.value ?? 'wood';
  const found = kind === 'wood' ? lumber(material, width, thickness, flat) : classStrength(kind);
  return {
    ...found,
    ...(material?.bending ? { allowable: own(material.bending.value, material) } : {}),
    stiffness: material?.stiffness ? own(material.stiffness.value, material) : found.stiffness,
  };
}

function classStrength(kind: keyof typeof MATERIAL_CLASSES): Strength {
  const known = MATERIAL_CLASSES[kind];
  const stiffness = { value: known.stiffness.value, from: known.called, published: known.stiffness };
  if (!known.yield || !known.margin) return { stiffness };
  return {
    stiffness,
    allowable: {
      value: known.yield.value / known.margin.value,
      from: `${known.called}: ${known.yield.value} psi over ${known.margin.value}`,
      published: known.yield,
    },
  };
}

function lumber(material: Material | undefined, width: Ticks, thickness: Ticks, flat: boolean): Strength {
  const species = material?.species?.value;
  const size = Math.min(width, thickness) >= inches(4.5) ? 'timber' : 'dimension';
  const nominalWidth = nominalOf(Math.max(width, thickness));
  const grade = material?.grade?.value ?? 'No.2';
  const values = species
    ? species.group && designValuesOf(species.group, grade, size, nominalWidth)
    : weakest(size, nominalWidth);
  if (!values) {
    const clear = species?.clear ?? UNNAMED_WOOD;
    const from = `clear wood, ${species?.called ?? 'species not stated'}`;
    return { stiffness: { value: clear.stiffness, from, published: clear } };
  }
  const factors = adjustedBending(values, {
    duration: LOAD_DURATION.wind.value,
    wet: true,
    nominalWidth,
    nominalThickness: nominalOf(Math.min(width, thickness)),
    flat,
  });
  const from = species
    ? `${values.group} ${values.grade}`
    : `species not stated: ${values.group} ${values.grade}, the weakest of the table`;
  return {
    allowable: { value: factors.allowable, from, published: values },
    stiffness: { value: factors.stiffness, from, published: values },
    lumber: { values, factors },
  };
}

function weakest(size: 'timber' | 'dimension', nominalWidth: number): DesignValues | undefined {
  return DESIGN_VALUES.filter(
    (row) =>
      row.size === size &&
      row.grade === 'No.2' &&
      (!row.widths || (nominalWidth >= row.widths[0] && nominalWidth <= row.widths[1])),
  ).reduce<DesignValues | undefined>(
    (least, row) => (!least || row.bending < least.bending ? row : least),
    undefined,
  );
}

/** Weight of water, lb/ft3; wood at 12 % weighs 1.12 times its specific gravity. */
const WATER = 62.4;

/** Weight when dry, lb/ft3. */
export function densityOf(material: Stock['material']): Known {
  if (material?.density) return own(material.density.value, material);
  const kind = material?.kind.value ?? 'wood';
  if (kind !== 'wood') {
    const { density, called } = MATERIAL_CLASSES[kind];
    return { value: density.value, from: called, published: density };
  }
  const clear = material?.species?.value.clear ?? UNNAMED_WOOD;
  const from = material?.species?.value.called ?? 'softwood, species not stated';
  return { value: clear.gravity * WATER * 1.12, from: `${from}, at 12 % moisture`, published: clear };
}
