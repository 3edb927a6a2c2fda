import type * as ast from '../grammar/index.ts';
import { DEFAULT_MATERIAL } from './defaults.ts';
import type { Material } from './job.ts';
import { pickStatements } from './pick-statements.ts';
import { assumed, originOf, type Reader } from './reader.ts';
import { MATERIAL_WORDS, readWord } from './words.ts';

/** A material; wood when it does not say, or says a word that is none. */
export function readMaterial(reader: Reader, node: ast.Material): Material | undefined {
  if (!node.name?.trim()) return undefined;
  const known = reader.materials.get(node);
  if (known) return known;
  const statement = pickStatements(reader, 'material', node.statements)('KindStatement');
  const at = statement && { node: statement, property: 'kind' };
  const word = at && readWord(reader, at.node.kind, MATERIAL_WORDS, at, 'kind');
  const kind =
    at && word
      ? { value: word, origin: originOf(reader, at.node, at.property) }
      : assumed(reader, node, DEFAULT_MATERIAL);
  const material: Material = { name: node.name, kind, origin: originOf(reader, node) };
  reader.materials.set(node, material);
  return material;
}
