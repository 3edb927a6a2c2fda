import { heightAt, type PostMark, type RunLayout } from '../../layout/index.ts';
import { type Job, levelAt, type PostStock } from '../../model/index.ts';
import type { Published, PublishedValue } from '../../standards/index.ts';
import { inches, type Ticks, toInches } from '../../units/index.ts';
import type { Working } from '../working.ts';
import { amount, inchesOf, input, STATICS, step } from './amounts.ts';
import { strengthOf } from './material-values.ts';
import { postSection } from './post-section.ts';
import { oncePerRun } from './remember.ts';
import { strengthInputs } from './slats.ts';
import { type WindLoad, windOn } from './wind-on.ts';

/** Closer posts than this are no remedy. */
const CLOSEST = inches(24);

/** What the wind does to one post. */
export interface PostLoad {
  readonly mark: PostMark;
  readonly stock: PostStock;
  readonly gate?: string;
  /** The face it carries: half of each bay beside it, itself, and a filler at a wall. */
  readonly tributary: Ticks;
  readonly faceHeight: Ticks;
  /** From the datum: top of the face it carries, and the ground where it stands. */
  readonly top: Ticks;
  readonly ground: number;
  /** Of the resultant above grade, in inches. */
  readonly arm: number;
  /** Pounds, level of allowable stress. */
  readonly force: number;
  readonly wind: WindLoad;
}

export const postLoads = oncePerRun(workOutLoads);

function workOutLoads(run: RunLayout, job: Job): readonly PostLoad[] {
  const wind = windOn(run, job);
  return run.posts.map((mark) => {
    const beside = run.bays.filter((bay) => bay.to === mark.from || bay.from === mark.to);
    const stock = stockOf(run, mark);
    const half = beside.reduce((sum, bay) => sum + bay.clear / 2, 0) + panelBeside(run, mark) / 2;
    const tributary = Math.round(half + (mark.to - mark.from)) + fillerBeside(run, mark);
    // Of a bay that slopes, where it meets the post.
    const reaches = beside.map(({ number, to }): readonly [Ticks, Ticks] => {
      const { bottom: low, top: high } = run.edges.get(number) ?? {};
      const [least, most] = run.reach.get(number) ?? [run.bottom, run.top];
      const face = to === mark.from ? mark.from : mark.to;
      return [low ? heightAt(low, face) : least, high ? heightAt(high, face) : most];
    });
    const bottom = Math.min(...reaches.map(([low]) => low), run.top);
    const top = Math.max(...reaches.map(([, high]) => high), bottom);
    const ground = footingLevel(run, Math.round((mark.from + mark.to) / 2));
    const face = top - bottom;
    const arm = toInches((top + bottom) / 2 - ground) + wind.rise * toInches(face);
    const force = (wind.pressure * toInches(tributary) * toInches(face)) / 144;
    return {
      mark,
      stock,
      ...(mark.gate === undefined ? {} : { gate: mark.gate }),
      tributary,
      faceHeight: face,
      top,
      ground,
      arm: Math.max(0, arm),
      force,
      wind,
    };
  });
}

/** A filler between the post and a wall hangs on the post alone. */
const fillerBeside = (run: RunLayout, { key }: PostMark): Ticks =>
  run.pieces.find(
    ({ role, supports, key: own }) =>
      role === 'filler' && supports.includes(key) && !own.startsWith(`${run.key}/filler/`),
  )?.cut.width ?? 0;

/** Along the run, of a panel from one plane to another that begins or ends at the post. */
function panelBeside({ posts, spec: { placement }, joints }: RunLayout, mark: PostMark): Ticks {
  const { bridge, bridged } = joints;
  const after = mark === posts.at(-1) ? (bridged?.space ?? 0) : 0;
  const panel = placement?.kind === 'on' && placement.bridge?.kind === 'panel' && bridge && !bridge.trouble;
  return after + (panel && mark === posts[0] ? placement.gap.value : 0);
}

/** The ground a post stands in at a station: under a deck, that below it. */
export function footingLevel({ spec: { deck }, groundLine }: RunLayout, station: Ticks): number {
  if (deck?.hold.value === 'footing' && deck.ground) return deck.ground.value;
  return levelAt(groundLine, station);
}

/** Whether posts have no footing, and a deck's frame holds them. */
export function heldByDeck({ spec: { deck } }: RunLayout): boolean {
  return deck !== undefined && deck.hold.value !== 'footing';
}

