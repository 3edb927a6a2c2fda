import { infillOf } from '../figures/index.ts';
import { type Piece, pocketOf } from '../layout/index.ts';
import type { GateSpec, RunSpec, Sourced } from '../model/index.ts';
import { floorToStep, formatLength, type Measure, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, GEOMETRY, type LimitedRunCheck, type RunCheck, thresholdOf } from './define.ts';
import type { Finding, Fix } from './finding.ts';
import { infillsOf } from './infills.ts';
import { appendTo, replaceAt } from './written-change.ts';

/** A slat that, pushed to one end, leaves its groove or its channel at the other. */
export const slatSlipsOut: RunCheck = {
  kind: {
    code: 'slat-slips-out',
    severity: 'warning',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `Pushed to one end, a slat leaves ${a.what} at the other: it goes ${a.into} into ${a.depth}, with ${a.gap} free at each end. ` +
      `Make the end gap less than ${a.most}, or ${a.what === 'its groove' ? 'the grooves deeper' : 'use a deeper channel'}.`,
  },
  check: (run, job) =>
    infillsOf(run).flatMap(({ spec, slats, leaf }): Finding[] => {
      const pocket = pocketOf(spec.mounting.value, 0);
      // Of two leaves that mirror each other one is told.
      if (leaf?.spec.half?.mirrors || !pocket || slats.length === 0 || 2 * spec.endGap.value < pocket.depth)
        return [];
      const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
      const { value } = spec.mounting;
      return [
        {
          code: 'slat-slips-out',
          at: spec.endGap.origin.why === 'stated' ? spec.endGap.origin : spec.mounting.origin,
          args: {
            what: value.kind === 'channels' ? value.channel.value.name : 'its groove',
            into: shown(pocket.depth - spec.endGap.value),
            depth: shown(pocket.depth),
            gap: shown(spec.endGap.value),
            most: shown(pocket.depth / 2),
          },
          pieces: slats.map(({ key }) => key),
          fixes: endGapFixes((leaf ?? run).spec, spec.endGap, run.spec.measure, pocket.depth / 4),
        },
      ];
    }),
};

/** Where none is stated, into the block of what it fills: that of the run, or of the gate. */
function endGapFixes(
  block: RunSpec | GateSpec,
  endGap: Sourced<Ticks>,
  measure: Measure,
  most: Ticks,
): readonly Fix[] {
  const gap = floorToStep(most, measure.step);
  if (gap <= 0) return [];
  const length = spellLength(gap, measure);
  const text = `end gap ${length}`;
  const change =
    endGap.origin.why === 'stated' ? replaceAt(endGap.origin, length) : appendTo(block.origin, text);
  return [{ title: `Write \`${text}\``, changes: [change] }];
}

/** Grooves that take so much of a post, a rail or a stile that little is left between them. */
export const grooveWeakens: LimitedRunCheck = {
  kind: {
    code: 'groove-weakens',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('grooves leave half of what they are cut into, or more'),
    threshold: {
      is: 'percent',
      imperial: 50,
      metric: 50,
      says: 'least that grooves leave of what they are cut into, across it',
    },
    message: (a) =>
      `Grooves leave ${a.left} of the ${a.width} of ${a.stock}, ${a.share} %; with less than ${a.least} % it splits and bends there. ` +
      'Make the grooves shallower, or use a larger section.',
  },
  check: (run, job) => {
    const least = thresholdOf(job, grooveWeakens.kind);
    const worst = run.pieces.reduce<Piece | undefined>(
      (held, piece) => (piece.cut.grooves && (!held || shareOf(piece) < shareOf(held)) ? piece : held),
      undefined,
    );
    if (!worst || 100 * shareOf(worst) >= least) return [];
    // A post of a gate is grooved for the slats of the run.
    const { mounting } = infillOf(run, worst.role === 'post' ? undefined : worst.gate);
    const depth = mounting.value.kind === 'grooves' ? mounting.value.depth : undefined;
    const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
    const room = floorToStep((worst.cut.width * (1 - least / 100)) / sidesOf(worst), run.spec.measure.step);
    const stated = depth?.origin.why === 'stated' && room > 0;
    const text = spellLength(room, run.spec.measure);
    return [
      {
        code: 'groove-weakens',
        at: stated && depth ? depth.origin : mounting.origin,
        args: {
          stock: worst.cut.stock,
          left: shown(leftOf(worst)),
          width: shown(worst.cut.width),
          share: Math.floor(100 * shareOf(worst)),
          least,
        },
        pieces: run.pieces.filter(({ cut }) => cut.grooves).map(({ key }) => key),
        fixes:
          stated && depth
            ? [
                {
                  title: `Write ${text}`,
                  changes: [replaceAt(depth.origin, text)],
                },
              ]
            : [],
      },
    ];
  },
};

const sidesOf = ({ cut }: Piece): number => new Set(cut.grooves?.map(({ side }) => side)).size;

function leftOf({ cut }: Piece): Ticks {
  const depthAt = (side: 'start' | 'end') =>
    Math.max(0, ...(cut.grooves ?? []).filter((one) => one.side === side).map(({ depth }) => depth));
  return cut.width - depthAt('start') - depthAt('end');
}

const shareOf = (piece: Piece): number => leftOf(piece) / piece.cut.width;

/** A slat that cannot be let down from above, where posts lean toward each other. */
export const slatLockedOut: RunCheck = {
  kind: {
    code: 'slat-locked-out',
    severity: 'warning',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `Slat ${a.slat} is ${a.length} long and goes in from above, where there is ${a.room} for it at ${a.above}. ` +
      'The posts lean toward each other: set them plumb, or cut the slats below to what there is at the top.',
  },
  check: (run, job) => {
    const { mounting, endGap, flip } = run.spec.infill;
    if (flip.upright || !pocketOf(mounting.value, 0)) return [];
    const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
    return run.bays.flatMap(({ number, gate }): Finding[] => {
      if (gate !== undefined) return [];
      // From the top: every one has gone past where those before it are.
      const slats = run.pieces
        .filter((piece) => piece.role === 'slat' && piece.bay === number)
        .sort((a, b) => (a.course ?? 0) - (b.course ?? 0));
      let narrowest: Piece | undefined;
      let found: { slat: Piece; above: Piece } | undefined;
      let most = run.spec.measure.step;
      for (const slat of slats) {
        const over = narrowest ? slat.cut.longPoint - narrowest.cut.shortPoint - 2 * endGap.value : 0;
        if (narrowest && over >= most) [most, found] = [over, { slat, above: narrowest }];
        if (!narrowest || slat.cut.shortPoint < narrowest.cut.shortPoint) narrowest = slat;
      }
      if (!found) return [];
      const { slat, above } = found;
      const args = {
        slat: slat.label,
        length: shown(slat.cut.longPoint),
        room: shown(above.cut.shortPoint + 2 * endGap.value),
        above: above.label,
      };
      return [{ code: 'slat-locked-out', at: mounting.origin, args, pieces: [slat.key, above.key] }];
    });
  },
};
