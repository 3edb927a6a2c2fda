import { bridgeKey, type RunLayout } from '../../language/layout/index.ts';
import { formatDegrees, formatLength, type Ticks } from '../../language/units/index.ts';

/** What closes the offset of a run from the one before it, and what the saw is set to. */
export function bridgeLines({ spec, joints: { bridge }, pieces }: RunLayout): string[] {
  const kind = spec.placement?.kind === 'on' ? spec.placement.bridge?.kind : undefined;
  if (!kind || !bridge) return ['nothing closes the offset'];
  const own = pieces.filter(({ key }) => key.startsWith(`${bridgeKey(spec.name, kind)}/`));
  const closing = own.filter(({ role }) => role !== 'cleat');
  const [first] = closing;
  if (!first) return [`a ${kind} cannot close the offset as written`];
  const size = (ticks: Ticks) => formatLength(ticks, spec.measure);
  const { longPoint, shortPoint, width, ends } = first.cut;
  const piece = kind === 'filler' ? 'board' : 'slat';
  const many = closing.length === 1 ? `one ${piece}` : `${closing.length} ${piece}s`;
  if (kind === 'filler')
    return [`closed by a filler of ${many}, ${size(width)} wide and ${size(longPoint)} long`];
  if (longPoint === shortPoint) return [`closed by a return of ${many}, ${size(longPoint)} long`];
  const edge = own.find(({ cut }) => cut.edge !== undefined)?.cut.edge ?? 0;
  return [
    `closed by a panel of ${many}, ${size(longPoint)} from tip to tip and ${size(shortPoint)} at their shortest, ends cut at ${formatDegrees(Math.abs(ends[0].bevel))}`,
    `its cleats ripped along one edge at ${formatDegrees(edge)}`,
  ];
}
