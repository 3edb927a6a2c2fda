/**
 * From pieces to what is bought and cut.
 *
 * Lives here: demand, the cutting planner, order, price. Does not live here: geometry (layout/), findings (checks/).
 */
export * from './cutting/index.ts';
