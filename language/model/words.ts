import { nearNames } from '../grammar/index.ts';
import type { MaterialKind } from './job.ts';
import { type Node, originOf, type Reader, tell } from './reader.ts';

/** Words for units, and for what materials are, that people write for the language's own. */
const OTHER_WORDS: Readonly<Record<string, string>> = {
  in: 'inches',
  inch: 'inches',
  ft: 'feet',
  foot: 'feet',
  millimeter: 'mm',
  millimeters: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  centimeter: 'cm',
  centimeters: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  meter: 'm',
  meters: 'm',
  metre: 'm',
  metres: 'm',
  metric: 'mm',
  imperial: 'feet',
  timber: 'wood',
  lumber: 'wood',
  softwood: 'wood',
  hardwood: 'wood',
  wpc: 'composite',
  vinyl: 'pvc',
  plastic: 'pvc',
  aluminium: 'aluminum',
  metal: 'steel',
  iron: 'steel',
};

export const UNIT_WORDS = ['inches', 'feet', 'mm', 'cm', 'm'] as const;
export const MATERIAL_WORDS: readonly MaterialKind[] = ['wood', 'composite', 'pvc', 'aluminum', 'steel'];

/** A word of a small vocabulary; told with the nearest one when it is none of it. */
export function readWord<W extends string>(
  reader: Reader,
  word: string | undefined,
  known: readonly W[],
  at: { readonly node: Node; readonly property: string },
  place: string,
): W | undefined {
  if (word === undefined) return undefined;
  const found = known.find((each) => each === word);
  if (found) return found;
  const plain = word.toLowerCase();
  const meant = known.find((each) => each === (OTHER_WORDS[plain] ?? plain));
  const suggestion = meant ?? nearNames(word, known, 1)[0] ?? '';
  const origin = originOf(reader, at.node, at.property);
  tell(reader, 'unknown-word', origin, { word, place, suggestion, known: known.join(', ') });
  return undefined;
}
