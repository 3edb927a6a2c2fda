import { expect, it } from 'vitest';
import { readExpectations } from './read-expectations.ts';

it('reads what a line expects, and where', () => {
  const text =
    'gap 7   // expect: error unit-missing at `7`, warning too-open\n\nfit   // expect: information bays-unequal';
  expect(readExpectations(text)).toEqual([
    { line: 1, severity: 'error', code: 'unit-missing', at: '7' },
    { line: 1, severity: 'warning', code: 'too-open' },
    { line: 3, severity: 'information', code: 'bays-unequal' },
  ]);
});

it.each([
  '// expect: fault unit-missing',
  '// expect: error',
  '// expect error unit-missing "7"',
  '// expect:',
])('refuses %s', (comment) => {
  expect(() => readExpectations(`use "yard.slat"\ngap 7  ${comment}`)).toThrow('line 2');
});
