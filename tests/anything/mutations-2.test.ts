import { it } from 'vitest';
import { EACH, typeMutations } from './type-mutations.ts';

it(`takes ${EACH} seeded mutations of the examples, second quarter`, () => typeMutations(2501), 300_000);
