import type * as ast from '../grammar/index.ts';
import {
  type Exposure,
  SOIL_WORDS,
  type SoilClass,
  WIND_RULES,
  type WindEdition,
} from '../standards/index.ts';
import type { Site, Sourced, WindSpec } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readAmount } from './read-amount.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';
import { readWord } from './words.ts';

const EXPOSURES: readonly Exposure[] = ['B', 'C', 'D'];

/** What the job says of its place. */
export function readSite(reader: Reader, pick: Picked<ast.JobStatement>): Site {
  const wind = readWind(reader, pick('WindStatement'));
  const fitted = readFitted(reader, pick('FittedStatement'));
  return {
    ...(wind ? { wind } : {}),
    ...readGroundKind(reader, pick('SoilStatement'), pick('FrostStatement')),
    ...(fitted ? { fitted } : {}),
  };
}

/** Soil and frost, of the job or of a run. */
export function readGroundKind(
  reader: Reader,
  soilStatement: ast.SoilStatement | undefined,
  frostStatement: ast.FrostStatement | undefined,
): Pick<Site, 'soil' | 'frost'> {
  const soil = soilStatement && readSoil(reader, soilStatement);
  const frost = readLength(reader, frostStatement?.depth, { what: 'frost', zero: true });
  return { ...(soil ? { soil } : {}), ...(frost ? { frost } : {}) };
}

function readWind(reader: Reader, node: ast.WindStatement | undefined): WindSpec | undefined {
  if (!node) return undefined;
  const origin = originOf(reader, node);
  if (node.pressure !== undefined) {
    const rule = { what: 'wind pressure', unit: 'psf', least: 1, most: 200 } as const;
    const pressure = readAmount(reader, node, 'pressure', node.pressure, rule);
    return pressure && { kind: 'pressure', pressure: pressure.value, origin };
  }
  const rule = { what: 'wind speed', unit: 'mph', least: 30, most: 250 } as const;
  const speed = readAmount(reader, node, 'speed', node.speed, rule);
  const at = { node, property: 'exposure' };
  const exposure = readWord(reader, node.exposure, EXPOSURES, at, 'exposure');
  const edition = readEdition(reader, node);
  if (!speed || !exposure || !edition) return undefined;
  return { kind: 'speed', speed: speed.value, exposure, edition, origin };
}

function readEdition(reader: Reader, node: ast.WindStatement): WindEdition | undefined {
  const known = Object.keys(WIND_RULES) as WindEdition[];
  const word = node.edition?.replace(/^ASCE[ \t]*/, 'ASCE ');
  return readWord(reader, word, known, { node, property: 'edition' }, 'edition of the wind standard');
}

function readSoil(reader: Reader, node: ast.SoilStatement): Sourced<SoilClass> | undefined {
  const origin = originOf(reader, node);
  if (node.class !== undefined) {
    const classes = ['1', '2', '3', '4', '5'] as const;
    const word = readWord(reader, node.class, classes, { node, property: 'class' }, 'class of soil');
    return word && { value: Number(word) as SoilClass, origin };
  }
  const word = readWord(reader, node.word, Object.keys(SOIL_WORDS), { node, property: 'word' }, 'soil');
  const value = word === undefined ? undefined : SOIL_WORDS[word];
  return value && { value, origin };
}

function readFitted(reader: Reader, node: ast.FittedStatement | undefined): Site['fitted'] {
  let moisture: Sourced<number> | undefined;
  let temperature: Sourced<number> | undefined;
  for (const condition of node?.conditions ?? []) {
    if (condition.moisture !== undefined) {
      const value = Number(condition.moisture);
      const origin = originOf(reader, condition, 'moisture');
      if (value <= 100) moisture ??= { value, origin };
      else {
        const size = `${condition.moisture} %`;
        tell(reader, 'impossible-size', origin, {
          what: 'moisture',
          size,
          reason: 'over-100',
          limit: '100 %',
        });
      }
    }
    const rule = { what: 'temperature', unit: '°F', least: -60, most: 200 } as const;
    temperature ??= readAmount(reader, condition, 'temperature', condition.temperature, rule);
  }
  if (!moisture && !temperature) return undefined;
  return { ...(moisture ? { moisture } : {}), ...(temperature ? { temperature } : {}) };
}
