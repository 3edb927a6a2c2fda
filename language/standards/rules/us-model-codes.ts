import { inches } from '../../units/index.ts';
import { primary } from '../source.ts';
import type { RuleSet } from './rule-set.ts';

/** Guards of decks, and fences that need no permit, by the model codes for dwellings. */
export const US_MODEL_CODES: RuleSet = {
  id: 'us-model-codes',
  title: 'International Residential Code',
  place: 'United States, where adopted',
  edition: '2018',
  rules: {
    'guard-drop': { value: inches(30), ...primary('IRC 2018', 'R312.1.1') },
    'guard-low': { value: inches(36), ...primary('IRC 2018', 'R312.1.2') },
    'guard-opening': { value: inches(4), ...primary('IRC 2018', 'R312.1.3') },
    'permit-needed': { value: inches(84), ...primary('IRC 2015', 'R105.2 item 2') },
  },
};
