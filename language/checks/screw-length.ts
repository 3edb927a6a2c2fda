import { screwedTo } from '../figures/index.ts';
import type { Piece, RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import { formatLength, inches, mm, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';

/** Screws that go less than twice the slat's thickness into what holds it. */
export const screwShort: LimitedRunCheck = {
  kind: {
    code: 'screw-short',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('two thirds of a screw are in what holds the slat: twice its thickness'),
    threshold: {
      is: 'times',
      imperial: 2,
      metric: 2,
      says: 'how far a screw goes into what holds a slat, over the thickness of the slat',
    },
    message: (a) =>
      `Screws of ${a.screw} go ${a.into} into what holds a slat ${a.slat} thick; ${a.needed} or more holds well. Write \`screws ${a.write}\`.`,
  },
  check: (run, job) => {
    const times = thresholdOf(job, screwShort.kind);
    return worstOf(
      run,
      job,
      ({ screw, slat }) => times * slat.cut.thickness - (screw - slat.cut.thickness),
    ).map(({ screw, slat, origin }) => {
      const { thickness } = slat.cut;
      const length = (ticks: Ticks) => formatLength(ticks, job.measure.value);
      const args = {
        screw: length(screw),
        into: length(Math.max(0, screw - thickness)),
        slat: length(thickness),
        needed: length(Math.round(times * thickness)),
        write: length(Math.round((times + 1) * thickness)),
      };
      return { code: 'screw-short', at: origin, args, pieces: [slat.key] };
    });
  },
};

/** Screws whose points come within 1/8" (3 mm) of the far face of what holds the slat. */
export const screwThrough: LimitedRunCheck = {
  kind: {
    code: 'screw-through',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('the point of a screw stays 1/8" (3 mm) inside the wood'),
    threshold: {
      is: 'length',
      imperial: inches(1 / 8),
      metric: mm(3),
      says: 'least wood left beyond the point of a screw',
    },
    message: (a) =>
      `Screws of ${a.screw} come ${a.out} through slat and ${a.holder} (${a.depth} together), where a point cuts hands. Write \`screws ${a.write}\` or shorter.`,
  },
  check: (run, job) => {
    const least = thresholdOf(job, screwThrough.kind);
    return worstOf(run, job, ({ screw, depth }) => screw + least - depth).map(
      ({ screw, slat, holder, depth, origin }) => {
        const length = (ticks: Ticks) => formatLength(ticks, job.measure.value);
        const args = {
          screw: length(screw),
          out: screw > depth ? 'out' : 'close to coming',
          holder: holder.role,
          depth: length(depth),
          write: length(Math.max(0, depth - least)),
        };
        return { code: 'screw-through', at: origin, args, pieces: [slat.key] };
      },
    );
  },
};

interface Joint {
  readonly slat: Piece;
  readonly holder: Piece;
  readonly screw: Ticks;
  /** Through the screen: of the slat and what holds it together. */
  readonly depth: Ticks;
}

/** The crossing of a slat and what it lies on that is most over a measure, where any is. */
function worstOf(
  run: RunLayout,
  { screws }: Job,
  over: (joint: Joint) => number,
): readonly (Joint & { readonly origin: Finding['at'] })[] {
  if (!screws) return [];
  const byKey = new Map([...run.pieces, ...run.borrowed].map((piece) => [piece.key, piece]));
  let [worst, most]: [Joint | undefined, number] = [undefined, 0];
  for (const slat of run.pieces) {
    if (slat.role !== 'slat') continue;
    for (const holder of screwedTo(run, slat, byKey)) {
      // Between cleats a screw goes through a cleat into the slat, or beside it: no rule holds there.
      if (holder.role === 'cleat') continue;
      const joint = { slat, holder, screw: screws.value, depth: slat.cut.thickness + throughOf(holder) };
      if (over(joint) > most) [worst, most] = [joint, over(joint)];
    }
  }
  return worst ? [{ ...worst, origin: screws.origin }] : [];
}

function throughOf({ solid }: Piece): Ticks {
  const y = solid.vertices.map((vertex) => vertex[1]);
  return Math.round(Math.max(...y) - Math.min(...y));
}
