import { fromMemory, type Published, type PublishedValue, secondary, valued } from './source.ts';

/** What a class of material other than wood is reckoned by. */
export interface MaterialClass {
  readonly word: 'composite' | 'pvc' | 'aluminum' | 'steel';
  readonly called: string;
  /** psi. */
  readonly stiffness: PublishedValue;
  /** For each degree Fahrenheit. */
  readonly expansion: PublishedValue;
  /** lb/ft3. */
  readonly density: PublishedValue;
  /** Where it yields, psi; missing for what has no one figure and takes its maker's. */
  readonly yield?: PublishedValue;
  /** A yield stress is divided by this for an allowable one. */
  readonly margin?: PublishedValue;
}

export const MATERIAL_CLASSES: Readonly<Record<MaterialClass['word'], MaterialClass>> = {
  composite: {
    word: 'composite',
    called: 'wood-plastic composite',
    stiffness: valued(400_000, 'psi', fromMemory('published range of makers', '0.2 to 0.7 million psi')),
    expansion: valued(0.000028, '/°F', secondary('EN 15534-4', 'deck profiles, greatest, 50e-6 per K')),
    density: valued(70, 'lb/ft3', fromMemory('published range of makers', '60 to 75')),
  },
  pvc: {
    word: 'pvc',
    called: 'rigid PVC',
    stiffness: valued(420_000, 'psi', secondary('ASTM D790 by a pipe maker', 'pipe grade')),
    expansion: valued(0.000034, '/°F', secondary('material tables of unplasticized PVC', '61e-6 per °C')),
    density: valued(87, 'lb/ft3', fromMemory('material tables of unplasticized PVC', '1.4')),
  },
  aluminum: {
    word: 'aluminum',
    called: 'aluminum, 6063-T5',
    stiffness: valued(10_000_000, 'psi', fromMemory('Aluminum Design Manual', 'modulus of elasticity')),
    expansion: valued(0.000013, '/°F', secondary('tables of linear expansion', '24e-6 per °C')),
    density: valued(169, 'lb/ft3', fromMemory('material tables of aluminum', '2.7')),
    yield: valued(16_000, 'psi', fromMemory('Aluminum Design Manual', '6063-T5')),
    margin: valued(1.65, '', fromMemory('Aluminum Design Manual', 'allowable strength, building type')),
  },
  steel: {
    word: 'steel',
    called: 'structural steel',
    stiffness: valued(29_000_000, 'psi', fromMemory('AISC 360', 'modulus of elasticity')),
    expansion: valued(0.0000065, '/°F', fromMemory('tables of linear expansion', 'steel')),
    density: valued(490, 'lb/ft3', fromMemory('tables of densities', 'steel')),
    yield: valued(36_000, 'psi', fromMemory('ASTM A36', 'least yield; tube of A500 yields at 46 000')),
    margin: valued(1.67, '', fromMemory('AISC 360', 'F1, allowable strength in bending')),
  },
};

/** Wood along its grain, for each degree Fahrenheit: 3 to 5 millionths for each degree Celsius. */
export const WOOD_EXPANSION: PublishedValue = valued(
  0.0000028,
  '/°F',
  secondary('tables of linear expansion', 'wood along the grain, 5e-6 per °C, the greatest'),
);

/** Under a load that stays, these sag so many times what they do at first. */
export const CREEP: Published & { readonly dry: number; readonly wet: number } = {
  dry: 1.5,
  wet: 2,
  ...fromMemory('NDS', '3.5.2, long-term deflection factor'),
};
