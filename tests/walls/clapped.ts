import { screen } from '../../language/checks/testing/checked.ts';

/** The sound screen, from 2-1/2" to 50" high, with statements of walls; and what else is to be changed in it. */
export function clapped(
  walls: string,
  ...changes: readonly (readonly [passage: string, by: string])[]
): string {
  return screen(['  fill rows\n', `  fill rows\n  ${walls}\n`], ...changes);
}
