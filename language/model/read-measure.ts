import type * as ast from '../grammar/index.ts';
import type { Measure } from '../units/index.ts';
import { COARSEST_STEP } from './bounds.ts';
import { DEFAULT_MEASURES, isMetric } from './defaults.ts';
import type { Sourced } from './job.ts';
import { parsed, readLength } from './read-length.ts';
import { type Node, originOf, type Reader } from './reader.ts';
import { readWord, UNIT_WORDS } from './words.ts';

/**
 * The measure a job is shown and marked in: stated, else metric when all lengths of the file are, else
 * feet. A step that is not stated or cannot be is the usual one of its unit.
 */
export function readMeasure(
  reader: Reader,
  statement: ast.MeasureStatement | undefined,
  block: Node,
): Sourced<Measure> {
  const at = statement && { node: statement, property: 'unit' };
  const unit = at && readWord(reader, at.node.unit, UNIT_WORDS, at, 'measure');
  if (!statement || !unit) return measureOfLengths(reader, block);
  const usual = isMetric({ unit, step: 1 }) ? DEFAULT_MEASURES.metric : DEFAULT_MEASURES.imperial;
  const step = readLength(reader, statement.step, { what: 'measure', most: COARSEST_STEP });
  return { value: { unit, step: step?.value ?? usual.step }, origin: originOf(reader, statement) };
}

function measureOfLengths(reader: Reader, block: Node): Sourced<Measure> {
  const systems = new Set<string>();
  for (const text of lengthTexts(reader.root)) {
    const length = parsed(reader, text);
    if (length.ok) systems.add(length.system);
    if (systems.has('imperial')) break;
  }
  const metric = systems.has('metric') && !systems.has('imperial');
  return {
    value: metric ? DEFAULT_MEASURES.metric : DEFAULT_MEASURES.imperial,
    origin: originOf(reader, block, undefined, metric ? 'derived' : 'default'),
  };
}

/** Every length written in a tree. */
function* lengthTexts(node: Node): Generator<string> {
  if (node.$type === 'Length' || node.$type === 'ParameterValue') {
    const { text } = node as ast.Length | ast.ParameterValue;
    if (text !== undefined) yield text;
    return;
  }
  for (const [property, value] of Object.entries(node)) {
    if (property.startsWith('$') || typeof value !== 'object' || value === null) continue;
    for (const child of Array.isArray(value) ? value : [value]) {
      if (typeof child === 'object' && child !== null && '$type' in child) yield* lengthTexts(child);
    }
  }
}
