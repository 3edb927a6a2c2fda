import type { Job } from '../../language/model/index.ts';
import type { PlannedBoard, Takeoff } from '../../language/takeoff/index.ts';
import { type Ticks, toMm } from '../../language/units/index.ts';

/** Of the JSON form; raised when a field changes its meaning. */
export const VERSION = 2;

const mm = (ticks: Ticks): number => Math.round(toMm(ticks) * 1e4) / 1e4;

/** A takeoff as data. Lengths in millimeters, money in minor units. */
export function takeoffAsJson(found: Takeoff, job: Job) {
  return {
    proven: found.proven,
    stock: found.plans.map((plan) => ({
      bought: plan.bought.name,
      wanted: plan.demands.map(({ stock, count, temporary }) => ({
        stock: stock.name,
        pieces: count,
        temporary: temporary === true,
      })),
      pieces: plan.demands.reduce((sum, { count }) => sum + count, 0),
      plannedFor: plan.aim,
      proven: plan.proven,
      cost: plan.cost?.minor ?? null,
      bound: plan.bound?.minor ?? null,
      settings: plan.settings,
      settingsBound: plan.settingsBound ?? null,
      waste: plan.waste,
      none: plan.none?.kind ?? null,
      buy: [...plan.buy].map(([length, count]) => ({ length: mm(length), count })),
      keptFrom: mm(plan.keptFrom),
      boards: plan.boards.map((board) => boardAsJson(board, plan.keptFrom)),
    })),
    items: found.items,
    price: found.price
      ? {
          ...found.price,
          lines: found.price.lines.map((line) =>
            line.group === 'boards' ? { ...line, unit: `${mm(Number(line.unit))} mm` } : line,
          ),
        }
      : null,
    currency: found.price?.currency ?? job.currency ?? null,
  };
}

/** A board with what it is crosscut into, and the strips that parts are ripped into. */
function boardAsJson({ stock, length, width, onHand, offcut, parts }: PlannedBoard, keptFrom: Ticks) {
  return {
    stock,
    length: mm(length),
    width: mm(width),
    onHand: onHand !== undefined,
    ...(onHand?.usable ? { usableOf: mm(onHand.length) } : {}),
    offcut: mm(offcut),
    keep: offcut >= keptFrom,
    parts: parts.map((part) => ({
      length: mm(part.length),
      at: mm(part.at),
      ripped: part.ripped,
      strips: part.strips.map((strip) => ({
        width: mm(strip.width),
        offcut: mm(strip.offcut),
        pieces: strip.pieces.map(({ piece, length: sawn, at }) => ({
          key: piece.key,
          label: piece.label,
          length: mm(sawn),
          at: mm(at),
        })),
      })),
    })),
  };
}
