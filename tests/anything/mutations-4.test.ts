import { it } from 'vitest';
import { EACH, typeMutations } from './type-mutations.ts';

it(`takes ${EACH} seeded mutations of the examples, last quarter`, () => typeMutations(7501), 300_000);
