/**
 * From pieces to what is bought and cut: demand by stock, boards and their cuts, hardware, price.
 *
 * Lives here: counting, planning, adding up. Does not live here: geometry (layout/), judgment (checks/), pictures
 * of boards (drawing/).
 */
export * from './better/index.ts';
export { type BoardPlan, isTemporary, keptFrom } from './board-plan.ts';
export * from './cutting/index.ts';
export { demandOf, type StockDemand, type Wanted } from './demand.ts';
export { coatedOf, hardwareOf, type Item, treatedEnds } from './hardware.ts';
export { type OptionFigures, optionFigures } from './option-figures.ts';
export { type OrderLine, orderOf } from './order.ts';
export { type Pile, pileOf } from './pile.ts';
export {
  type PlannedBoard,
  type PlannedPart,
  type PlannedStrip,
  piecesOf,
  type SawnPiece,
} from './planned-board.ts';
export { type Price, type PriceLine, priceOf } from './price.ts';
export { searchTakeoff, type Takeoff, type TakeoffSearch, takeoffOf } from './takeoff.ts';
export { neededAtOnce, screenAlone } from './used-again.ts';
