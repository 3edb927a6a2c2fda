import { it } from 'vitest';
import { EACH, typeMutations } from './type-mutations.ts';

it(`takes ${EACH} seeded mutations of the examples, first quarter`, () => typeMutations(1), 300_000);
