import { inches } from '../../units/index.ts';
import { secondary } from '../source.ts';
import type { RuleSet } from './rule-set.ts';

/** Corners at roads, as towns write them. A town's own legs and heights are the only ones that count. */
export const US_CORNER: RuleSet = {
  id: 'us-corner',
  title: 'Sight triangles at corners, legs of 25 ft at streets and 10 ft at driveways',
  place: 'United States, by town',
  edition: 'as one town has it',
  rules: {
    'in-sight-triangle': { value: inches(30), ...secondary('a municipal fence guide', 'sight triangle') },
    'sight-to': { value: inches(72), ...secondary('a municipal fence guide', 'sight triangle') },
  },
};

/** Notice of digging: a call two full working days before, three in some states. */
export const US_DIGGING: RuleSet = {
  id: 'us-digging',
  title: 'Notice of digging, and the strip beside a mark that is dug by hand, 18 in in some states',
  place: 'United States, by state',
  edition: 'as most states have it',
  rules: {
    'near-utility': { value: inches(24), ...secondary('state one-call guides', 'tolerance zone') },
  },
};
