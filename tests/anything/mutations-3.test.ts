import { it } from 'vitest';
import { EACH, typeMutations } from './type-mutations.ts';

it(`takes ${EACH} seeded mutations of the examples, third quarter`, () => typeMutations(5001), 300_000);
