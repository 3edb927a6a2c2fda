import { expect, it } from 'vitest';
import type { Parameter, ParameterValue, SlatFile } from '../grammar/index.ts';
import { makeReader } from './reader.ts';
import { resolveParameter } from './resolve-parameter.ts';

/** Scoping lets no default name itself or a later parameter; a tree from elsewhere may. */
it('comes to an end where defaults lead in a circle', () => {
  const root = { $type: 'SlatFile', elements: [] } as unknown as SlatFile;
  const pattern = {
    $type: 'Pattern',
    name: 'p',
    $container: root,
    $containerProperty: 'elements',
    parameters: [],
  };
  const parameter = (name: string) =>
    ({
      $type: 'Parameter',
      name,
      $container: pattern,
      $containerProperty: 'parameters',
    }) as unknown as Parameter;
  const a = parameter('a');
  const b = parameter('b');
  const naming = (ref: Parameter) => ({ $type: 'ParameterValue', ref: { ref } }) as unknown as ParameterValue;
  a.default = naming(b);
  b.default = naming(a);
  (root.elements as unknown[]).push(pattern);
  (pattern.parameters as unknown[]).push(a, b);
  const reader = makeReader(root, { uri: 'file:///p.slat' });
  expect(resolveParameter(reader, a, new Map())).toBeUndefined();
  expect([...reader.problems.values()]).toEqual([
    {
      code: 'circular',
      origin: { uri: 'file:///p.slat', path: 'Pattern:p/Parameter:a', why: 'stated' },
      args: { name: 'a', kind: 'parameter' },
    },
  ]);
});
