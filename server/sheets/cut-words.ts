import type { PlannedBoard, PlannedPart } from '../../language/takeoff/index.ts';
import type { Ticks } from '../../language/units/index.ts';

/** Whole pieces by length, then parts that are ripped: `2 of 4' 5"`, `3' 2" ripped into 3 x 1-1/2"`. */
export function cutWords({ parts }: PlannedBoard, length: (ticks: Ticks) => string): readonly string[] {
  const counts = new Map<Ticks, number>();
  for (const part of parts) if (!part.ripped) counts.set(part.length, (counts.get(part.length) ?? 0) + 1);
  const ripped = new Map<string, number>();
  for (const part of parts) {
    if (!part.ripped) continue;
    const text = rippedText(part, length);
    ripped.set(text, (ripped.get(text) ?? 0) + 1);
  }
  return [
    ...[...counts].map(([each, count]) => `${count} of ${length(each)}`),
    ...[...ripped].map(([text, count]) => (count > 1 ? `${count} of ${text}` : text)),
  ];
}

function rippedText({ length: along, strips }: PlannedPart, length: (ticks: Ticks) => string): string {
  const alike = new Map<string, number>();
  for (const { width, pieces } of strips) {
    const counts = new Map<Ticks, number>();
    for (const piece of pieces) counts.set(piece.length, (counts.get(piece.length) ?? 0) + 1);
    const held = [...counts].map(([each, count]) => `${count} of ${length(each)}`).join(', ');
    const isWhole = pieces.length === 1 && pieces[0]?.length === along;
    const text = `${length(width)}${isWhole ? '' : ` (${held})`}`;
    alike.set(text, (alike.get(text) ?? 0) + 1);
  }
  return `${length(along)} ripped into ${[...alike].map(([text, count]) => `${count} x ${text}`).join(' and ')}`;
}
