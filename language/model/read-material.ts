import type * as ast from '../grammar/index.ts';
import { SPECIES, speciesOf } from '../standards/index.ts';
import { DEFAULT_MATERIAL } from './defaults.ts';
import type { Material } from './job.ts';
import { pickStatements } from './pick-statements.ts';
import { readAmount } from './read-amount.ts';
import { assumed, originOf, type Reader } from './reader.ts';
import { MATERIAL_WORDS, readWord } from './words.ts';

/** A material; wood when it does not say, or says a word that is none. */
export function readMaterial(reader: Reader, node: ast.Material): Material | undefined {
  if (!node.name?.trim()) return undefined;
  const known = reader.materials.get(node);
  if (known) return known;
  const pick = pickStatements(reader, 'material', node.statements);
  const statement = pick('KindStatement');
  const at = statement && { node: statement, property: 'kind' };
  const word = at && readWord(reader, at.node.kind, MATERIAL_WORDS, at, 'kind');
  const kind =
    at && word
      ? { value: word, origin: originOf(reader, at.node, at.property) }
      : assumed(reader, node, DEFAULT_MATERIAL);
  const species = readSpecies(reader, pick('SpeciesStatement'));
  const treated = pick('TreatedStatement');
  const grade = readGrade(reader, pick('GradeStatement'));
  const values = {
    bending: readOwn(reader, pick('BendingStatement'), {
      what: 'bending',
      unit: 'psi',
      least: 10,
      most: 200_000,
    }),
    stiffness: readOwn(reader, pick('StiffnessStatement'), {
      what: 'stiffness',
      unit: 'psi',
      least: 10_000,
      most: 40_000_000,
    }),
    density: readOwn(reader, pick('DensityStatement'), {
      what: 'density',
      unit: 'lb/ft3',
      least: 5,
      most: 700,
    }),
  };
  const material: Material = {
    name: node.name,
    kind,
    ...(species && kind.value === 'wood' ? { species } : {}),
    ...(grade && kind.value === 'wood' ? { grade } : {}),
    ...(values.bending ? { bending: values.bending } : {}),
    ...(values.stiffness ? { stiffness: values.stiffness } : {}),
    ...(values.density ? { density: values.density } : {}),
    ...(treated ? { treated: { value: true as const, origin: originOf(reader, treated) } } : {}),
    origin: originOf(reader, node),
  };
  reader.materials.set(node, material);
  return material;
}

function readSpecies(reader: Reader, node: ast.SpeciesStatement | undefined): Material['species'] {
  if (!node) return undefined;
  const words = SPECIES.map(({ word }) => word);
  const word = readWord(reader, node.word, words, { node, property: 'word' }, 'species');
  const value = word === undefined ? undefined : speciesOf(word);
  return value && { value, origin: originOf(reader, node) };
}

function readGrade(reader: Reader, node: ast.GradeStatement | undefined): Material['grade'] {
  const at = node && { node, property: 'grade' };
  const word = at && readWord(reader, node.grade, ['1', '2'] as const, at, 'grade');
  return node && word ? { value: `No.${word}`, origin: originOf(reader, node) } : undefined;
}

function readOwn(
  reader: Reader,
  node: ast.BendingStatement | ast.StiffnessStatement | ast.DensityStatement | undefined,
  rule: Parameters<typeof readAmount>[4],
) {
  return node && readAmount(reader, node, 'value', node.value, rule);
}
