/**
 * What an editor asks about a text: one file for each feature, with its test beside it. Where Langium's
 * own way is right it is kept (references, document and workspace symbols, highlights), and only told
 * how names are written and what kind of thing they are.
 *
 * Lives here: answers in the protocol's terms. Does not live here: calculation (language/), what is
 * kept between requests (work/).
 */
export { SlatCodeActions } from './code-actions.ts';
export { SlatCodeLens } from './code-lens.ts';
export { SlatCompletion } from './completion.ts';
export { SlatDefinition } from './definition.ts';
export { SlatFolding } from './folding.ts';
export { SlatFormatter } from './formatting.ts';
export { SlatHover } from './hover.ts';
export { SlatNodeKinds } from './node-kinds.ts';
export { SlatRename } from './rename.ts';
