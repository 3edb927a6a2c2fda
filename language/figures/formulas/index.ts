/** Numbers in, numbers out: US customary units, no job, no pieces. Each is held to a published example beside it. */
export * from './continuous-beam.ts';
export * from './deck-edge.ts';
export * from './embedment.ts';
export * from './gate.ts';
export * from './holes.ts';
export * from './movement.ts';
export * from './section.ts';
export * from './straightest-line.ts';
export * from './wind.ts';
export * from './wood.ts';
