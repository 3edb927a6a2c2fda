import type * as ast from '../grammar/index.ts';
import type { Approval, DigTicket, Job, SightTriangle } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { type Node, originOf, type Reader, tell } from './reader.ts';

/** Corners of roads to be looked across, and the notice of digging. */
export function readNotices(
  reader: Reader,
  node: ast.Job | undefined,
  pick: Picked<ast.JobStatement>,
): Pick<Job, 'sightTriangles' | 'ticket' | 'paperwork'> {
  const ticket = readTicket(reader, pick('TicketStatement'));
  return {
    sightTriangles: (node?.statements ?? []).flatMap((statement) =>
      statement.$type === 'SightTriangle' ? (readTriangle(reader, statement) ?? []) : [],
    ),
    ...(ticket ? { ticket } : {}),
    paperwork: readPaperwork(reader, node, pick),
  };
}

function readPaperwork(
  reader: Reader,
  node: ast.Job | undefined,
  pick: Picked<ast.JobStatement>,
): Job['paperwork'] {
  const statement = pick('OrderedStatement');
  const ordered = statement && readDay(reader, statement, 'day');
  const approvals = (node?.statements ?? []).flatMap((one): readonly Approval[] => {
    if (one.$type !== 'AgreedStatement') return [];
    const day = readDay(reader, one, 'day');
    if (day === undefined) return [];
    return [{ day, ...(one.by === undefined ? {} : { by: one.by }), origin: originOf(reader, one) }];
  });
  return {
    ...(statement && ordered !== undefined
      ? { ordered: { value: ordered, origin: originOf(reader, statement) } }
      : {}),
    approvals,
  };
}

function readTriangle(reader: Reader, statement: ast.SightTriangle): SightTriangle | undefined {
  const at = (node: ast.Length | undefined, what: string, zero: boolean) =>
    readLength(reader, node, { what, zero })?.value;
  const east = at(statement.east, 'east', true);
  const north = at(statement.north, 'north', true);
  const first = at(statement.first, 'leg', false);
  const second = at(statement.second, 'leg', false);
  const bearings = [statement.firstBearing, statement.secondBearing].map((angle) => Number(angle?.degrees));
  if (east === undefined || north === undefined || !first || !second) return undefined;
  if (!bearings.every(Number.isFinite)) return undefined;
  const end = (leg: number, bearing: number): readonly [number, number] => {
    const angle = (bearing * Math.PI) / 180;
    return [east + leg * Math.sin(angle), north + leg * Math.cos(angle)];
  };
  const [a = 0, b = 0] = bearings;
  return {
    corners: [[east, north], end(first, a), end(second, b)],
    origin: originOf(reader, statement),
  };
}

function readTicket(reader: Reader, statement: ast.TicketStatement | undefined): DigTicket | undefined {
  if (!statement) return undefined;
  const called = readDay(reader, statement, 'called');
  const digging = readDay(reader, statement, 'digging');
  const until = readDay(reader, statement, 'until');
  if (statement.number === undefined || called === undefined || digging === undefined) return undefined;
  if (statement.until !== undefined && until === undefined) return undefined;
  const origin = originOf(reader, statement);
  return { number: statement.number, called, digging, ...(until === undefined ? {} : { until }), origin };
}

/** A day as a count from 1970-01-01; told when the calendar has none such. */
function readDay<P extends 'called' | 'digging' | 'until' | 'day'>(
  reader: Reader,
  statement: { readonly [Property in P]?: string } & Node,
  property: P,
): number | undefined {
  const text = statement[property] as string | undefined;
  if (text === undefined) return undefined;
  const day = /^\d{4}-\d\d-\d\d$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  if (Number.isFinite(day) && new Date(day).toISOString().startsWith(text)) return day / 86_400_000;
  const args = { word: text, place: 'day', suggestion: '', known: 'days such as 2026-05-01' };
  tell(reader, 'unknown-word', originOf(reader, statement, property), args);
  return undefined;
}
