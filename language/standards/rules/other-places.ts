import { mm } from '../../units/index.ts';
import { fromMemory, secondary } from '../source.ts';
import type { RuleSet } from './rule-set.ts';

/** Guards high above the ground, which nothing must help to climb. */
export const CANADA_GUARDS: RuleSet = {
  id: 'canada-guards',
  title: 'National Building Code of Canada',
  place: 'Canada, where adopted',
  edition: '2015',
  rules: {
    'guard-drop': { value: mm(600), ...fromMemory('NBC 2015', '9.8.8.1') },
    'guard-low': { value: mm(900), ...fromMemory('NBC 2015', '9.8.8.3, up to 1.8 m above ground') },
    'guard-opening': { value: mm(100), ...fromMemory('NBC 2015', '9.8.8.5') },
    'climb-drop': { value: mm(4200), ...secondary('NBC 2015', '9.8.8.6, as in an appeal decision') },
    'climb-from': { value: mm(140), ...secondary('NBC 2015', '9.8.8.6, as in an appeal decision') },
    'climb-to': { value: mm(900), ...secondary('NBC 2015', '9.8.8.6, as in an appeal decision') },
  },
};

/** Barriers around swimming pools. */
export const AUSTRALIA_POOL: RuleSet = {
  id: 'australia-pool',
  title: 'AS 1926.1',
  place: 'Australia, where adopted',
  edition: '2012',
  rules: {
    'pool-low': { value: mm(1200), ...secondary('AS 1926.1', '2.1') },
    'pool-gap-under': { value: mm(100), ...fromMemory('AS 1926.1', '2.2') },
    'pool-opening': { value: mm(100), ...fromMemory('AS 1926.1', '2.4') },
    'pool-climb-apart': { value: mm(900), ...secondary('AS 1926.1', 'zone without footholds') },
    'pool-climb-gap': { value: mm(10), ...secondary('AS 1926.1', 'what is no foothold') },
    'pool-latch': { value: mm(1500), ...fromMemory('AS 1926.1', '2.5') },
  },
};

/** Fences that need no planning permission. */
export const ENGLAND_FENCES: RuleSet = {
  id: 'england-fences',
  title: 'General Permitted Development Order',
  place: 'England, not beside a highway used by vehicles, where it is 1 m',
  edition: '2015',
  rules: { 'permit-needed': { value: mm(2000), ...secondary('GPDO 2015', 'Schedule 2, Part 2, Class A') } },
};

/** Screens for which no proof of stability is asked; states have 1.8 m to 2.0 m, and here is the lower. */
export const GERMANY_SCREENS: RuleSet = {
  id: 'germany-screens',
  title: 'Screens without proof of stability',
  place: 'Germany, by state',
  edition: 'as states have it, 1.8 m to 2.0 m',
  rules: {
    'permit-needed': {
      value: mm(1800),
      ...secondary('guides to state building codes', 'proof of stability'),
    },
  },
};
