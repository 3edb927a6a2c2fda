import type { Piece, RunLayout } from '../layout/index.ts';
import type { Origin, Stock } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { GEOMETRY, type RunCheck } from './define.ts';
import type { Finding } from './finding.ts';

/** A piece longer than the longest length its stock is sold in. */
export const boardTooLong: RunCheck = {
  kind: {
    code: 'board-too-long',
    severity: 'error',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `${a.piece} is ${a.length} long; ${a.stock} comes in ${a.longest} at most. ` +
      (a.role === 'post'
        ? `That is with ${a.embed} below ground. State longer lengths, a lower height, or another \`embed\`.`
        : 'Set posts closer, state longer lengths, or choose other stock.'),
  },
  check: (run, job) => {
    const findings: Finding[] = [];
    for (const [stock, longest] of longestStock(run)) {
      const long = run.pieces.filter(
        (piece) => piece.cut.stock === stock.name && piece.cut.longPoint > longest,
      );
      const worst = long.reduce<Piece | undefined>(
        (held, piece) => (!held || piece.cut.longPoint > held.cut.longPoint ? piece : held),
        undefined,
      );
      if (!worst) continue;
      findings.push({
        code: 'board-too-long',
        at: worst.from[0] ?? run.spec.origin,
        args: {
          piece: worst.label,
          length: formatLength(worst.cut.longPoint, job.measure.value),
          stock: stock.name,
          longest: formatLength(longest, job.measure.value),
          role: worst.role,
          embed: formatLength(run.embed.value, job.measure.value),
        },
        pieces: long.map((piece) => piece.key),
        related: lengthsOf(stock)
          .slice(-1)
          .map((at) => ({ at, note: 'the longest length stands here' })),
      });
    }
    return findings;
  },
};

/** Stock used in the run with the longest length it is sold in; stock without stated lengths is left out. */
export function longestStock(run: RunLayout): ReadonlyMap<Stock, Ticks> {
  const { spec } = run;
  const all: (Stock | undefined)[] = [
    spec.post.value,
    spec.rail?.value,
    spec.stiffeners?.stock.value,
    spec.battens?.value,
    spec.collars?.stock.value,
    ...spec.gates.flatMap((gate) => [
      gate.post.value,
      gate.latchPost?.value,
      gate.frame.value,
      gate.brace?.value,
    ]),
    ...[spec.infill, ...spec.gates.map((gate) => gate.infill)].flatMap((infill) => [
      infill.cleat?.value,
      ...infill.pattern.repeat.map((item) => item.value),
      ...infill.fit.remedies.map((r) => (r.value.kind === 'trim' ? r.value.board : undefined)),
    ]),
  ];
  const longest = new Map<string, [Stock, Ticks]>();
  for (const stock of all) {
    if (!stock) continue;
    const lengths = soldLengths(stock);
    if (lengths.length > 0) longest.set(stock.name, [stock, Math.max(...lengths)]);
  }
  return new Map(longest.values());
}

/** A rip is as long as the board it comes from. */
function soldLengths(stock: Stock): readonly Ticks[] {
  if (stock.lengths.length > 0) return stock.lengths.map((length) => length.value);
  return stock.kind === 'rip' && stock.parent ? soldLengths(stock.parent) : [];
}

function lengthsOf(stock: Stock): readonly Origin[] {
  if (stock.lengths.length > 0) return stock.lengths.map((length) => length.origin);
  return stock.kind === 'rip' && stock.parent ? lengthsOf(stock.parent) : [];
}
