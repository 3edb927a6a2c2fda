import { clearWhenOpen } from '../figures/index.ts';
import { layOutRun, type RunLayout } from '../layout/index.ts';
import { faceToward, type GateSpec, type RunSpec, type StairHead } from '../model/index.ts';
import { ceilToStep, floorToStep, formatLength, spellLength, type Ticks } from '../units/index.ts';
import { commonPractice, GEOMETRY, type RunCheck } from './define.ts';
import type { Fix } from './finding.ts';

const ASK = 'What may be at the head of stairs is ruled by place: ask your local authority.';

/** A gate at the head of stairs that opens over them, or of which it is not said which way it opens. */
export const gateOverStairs: RunCheck = {
  kind: {
    code: 'gate-over-stairs',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      'a gate at the head of stairs opens onto the deck, where one stands level in its arc',
    ),
    message: (a) =>
      (a.stated === 1
        ? `Gate ${a.gate} opens out over the stairs: who opens it from the deck steps after it into the air, and who comes up is pushed back down. Let it open onto the deck, which lies at the front, and keep its arc free there. `
        : `Gate ${a.gate} stands at the head of stairs, and is not said to open onto the deck. Write \`opens to front\`, and keep its arc free there. `) +
      ASK,
  },
  check: ({ spec, sound }) =>
    gatesOf(spec, sound).flatMap((gate) => {
      const stairs = stairsOf(spec.deck?.stairs, gate);
      const side = gate.opensTo && faceToward(spec.seenFrom.value, gate.opensTo.value);
      if (!stairs || side === 'front') return [];
      const text = 'opens to front';
      const { opensTo, origin } = gate;
      const at = opensTo?.origin ?? origin;
      const place = opensTo ? ('replace' as const) : ('append' as const);
      return [
        {
          code: 'gate-over-stairs',
          at,
          args: { gate: gate.name, stated: opensTo ? 1 : 0 },
          related: [{ at: stairs.origin, note: 'the stairs stand here' }],
          // Not where a pool lies on that side: gates of its barrier open away from it.
          fixes:
            spec.pool?.value === 'front'
              ? []
              : [{ title: `Write ${text}`, changes: [{ uri: at.uri, path: at.path, place, text }] }],
        },
      ];
    }),
};

/** Stairs with slats or posts at their head, and no gate. */
export const stairHeadBlocked: RunCheck = {
  kind: {
    code: 'stair-head-blocked',
    severity: 'warning',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `At the head of the stairs, ${a.from} to ${a.to}, stands ${a.what} of ${a.run}, and no gate leads through. Hang a gate there, or state where the stairs are.`,
  },
  check: ({ spec, bays, posts }, job) =>
    (spec.deck?.stairs ?? []).flatMap((stairs) => {
      if (spec.gates.some((gate) => isAt(stairs, gate))) return [];
      const within = ({ from, to }: { readonly from: Ticks; readonly to: Ticks }) =>
        from < stairs.to && to > stairs.from;
      const post = posts.find(within);
      const bay = bays.find((one) => within(one) && one.gate === undefined);
      if (!post && !bay) return [];
      const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
      const what = [...(bay ? [`bay ${bay.number}`] : []), ...(post ? [`post ${post.number}`] : [])].join(
        ' and ',
      );
      const args = { run: spec.name, from: shown(stairs.from), to: shown(stairs.to), what };
      return [{ code: 'stair-head-blocked', at: stairs.origin, args }];
    }),
};

