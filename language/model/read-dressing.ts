import type * as ast from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import { DEFAULT_CAP } from './defaults.ts';
import { facesOf } from './faces.ts';
import type { CapStock, FlatStock, InfillSpec, RunSpec, Sourced, StiffenerSpec } from './job.ts';
import { type Picked, pickStatements, tellMissing } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { readMaterial } from './read-material.ts';
import { assumed, follow, originOf, type Reader, tell } from './reader.ts';
import { useFlat } from './use-stock.ts';

type Dressing = Pick<RunSpec, 'stiffeners' | 'battens' | 'caps' | 'collars'>;

/** What stands at the slats and posts of a run besides what carries it; what cannot be read is told and left out. */
export function readDressing(reader: Reader, pick: Picked<ast.RunStatement>, infill: InfillSpec): Dressing {
  const stiffeners = readStiffeners(reader, pick('StiffenersStatement'), infill);
  const battens = readBattens(reader, pick('BattensStatement'), infill);
  const caps = readCaps(reader, pick('CapsStatement'));
  const collars = pick('CollarsStatement');
  const stock =
    collars && useFlat(reader, collars.stock, { node: collars, property: 'stock', place: 'collars' });
  return {
    ...(stiffeners ? { stiffeners } : {}),
    ...(battens ? { battens } : {}),
    ...(caps ? { caps } : {}),
    ...(collars && stock
      ? { collars: { stock, ends: [...new Set(collars.ends)], origin: originOf(reader, collars) } }
      : {}),
  };
}

/** On the face stated; else where least is seen of them: behind slats that lie on a face, else on the back. */
function readStiffeners(
  reader: Reader,
  statement: ast.StiffenersStatement | undefined,
  { mounting }: InfillSpec,
): StiffenerSpec | undefined {
  if (!statement) return undefined;
  const at = { node: statement, property: 'stock', place: 'stiffeners' };
  const stock = useFlat(reader, statement.stock, at);
  const apart = readLength(reader, statement.apart, { what: 'stiffeners' });
  if (!stock || (statement.apart && !apart)) return undefined;
  const lie = facesOf(mounting.value);
  const usual = lie.length === 2 ? lie : [lie[0] === 'back' ? ('front' as const) : ('back' as const)];
  const faces = statement.both ? (['front', 'back'] as const) : statement.face ? [statement.face] : usual;
  return { stock, ...(apart ? { apart } : {}), faces, origin: originOf(reader, statement) };
}

/** Only where level slats lie on the posts is there something for a batten to cover. */
function readBattens(
  reader: Reader,
  statement: ast.BattensStatement | undefined,
  { mounting, flip }: InfillSpec,
): Sourced<FlatStock> | undefined {
  if (!statement) return undefined;
  if (flip.upright || facesOf(mounting.value).length === 0) {
    const block = flip.upright ? 'run with upright slats' : 'run with slats between posts';
    tell(reader, 'wrong-statement', originOf(reader, statement), { what: 'battens', block });
    return undefined;
  }
  return useFlat(reader, statement.stock, { node: statement, property: 'stock', place: 'battens' });
}

function readCaps(reader: Reader, statement: ast.CapsStatement | undefined): Sourced<CapStock> | undefined {
  const node = follow(statement?.cap);
  const cap = node && readCap(reader, node);
  return statement && cap ? { value: cap, origin: originOf(reader, statement) } : undefined;
}

/** A cap as stated; undefined when its thickness is missing or a size cannot be. */
function readCap(reader: Reader, node: ast.Cap): CapStock | undefined {
  if (!node.name?.trim()) return undefined;
  const pick = pickStatements(reader, 'cap', node.statements);
  const shaped = pick('CapShape');
  const shape = shaped?.shape
    ? { value: shaped.shape, origin: originOf(reader, shaped) }
    : assumed(reader, node, DEFAULT_CAP);
  const thick = pick('ThicknessStatement');
  const thickness = thick
    ? readLength(reader, thick.value, { what: 'thickness' })
    : tellMissing(reader, node, 'thickness');
  const stated = (statement: { readonly value: ast.Length } | undefined, what: string, zero = false) =>
    statement && readLength(reader, statement.value, { what, zero });
  const overhang = stated(pick('Overhang'), 'overhang', true) ?? assumed(reader, node, 0);
  const edge = stated(pick('CapEdge'), 'edge', true);
  const along = stated(pick('AlongStatement'), 'along');
  const through = stated(pick('ThroughStatement'), 'through');
  if (!thickness) return undefined;
  if (edge && edge.value >= thickness.value) {
    const [size, limit] = [edge.value, thickness.value].map((ticks) => formatLength(ticks, reader.measure));
    const args = { what: 'edge', size: size ?? '', reason: 'not-thinner' as const, limit: limit ?? '' };
    tell(reader, 'impossible-size', edge.origin, args);
    return undefined;
  }
  const material = follow(pick('MadeOfStatement')?.material);
  const made = material && readMaterial(reader, material);
  return {
    name: node.name,
    origin: originOf(reader, node),
    ...(made ? { material: made } : {}),
    shape,
    thickness,
    edge: edge ?? assumed(reader, node, Math.floor(thickness.value / 2)),
    overhang,
    ...(along ? { along } : {}),
    ...(through ? { through } : {}),
  };
}

/** Every cap of the file, so that what is wrong with one that no run uses is told too. */
export function tellCaps(reader: Reader): void {
  for (const element of reader.root.elements ?? []) if (element.$type === 'Cap') readCap(reader, element);
}
