import { type RunLayout, reachAt } from '../../layout/index.ts';
import type { Job, Origin } from '../../model/index.ts';
import {
  CASE_A_RISE,
  DIRECTIONALITY,
  GUST,
  MINIMUM_PRESSURE,
  OPEN_FRAME,
  OPEN_FROM,
  POROSITY_POWER,
  type Published,
  SOLID_WALL,
  TOPOGRAPHY,
  WIND_RULES,
} from '../../standards/index.ts';
import { toInches } from '../../units/index.ts';
import {
  edgeCoefficient,
  kz,
  openCoefficient,
  porosityFactor,
  solidCoefficient,
  velocityPressure,
} from '../formulas/index.ts';
import type { Working, WorkingInput, WorkingStep } from '../working.ts';
import { amount, inchesOf, input, step } from './amounts.ts';
import { type WindFace, windFaces } from './wind-face.ts';

/** Wind on a run at the level of allowable stress, and how it was come by. */
export interface WindLoad {
  /** psf, on all of the face, gaps counted as if they were closed. */
  readonly pressure: number;
  /** psf on the slats themselves, which take what the gaps let through. */
  readonly onSlats: number;
  readonly solidity: number;
  /** The resultant stands so much of the face's height above its middle. */
  readonly rise: number;
  /** By the job's own wind, or a floor taken for want of it. */
  readonly stated: boolean;
  readonly working: Working;
}

/**
 * Share of a run's face that is closed, 0 to 1: all but what one can see through between slats, over posts and all that
 * fills its bays, rails and kick boards too; gates left out. What cleats and stiffeners close of the gaps is not counted.
 */
export function solidityOf(run: RunLayout): number {
  const known = solidities.get(run);
  if (known !== undefined) return known;
  const solidity = workOutSolidity(run);
  solidities.set(run, solidity);
  return solidity;
}

/** Asked for by many a calculation of the same run. */
const solidities = new WeakMap<RunLayout, number>();

function workOutSolidity(run: RunLayout): number {
  const open = run.openings.reduce(
    (sum, { gate, x0, x1, z0, z1 }) => (gate === undefined ? sum + (x1 - x0) * (z1 - z0) : sum),
    0,
  );
  const bays = run.bays.filter(({ gate }) => gate === undefined);
  const filled = bays.reduce((sum, bay) => {
    const [low, high] = reachAt(run, bay.number, (bay.from + bay.to) / 2) ?? [0, 0];
    return sum + bay.clear * (high - low);
  }, 0);
  const clear = bays.reduce((sum, bay) => sum + bay.clear, 0);
  const gates = run.leaves.reduce((sum, leaf) => sum + leaf.spec.opening.value, 0);
  const face = run.spec.length.value - gates;
  if (face <= 0 || filled <= 0) return 1;
  return 1 - (Math.min(1, open / filled) * Math.min(clear, face)) / face;
}

/**
 * The wind a run is reckoned for: by the stated standard with the run's own solidity, a stated pressure, or, where
 * nothing is stated, the least pressure of the standard in service terms, which is no forecast.
 */
export function windOn(run: RunLayout, job: Job): WindLoad {
  const { wind } = job.site;
  if (wind?.kind === 'speed') return bySpeed(run, wind);
  const solidity = solidityOf(run);
  const open = 1 - solidity >= OPEN_FROM.value;
  const service = WIND_RULES['ASCE 7-16'].serviceFactor;
  const on = wind ? wind.pressure : service.value * MINIMUM_PRESSURE.value;
  const pressure = open ? on * solidity : on;
  const inputs = wind
    ? [input('pressure', 'p', amount(on, 'psf'), 'stated')]
    : [
        input(
          'least pressure, strength level',
          'p0',
          amount(MINIMUM_PRESSURE.value, 'psf'),
          'ASCE 7-16, 29.7',
        ),
        input('to allowable stress', 'f', amount(service.value, ''), 'ASCE 7-16, 2.4.1'),
      ];
  const working: Working = {
    code: 'wind-pressure',
    title: wind ? 'Wind pressure, as stated' : 'Wind pressure for screening: no wind is stated',
    where: placeOf(run, wind?.origin ?? job.origin),
    formula: wind ? 'p' : 'p = f p0',
    inputs: [...inputs, solidityInput(solidity)],
    steps: [
      step('pressure, level of allowable stress', amount(on, 'psf')),
      ...(open ? [step('open frame: on the closed area only, p ε', amount(pressure, 'psf'))] : []),
    ],
    figure: amount(pressure, 'psf'),
    basis: wind ? [OPEN_FROM] : [MINIMUM_PRESSURE, service],
    notes: wind
      ? [openNote(solidity, open)]
      : [
          'The floor of the standard, to tell screens apart by; no forecast for this place. State `wind` with the speed your local authority names.',
          openNote(solidity, open),
        ],
  };
  return { pressure, onSlats: pressure / solidity, solidity, rise: 0, stated: wind !== undefined, working };
}

