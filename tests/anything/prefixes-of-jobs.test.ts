import { it } from 'vitest';
import { examples } from '../jobs/index.ts';
import { typePrefixes } from './type-prefixes.ts';

it.each(examples)(
  '$name can be typed from its first letter to its last',
  ({ path, text }) => typePrefixes(path, text),
  300_000,
);
