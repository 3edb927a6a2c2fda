/** Calculations on a run's pieces, each with its working; and what checks need of them. */
export { asBuiltGaps } from './as-built.ts';
export { type DeckPostFigures, deckPostFigures } from './deck-edge.ts';
export { worstDeckPost } from './deck-posts.ts';
export { type Embedded, embedment } from './embedment.ts';
export { type GateFigures, gateFigures } from './gates.ts';
export { type Holes, holesOf } from './holes.ts';
export { type Movement, movements } from './movement.ts';
export { type LinePost, POSTS_IN_PLAN, postLine, postLineWorking } from './post-line.ts';
export { type PostBending, postBendings } from './posts.ts';
export { privacy } from './privacy.ts';
export { largestSpan, type SlatFigures, slatFigures, WAVY } from './slats.ts';
export { wallWorkings } from './walls.ts';
export { solidityOf, type WindLoad, windOn } from './wind-on.ts';
