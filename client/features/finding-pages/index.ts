/**
 * The pages that explain findings: kept in the extension, shown without a network.
 *
 * Lives here: finding a page and showing it. Does not live here: what the pages say (beside the checks).
 */
export { activateFindingPages } from './activate.ts';
