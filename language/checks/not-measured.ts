import { commonPractice, type RunCheck } from './define.ts';

/** Slats are cut, or some bays are measured, and others are not. */
export const notMeasured: RunCheck = {
  kind: {
    code: 'not-measured',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('slats are cut to each bay as it stands, once its posts are set'),
    message: (a) =>
      `${Number(a.count) > 1 ? `Bays ${a.bays} are` : `Bay ${a.bays} is`} not measured: slats cut to the plan may not fit there. ` +
      'Measure each bay once its posts are set, before its slats are cut.',
  },
  check: ({ spec, bays }) => {
    const { measured } = spec;
    if (!measured || (measured.bays.length === 0 && measured.cuts.length === 0)) return [];
    const known = new Set(measured.bays.map(({ number }) => number));
    const missing = bays.filter(({ number, gate }) => gate === undefined && !known.has(number));
    if (missing.length === 0) return [];
    const args = { bays: missing.map(({ number }) => number).join(', '), count: missing.length };
    return [{ code: 'not-measured', at: measured.cuts[0]?.origin ?? measured.origin, args }];
  },
};