function bySpeed(
  run: RunLayout,
  wind: Extract<NonNullable<Job['site']['wind']>, { readonly kind: 'speed' }>,
): WindLoad {
  const rules = WIND_RULES[wind.edition];
  const solidity = solidityOf(run);
  const open = 1 - solidity >= OPEN_FROM.value;
  const length = toInches(run.spec.length.value);
  const shareOf = ({ top, face }: WindFace) => Math.min(1, face / top);
  const kzAt = ({ top }: WindFace) => kz(wind.edition, wind.exposure, top / 12);
  const pressed = (each: WindFace) => kzAt(each) * solidCoefficient(shareOf(each), length / each.face);
  // Of bays that stand higher over the ground than others, the one that is pressed the most.
  const worst = windFaces(run).reduce((held, each) => (pressed(each) > pressed(held) ? each : held));
  const [s, lengthOverFace, height] = [shareOf(worst), length / worst.face, kzAt(worst)];
  const q = velocityPressure({ speed: wind.speed, kz: height });
  const solidCf = solidCoefficient(s, lengthOverFace);
  const relief = porosityFactor(solidity);
  const solid = q * GUST.value * solidCf * relief;
  const openCf = openCoefficient(solidity);
  const openOnGross = q * GUST.value * openCf * solidity;
  const least = open ? MINIMUM_PRESSURE.value * solidity : MINIMUM_PRESSURE.value;
  const strength =
    rules.level === 'strength' ? Math.max(open ? openOnGross : solid, least) : open ? openOnGross : solid;
  const pressure = strength * rules.serviceFactor.value;
  const edge = edgeCoefficient(0, s, lengthOverFace);
  const inputs: WorkingInput[] = [
    input('wind speed', 'V', amount(wind.speed, 'mph'), `stated, ${wind.edition}`),
    input('exposure', '', wind.exposure, 'stated'),
    input(
      'height of the top',
      'h',
      amount(worst.top, 'in'),
      worst.raised ? 'as laid out, above the ground below the deck' : 'as laid out',
    ),
    input('height of the face', 's', amount(worst.face, 'in'), 'as laid out'),
    input('length', 'B', inchesOf(run.spec.length.value), 'stated'),
    solidityInput(solidity),
    input('directionality', 'Kd', amount(DIRECTIONALITY.value, ''), 'Table 26.6-1'),
    input('gust effect', 'G', amount(GUST.value, ''), '26.11.1'),
    input('topography', 'Kzt', amount(TOPOGRAPHY.value, ''), 'flat ground taken'),
  ];
  const steps: WorkingStep[] = [
    step('Kz at h', amount(height, '')),
    step('q = 0.00256 Kz Kzt Kd V²', amount(q, 'psf')),
    step(
      `solid with openings: Cf (s/h ${s.toFixed(2)}, B/s ${lengthOverFace.toFixed(1)})`,
      amount(solidCf, ''),
    ),
    step('relief by openings: 1 - (1 - ε)^1.5', amount(relief, '')),
    step('q G Cf on the whole face, solid rule', amount(solid, 'psf')),
    step('open frame: Cf on the closed area', amount(openCf, '')),
    step('q G Cf ε, open-frame rule', amount(openOnGross, 'psf')),
    step(
      open ? 'openings 30 % or more: the open-frame rule holds' : 'openings under 30 %: the solid rule holds',
      amount(open ? openOnGross : solid, 'psf'),
    ),
    ...(rules.level === 'strength'
      ? [
          step(
            `not less than 16 psf${open ? ' on the closed area' : ''}, strength level`,
            amount(strength, 'psf'),
          ),
          step('level of allowable stress: × 0.6', amount(pressure, 'psf')),
        ]
      : [step('a nominal speed: the level of allowable stress as it is', amount(pressure, 'psf'))]),
  ];
  const basis: Published[] = [rules, open ? OPEN_FRAME : SOLID_WALL, POROSITY_POWER];
  if (rules.level === 'strength') basis.push(MINIMUM_PRESSURE, rules.serviceFactor);
  const working: Working = {
    code: 'wind-pressure',
    title: `Wind pressure by ${wind.edition}`,
    where: placeOf(run, wind.origin),
    formula: 'p = 0.6 max(q G Cf, 16 psf)',
    inputs,
    steps,
    figure: amount(pressure, 'psf'),
    basis,
    notes: [
      openNote(solidity, open),
      ...(edge !== undefined && !open
        ? [
            `Within the height of the face of a free end, case C asks for ${(
              q * GUST.value * edge * relief * rules.serviceFactor.value
            ).toFixed(1)} psf in place of ${pressure.toFixed(1)}; posts there are not reckoned for it here.`,
          ]
        : []),
      ...(run.spec.deck && !worst.raised
        ? [
            'The ground below the deck is not stated: heights are taken from its surface, which may be too little.',
          ]
        : []),
      'The run is taken by itself; a neighbor that shelters it is not counted.',
      'Ask your local authority for the speed, the exposure and the edition in force.',
    ],
  };
  const formula = rules.level === 'strength' ? working.formula : 'p = q G Cf';
  // A few inches clear of the ground make no raised sign of a fence.
  const rise = s > 0.9 && !open ? CASE_A_RISE.value : 0;
  return {
    pressure,
    onSlats: pressure / solidity,
    solidity,
    rise,
    stated: true,
    working: { ...working, formula },
  };
}

function solidityInput(solidity: number): WorkingInput {
  return input('closed share of the face', 'ε', amount(100 * solidity, '%'), 'from the pieces');
}

function openNote(solidity: number, open: boolean): string {
  const gaps = (100 * (1 - solidity)).toFixed(0);
  return open
    ? `${gaps} % of the face is open: reckoned as an open frame.`
    : `${gaps} % of the face is open; under 30 % counts as solid with openings, and the gaps take off ${(
        100 * (1 - porosityFactor(solidity))
      ).toFixed(1)} % of the load at most.`;
}

function placeOf(run: RunLayout, origin: Origin): Working['where'] {
  return { origin, label: `${run.spec.name}, wind`, run: run.key };
}
