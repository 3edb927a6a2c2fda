/**
 * The view of what is bought for the document someone works on: boards by stock with the pieces cut from each, what
 * is bought besides, and the price.
 *
 * Lives here: the tree and what it follows. Does not live here: counting, and the words of its lines (server).
 */
export { activateMaterials } from './activate.ts';
