import { highestInSwing, swingOf } from '../figures/index.ts';
import type { Leaf, RunLayout } from '../layout/index.ts';
import { highestGround } from '../model/index.ts';
import { ceilToStep, formatLength, inches, mm, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding, Fix } from './finding.ts';
import { appendTo, replaceAt } from './written-change.ts';

/** A leaf that opens over ground that comes up to it. */
export const leafScrapes: LimitedRunCheck = {
  kind: {
    code: 'leaf-scrapes',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('1" (25 mm) left under a leaf over the highest ground in its arc'),
    threshold: {
      is: 'length',
      imperial: inches(1),
      metric: mm(25),
      says: 'least clearance under a leaf anywhere in its arc',
    },
    message: (a) =>
      `Gate ${a.gate} opens toward ground that rises by ${a.rise} within its arc: the leaf ` +
      (a.into ? `runs ${a.into} into it` : `clears it by ${a.clearance}`) +
      `, where ${a.limit} of clearance is usual. Raise the gate's \`bottom\`, open it to the other side, or take the ground down.`,
  },
  check: (run, job) => {
    const limit = thresholdOf(job, leafScrapes.kind);
    const worst = new Map<string, Scrape>();
    for (const leaf of run.leaves) {
      const scrape = scrapeOf(run, leaf);
      const gate = leaf.spec.origin.path;
      if (scrape && scrape.clearance < limit && scrape.clearance < (worst.get(gate)?.clearance ?? limit))
        worst.set(gate, scrape);
    }
    return [...worst.values()].map(({ leaf, rise, clearance }): Finding => {
      const { opensTo, origin, half } = leaf.spec;
      const told = (length: Ticks) => formatLength(length, job.measure.value);
      const left = Math.round(clearance);
      const { across } = run.spec;
      return {
        code: 'leaf-scrapes',
        at: opensTo?.origin ?? origin,
        args: {
          gate: half?.of ?? leaf.gate,
          rise: told(Math.round(rise)),
          limit: told(limit),
          ...(left < 0 ? { into: told(-left) } : { clearance: told(left) }),
        },
        related: across ? [{ at: across.origin, note: 'ground across' }] : [],
        fixes: [...raised(run, leaf, limit - clearance), ...turned(run, leaf)],
      };
    });
  },
};

interface Scrape {
  readonly leaf: Leaf;
  /** From the highest ground under the closed leaf to the highest in its arc. */
  readonly rise: number;
  readonly clearance: number;
}

/** Undefined where the ground does not rise toward the side it opens to, or that side is not stated. */
function scrapeOf({ spec, pieces, groundLine }: RunLayout, leaf: Leaf): Scrape | undefined {
  const own = pieces.filter(({ gate, role }) => gate === leaf.gate && role !== 'post');
  const swing = swingOf(leaf, spec.seenFrom.value, own);
  const across = spec.across?.value ?? 0;
  if (!swing || !((swing.side === 'back' ? across : -across) > 0)) return undefined;
  const highest = highestInSwing(swing, groundLine, across);
  const rise = highest - highestGround(groundLine, leaf.x0, leaf.x1);
  return rise > 0 ? { leaf, rise, clearance: leaf.z0 - highest } : undefined;
}

/** The gate's bottom so much higher, to a mark of the tape; where one length states it, or the run's own holds. */
function raised(run: RunLayout, { spec, z0, z1 }: Leaf, by: number): readonly Fix[] {
  const { bottom, origin } = spec;
  const { value } = bottom ?? run.spec.bottom;
  if (value.low !== value.high || (!bottom && run.spec.levels)) return [];
  const above = bottom ? value.low : z0 - run.spec.ground.value;
  const low = ceilToStep(above + by, run.spec.measure.step);
  if (low - above >= z1 - z0) return [];
  const text = `bottom ${spellLength(low, run.spec.measure)}`;
  const change = bottom ? replaceAt(bottom.origin, text) : appendTo(origin, text);
  return [{ title: `Write ${text} in the gate`, changes: [change] }];
}

/** Opened to the other side, where the ground falls; not toward a pool. */
function turned({ spec }: RunLayout, leaf: Leaf): readonly Fix[] {
  const { opensTo } = leaf.spec;
  const across = spec.across?.value ?? 0;
  const side = across > 0 ? 'front' : 'back';
  if (!opensTo || spec.pool?.value === side) return [];
  const text = `opens to ${side}`;
  return [{ title: `Write ${text}`, changes: [replaceAt(opensTo.origin, text)] }];
}
