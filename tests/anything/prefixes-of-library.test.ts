import { it } from 'vitest';
import { exampleTexts } from '../jobs/index.ts';
import { typePrefixes } from './type-prefixes.ts';

const library = Object.entries(exampleTexts).filter(([path]) => path.startsWith('/examples/library/'));

it.each(library)(
  '%s can be typed from its first letter to its last',
  (path, text) => typePrefixes(path, text),
  300_000,
);
