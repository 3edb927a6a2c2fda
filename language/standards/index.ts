/**
 * Published tables as data: each value with its source and how sure we are of it (listed in SOURCES.md).
 *
 * Lives here: tables. Does not live here: judgment on them (checks/), calculation with them (figures/).
 */
export * from './beams.ts';
export { DRESSED_SIZES, type DressedSize, dressedWidthOf, nominalOf } from './dressed-sizes.ts';
export * from './gates-guards.ts';
export * from './holes.ts';
export * from './lumber-design.ts';
export * from './lumber-factors.ts';
export * from './other-materials.ts';
export * from './rules/index.ts';
export * from './soil.ts';
export type { Published, PublishedValue } from './source.ts';
export * from './species.ts';
export * from './wind.ts';
export * from './wind-coefficients.ts';