function stockOf(run: RunLayout, mark: PostMark): PostStock {
  const leaf =
    mark.gate === undefined
      ? undefined
      : run.leaves.find(({ gate, spec }) => (spec.half?.of ?? gate) === mark.gate);
  return leaf?.spec.post.value ?? run.spec.post.value;
}

/** Bending of the post of each stock that is bent the most for what it bears. */
export interface PostBending {
  readonly load: PostLoad;
  readonly working: Working;
  /** Moment over what is allowed; missing where no strength is published or stated. */
  readonly used?: number;
  /** Clear between posts at which it would just do, where closer posts help. */
  readonly clearThatDoes?: Ticks;
}

export const postBendings = oncePerRun(workOutBending);

function workOutBending(run: RunLayout, job: Job): readonly PostBending[] {
  const worst = new Map<string, PostBending>();
  for (const load of postLoads(run, job)) {
    const found = bendingOf(run, load);
    const held = worst.get(load.stock.name);
    const size = ({ used, working }: PostBending) => used ?? working.figure.value;
    if (!held || size(found) > size(held)) worst.set(load.stock.name, found);
  }
  return [...worst.values()];
}

function bendingOf(run: RunLayout, load: PostLoad): PostBending {
  const { stock, mark, wind } = load;
  const foot = heldByDeck(run) ? 'the deck' : 'grade';
  const bent = postSection(run, mark, stock, 'through');
  const { section } = bent;
  const strength = strengthOf(stock.material, {
    width: stock.along.value,
    thickness: stock.through.value,
    flat: stock.through.value < stock.along.value,
  });
  const moment = load.force * load.arm;
  const stress = moment / section.modulus;
  const { allowable } = strength;
  const used = allowable && stress / allowable.value;
  const clear =
    used === undefined || used <= 1 ? undefined : Math.floor(load.tributary / used) - (mark.to - mark.from);
  const metal = stock.material?.kind.value === 'steel' || stock.material?.kind.value === 'aluminum';
  const values: Published | PublishedValue | undefined = strength.lumber?.values ?? allowable?.published;
  return {
    load,
    ...(used === undefined ? {} : { used }),
    ...(clear !== undefined && clear >= CLOSEST ? { clearThatDoes: clear } : {}),
    working: {
      code: 'post-bending',
      title: `Bending of ${stock.name} at ${foot} in wind`,
      where: {
        origin: run.spec.post.origin,
        label: `${run.spec.name}, post ${mark.number}`,
        run: run.key,
        pieces: [mark.key],
      },
      formula: 'fb = P h / S',
      inputs: [
        input('wind', 'p', amount(wind.pressure, 'psf'), wind.working.title),
        input('face it carries, along', 'B', inchesOf(load.tributary), 'half of each bay or panel beside it'),
        input('face it carries, up', 's', inchesOf(load.faceHeight), 'as laid out'),
        input('along the run', 'b', inchesOf(stock.along.value), 'stated'),
        input('through it', 'd', inchesOf(stock.through.value), 'stated'),
        ...bent.inputs,
        ...strengthInputs(strength),
      ],
      steps: [
        step('force P = p B s', amount(load.force, 'lb')),
        step(`its arm above ${foot}, h`, amount(load.arm, 'in')),
        step(`moment at ${foot} M = P h`, amount(moment / 12, 'ft-lb')),
        ...bent.steps,
        ...(allowable
          ? [step("moment it bears, Fb' S", amount((allowable.value * section.modulus) / 12, 'ft-lb'))]
          : []),
      ],
      figure: amount(stress, 'psi'),
      ...(allowable
        ? { limit: { name: "Fb'", is: 'at most' as const, ...amount(allowable.value, 'psi') } }
        : {}),
      basis: [STATICS, ...(values ? [values] : [])],
      notes: [
        ...(wind.stated ? [] : ['Wind is not stated: the floor of the standard, to tell screens apart by.']),
        ...(metal && !stock.wall ? ['Its wall is not stated: reckoned as a full bar.'] : []),
        ...(allowable ? [] : ['No design value is published for it here: state its `bending`.']),
        ...bent.notes,
        heldByDeck(run)
          ? "Free at the top, held by the deck's frame below its surface."
          : 'Free at the top, held by the ground below grade.',
      ],
    },
  };
}
