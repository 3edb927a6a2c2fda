import type { StatementSnippets } from './snippet.ts';
import { ELEMENTS_SNIPPETS } from './snippets-of-elements.ts';
import { GATES_SNIPPETS } from './snippets-of-gates.ts';
import { JOBS_SNIPPETS } from './snippets-of-jobs.ts';
import { RUNS_SNIPPETS } from './snippets-of-runs.ts';
import { STOCK_SNIPPETS } from './snippets-of-stock.ts';

export { type StatementSnippet, snippetText } from './snippet.ts';

/** By rule of the grammar. A rule that is not here gets its bare words. */
export const STATEMENT_SNIPPETS: StatementSnippets = {
  ...ELEMENTS_SNIPPETS,
  ...JOBS_SNIPPETS,
  ...STOCK_SNIPPETS,
  ...RUNS_SNIPPETS,
  ...GATES_SNIPPETS,
};