/** A gate that leaves less of the stairs to go down than they are wide. */
export const gateNarrowerThanStairs: RunCheck = {
  kind: {
    code: 'gate-narrower-than-stairs',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('stairs are as wide to go through at their head as below'),
    message: (a) =>
      `Open at a right angle gate ${a.gate} leaves ${a.clear} of the stairs free, which are ${a.wide} wide. An opening of ${a.opening} from ${a.station} would do, or narrower stairs. ${ASK}`,
  },
  check: (run, job) =>
    gatesOf(run.spec, run.sound).flatMap((spec) => {
      const stairs = stairsOf(run.spec.deck?.stairs, spec);
      const free = stairs && freeOf(run, spec, stairs);
      if (!stairs || free === undefined || free >= stairs.to - stairs.from) return [];
      const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
      const wider = openingFor(run, spec, stairs);
      return [
        {
          code: 'gate-narrower-than-stairs',
          at: spec.opening.origin,
          args: {
            gate: spec.name,
            clear: shown(Math.max(0, free)),
            wide: shown(stairs.to - stairs.from),
            opening: shown(wider.opening),
            station: shown(wider.station),
          },
          related: [{ at: stairs.origin, note: 'the stairs stand here' }],
          fixes: widened(run, spec, wider),
        },
      ];
    }),
};

const gatesOf = ({ gates }: RunSpec, sound: boolean): readonly GateSpec[] => (sound ? gates : []);

function isAt(stairs: StairHead, { station, opening }: GateSpec): boolean {
  return station.value < stairs.to && station.value + opening.value > stairs.from;
}

function stairsOf(all: readonly StairHead[] | undefined, gate: GateSpec): StairHead | undefined {
  return all?.find((stairs) => isAt(stairs, gate));
}

/** What the leaves of a gate take of its opening at its left and at its right, while they stand open at a right angle. */
function takenBy({ leaves, pieces }: RunLayout, gate: GateSpec): readonly [left: Ticks, right: Ticks] {
  const taken = { left: 0, right: 0 };
  for (const leaf of leaves) {
    if (leaf.spec.origin.path !== gate.origin.path) continue;
    const own = pieces.filter((piece) => piece.gate === leaf.gate && piece.role !== 'post');
    taken[leaf.spec.hinges.value] = leaf.spec.opening.value - clearWhenOpen(leaf, own);
  }
  return [taken.left, taken.right];
}

/** How much of the stairs' width the open gate leaves. */
function freeOf(run: RunLayout, gate: GateSpec, stairs: StairHead): Ticks {
  const [left, right] = takenBy(run, gate);
  const { station, opening } = gate;
  const end = station.value + opening.value - right;
  return Math.min(stairs.to, end) - Math.max(stairs.from, station.value + left);
}

interface Wider {
  readonly station: Ticks;
  readonly opening: Ticks;
}

/** The least opening that leaves all of the stairs free, on marks of the tape. */
function openingFor(run: RunLayout, gate: GateSpec, stairs: StairHead): Wider {
  const { step } = run.spec.measure;
  const [left, right] = takenBy(run, gate);
  const station = Math.max(0, floorToStep(Math.min(gate.station.value, stairs.from - left), step));
  const end = Math.max(stairs.to + right, gate.station.value + gate.opening.value);
  return { station, opening: ceilToStep(end - station, step) };
}

/** That opening where the run can be built with it. */
function widened(run: RunLayout, gate: GateSpec, { station, opening }: Wider): readonly Fix[] {
  const { spec, joints } = run;
  if (spec.measured) return [];
  const gates = spec.gates.map((one) =>
    one.origin.path === gate.origin.path
      ? { ...one, station: { ...one.station, value: station }, opening: { ...one.opening, value: opening } }
      : one,
  );
  const other = layOutRun({ ...spec, gates }, '', joints);
  if (!other.sound || other.problems.length > run.problems.length) return [];
  const spell = (ticks: Ticks) => spellLength(ticks, spec.measure);
  const written = [
    [gate.opening, opening],
    [gate.station, station],
  ] as const;
  return [
    {
      title: `Write opening ${spell(opening)} from ${spell(station)}`,
      changes: written.map(([{ origin }, value]) => ({
        uri: origin.uri,
        path: origin.path,
        place: 'replace' as const,
        text: spell(value),
      })),
    },
  ];
}
