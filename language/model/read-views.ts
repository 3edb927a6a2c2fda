import type * as ast from '../grammar/index.ts';
import { inches, mm } from '../units/index.ts';
import { isMetric } from './defaults.ts';
import type { HideDemand, Job, Place, Sourced, Spot, Viewer } from './job.ts';
import { pickStatements, tellMissing } from './pick-statements.ts';
import { isOrdered, readLength } from './read-length.ts';
import { assumed, follow, originOf, type Reader, tell } from './reader.ts';

/** Eye of one who stands (common practice: 60 to 66 in, 1.5 to 1.65 m). */
const STANDING = { imperial: inches(64), metric: mm(1600) };

/** Who looks, what is to be hidden, and how much of it; what cannot be read is left out. */
export function readViews(
  reader: Reader,
  later: ReadonlySet<ast.Element>,
): Pick<Job, 'viewers' | 'places' | 'hides'> {
  const viewers = new Map<ast.Viewer, Viewer>();
  const places = new Map<ast.Place, Place>();
  const hides: HideDemand[] = [];
  const elements = (reader.root.elements ?? []).filter((element) => !later.has(element));
  for (const element of elements) {
    if (element.$type === 'Viewer') {
      const viewer = readViewer(reader, element);
      if (viewer) viewers.set(element, viewer);
    } else if (element.$type === 'Place') {
      const place = readPlace(reader, element);
      if (place) places.set(element, place);
    }
  }
  for (const element of elements) {
    if (element.$type !== 'Hide') continue;
    const [place, viewer] = [follow(element.place), follow(element.viewer)];
    const demand = readShare(reader, element);
    const [hidden, from] = [place && places.get(place), viewer && viewers.get(viewer)];
    if (hidden && from && demand)
      hides.push({ place: hidden, viewer: from, share: demand, origin: originOf(reader, element) });
  }
  return { viewers: [...viewers.values()], places: [...places.values()], hides };
}

function readViewer(reader: Reader, node: ast.Viewer): Viewer | undefined {
  if (!node.name?.trim()) return undefined;
  const pick = pickStatements(reader, 'viewer', node.statements);
  const at = readSpot(reader, pick('AtSpot')?.spot);
  if (!pick('AtSpot')) tellMissing(reader, node, 'at');
  const to = readSpot(reader, pick('ToSpot')?.spot);
  const eye = pick('EyeStatement');
  const height = eye
    ? readLength(reader, eye.value, { what: 'eye' })
    : assumed(reader, node, isMetric(reader.measure) ? STANDING.metric : STANDING.imperial);
  const floor = readFloor(reader, pick('FloorStatement'));
  if (!at || !height || (pick('ToSpot') && !to)) return undefined;
  return {
    name: node.name,
    origin: originOf(reader, node),
    at,
    ...(to ? { to } : {}),
    eye: height,
    ...(floor ? { floor } : {}),
  };
}

function readPlace(reader: Reader, node: ast.Place): Place | undefined {
  if (!node.name?.trim()) return undefined;
  const pick = pickStatements(reader, 'place', node.statements);
  const [spot, size, heights] = [pick('AtSpot'), pick('WidthStatement'), pick('HeightsStatement')];
  if (!spot) tellMissing(reader, node, 'at');
  if (!size) tellMissing(reader, node, 'width');
  if (!heights) tellMissing(reader, node, 'from');
  const at = readSpot(reader, spot?.spot);
  const width = readLength(reader, size?.value, { what: 'width' });
  const low = readLength(reader, heights?.low, { what: 'from', zero: true });
  const high = readLength(reader, heights?.high, { what: 'to' });
  const floor = readFloor(reader, pick('FloorStatement'));
  if (!at || !width || !heights || !low || !high || !isOrdered(reader, low, high, 'from')) return undefined;
  return {
    name: node.name,
    origin: originOf(reader, node),
    at,
    width,
    heights: { value: { low: low.value, high: high.value }, origin: originOf(reader, heights) },
    ...(floor ? { floor } : {}),
  };
}

function readSpot(reader: Reader, node: ast.Spot | undefined): Spot | undefined {
  if (!node) return undefined;
  const along = readLength(reader, node.along, { what: 'at', zero: true });
  const off = readLength(reader, node.off, { what: node.front ? 'in front' : 'behind', zero: true });
  const run = follow(node.run)?.name;
  if (!along || !off || run === undefined) return undefined;
  return {
    run,
    along: node.before ? 0 - along.value : along.value,
    off: node.front ? 0 - off.value : off.value,
    origin: originOf(reader, node),
  };
}

function readFloor(reader: Reader, node: ast.FloorStatement | undefined): Sourced<number> | undefined {
  const value = readLength(reader, node?.value, { what: 'floor', zero: true });
  if (!node || !value) return undefined;
  return { value: node.direction === 'down' ? 0 - value.value : value.value, origin: originOf(reader, node) };
}

/** A percentage as a share from 0 to 1. */
function readShare(reader: Reader, node: ast.Hide): Sourced<number> | undefined {
  const { percent } = node;
  if (percent === undefined) return undefined;
  const value = Number(percent) / 100;
  if (value >= 0 && value <= 1) return { value, origin: originOf(reader, node) };
  const args = { what: 'hide', size: `${percent} %`, reason: 'over-100' as const, limit: '100 %' };
  tell(reader, 'impossible-size', originOf(reader, node, 'percent'), args);
  return undefined;
}
