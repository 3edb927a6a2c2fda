/** Greatest common divisor of whole numbers; of a number and 0 the number. */
export function greatestCommon(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}
