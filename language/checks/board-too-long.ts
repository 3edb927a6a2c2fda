import { boxOf } from '../figures/index.ts';
import type { Piece, RunLayout } from '../layout/index.ts';
import { type Stock, soldLengths, stocksOf } from '../model/index.ts';
import { floorToStep, formatLength, spellLength, type Ticks } from '../units/index.ts';
import { GEOMETRY, type RunCheck } from './define.ts';
import { isDug } from './dug.ts';
import type { Finding, Fix } from './finding.ts';
import { replaceAt } from './written-change.ts';

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
        ? a.dug
          ? `That is with ${a.embed} below ground. State longer lengths, a lower height, or another \`embed\`.`
          : `That is with ${a.embed} below the surface of the deck. State longer lengths, or a lower height.`
        : a.role === 'prop'
          ? "State longer lengths, or set the braces lower or their feet nearer: `4' up, 4' out`."
          : a.joints !== ''
            ? `Slats meet where \`${a.joints}\` says; \`joints in line\` divides them by the lengths there are.`
            : a.clear !== ''
              ? `Slats are joined over posts only: posts at most ${a.clear} clear would do. Else state longer lengths, or choose other stock.`
              : a.stands === 1
                ? 'State longer lengths, a lower height, or other stock.'
                : 'Set posts closer, state longer lengths, or choose other stock.'),
  },
  check: (run, job) => {
    const findings: Finding[] = [];
    for (const [stock, longest] of longestStock(run)) {
      const long = [...run.pieces, ...run.temporary.pieces].filter(
        (piece) => piece.cut.stock === stock.name && piece.cut.longPoint > longest,
      );
      const worst = long.reduce<Piece | undefined>(
        (held, piece) => (!held || piece.cut.longPoint > held.cut.longPoint ? piece : held),
        undefined,
      );
      if (!worst) continue;
      const clear = overSeveral(worst) ? 0 : clearFor(run, worst, longest);
      const rule = ruleText(run);
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
          joints: overSeveral(worst) ? rule : '',
          clear: clear > 0 ? formatLength(clear, job.measure.value) : '',
          dug: isDug(run.spec) ? 1 : 0,
          stands: stands(worst) ? 1 : 0,
        },
        fixes: overSeveral(worst) ? wayOfJoints(run) : wayOfPosts(run, clear),
        pieces: long.map((piece) => piece.key),
        related: soldLengths(stock)
          .slice(-1)
          .map(({ origin: at }) => ({ at, note: 'the longest length stands here' })),
      });
    }
    return findings;
  },
};

/** Stock used in the run with the longest length it is sold in; stock without stated lengths is left out. */
export function longestStock(run: RunLayout): ReadonlyMap<Stock, Ticks> {
  return new Map(
    [...stocksOf(run.spec).values()].flatMap((stock) => {
      const longest = soldLengths(stock).at(-1);
      return longest ? [[stock, longest.value] as const] : [];
    }),
  );
}

/** A slat that goes on over a post. */
const overSeveral = ({ until }: Piece): boolean => until !== undefined;

/** A piece that is longer upward than along the run. */
function stands(piece: Piece): boolean {
  const { low, high } = boxOf(piece);
  return high[2] - low[2] > high[0] - low[0];
}

function ruleText({ spec }: RunLayout): string {
  const rule = spec.slatJoints?.rule?.value;
  if (rule?.kind !== 'every') return 'joints';
  return rule.posts === 1 ? 'joints at every post' : `joints at every ${rule.posts} posts`;
}

/** Greatest clear width at which a slat on posts would come out of the longest board; 0 for what no spacing makes shorter. */
function clearFor(run: RunLayout, { role, side, bay, gate, cut }: Piece, longest: Ticks): Ticks {
  const own = run.bays.find(({ number }) => number === bay);
  if (role !== 'slat' || side === 'middle' || gate !== undefined || !own) return 0;
  if (run.spec.infill.flip.upright) return 0;
  return floorToStep(longest - (cut.longPoint - own.clear), run.spec.measure.step);
}

function wayOfPosts({ spec }: RunLayout, clear: Ticks): readonly Fix[] {
  const { value, origin } = spec.spacing;
  if (clear <= 0 || origin.why !== 'stated' || value.kind !== 'at-most') return [];
  const text = `at most ${spellLength(clear, spec.measure)} clear`;
  return [
    {
      title: `Set posts ${text}`,
      changes: [replaceAt(origin, text)],
    },
  ];
}

function wayOfJoints({ spec }: RunLayout): readonly Fix[] {
  const origin = spec.slatJoints?.rule?.origin;
  if (!origin) return [];
  const text = 'joints in line';
  return [
    {
      title: `Write \`${text}\``,
      changes: [replaceAt(origin, text)],
    },
  ];
}
