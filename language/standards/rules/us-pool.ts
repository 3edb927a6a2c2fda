import { inches } from '../../units/index.ts';
import { primary, secondary } from '../source.ts';
import type { RuleSet } from './rule-set.ts';

/** Barriers around swimming pools, and the older appendix of the residential code with the same numbers. */
export const US_POOL: RuleSet = {
  id: 'us-pool',
  title: 'International Swimming Pool and Spa Code',
  place: 'United States, where adopted',
  edition: '2018',
  rules: {
    'pool-low': { value: inches(48), ...primary('ISPSC', '305.2, as in a federal guideline') },
    'pool-gap-under': { value: inches(2), ...secondary('ISPSC', '305.2, above grade that is not solid') },
    'pool-opening': { value: inches(4), ...primary('ISPSC', '305.2, as in a federal guideline') },
    'pool-climb-apart': { value: inches(45), ...primary('ISPSC', '305.2.5, as in a county page') },
    'pool-climb-gap': { value: inches(1.75), ...primary('ISPSC', '305.2.5, as in a county page') },
    'pool-latch': { value: inches(54), ...primary('IRC', 'Appendix G, AG105.2') },
  },
};
