import { expect, it } from 'vitest';
import { fileNameOf } from './file-name.ts';

it('makes names of files that any file system takes, each once', () => {
  const taken = new Set<string>();
  const names = ['cut-plank', 'cut-red cedar', 'cut-red/cedar', 'Cut-Plank', '../..', 'Lärche 68'];
  expect(names.map((name) => fileNameOf(name, '.svg', taken))).toEqual([
    'cut-plank.svg',
    'cut-red-cedar.svg',
    'cut-red-cedar-2.svg',
    'Cut-Plank-2.svg',
    'run.svg',
    'Lärche-68.svg',
  ]);
});
