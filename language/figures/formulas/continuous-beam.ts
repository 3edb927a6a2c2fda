/** What an even load does to a beam on several supports. Units as given: `w` per length, lengths alike, `EI` to match. */
export interface BeamAnswer {
  /** Greatest moment of either sign. */
  readonly moment: number;
  /** Over the supports, the outer ones included; sagging is positive, so those between are negative. */
  readonly supportMoments: readonly number[];
  readonly reactions: readonly number[];
  /** Greatest deflection, and in which span and how far along it. */
  readonly deflection: number;
  readonly span: number;
  readonly at: number;
}

/**
 * A straight beam of one section on simple supports, `spans` apart, under an even load all along. Moments over
 * supports by the theorem of three moments (Clapeyron, 1857), deflections by superposition of the load and the
 * end moments of each span. Nothing for no spans.
 */
export function continuousBeam(spans: readonly number[], load: number, stiffness: number): BeamAnswer {
  const moments = supportMoments(spans, load);
  const reactions = new Array<number>(spans.length + 1).fill(0);
  let moment = Math.max(0, ...moments.map(Math.abs));
  let worst = { deflection: 0, span: 0, at: 0 };
  spans.forEach((length, i) => {
    const [left = 0, right = 0] = [moments[i], moments[i + 1]];
    const shear = (load * length) / 2 + (right - left) / length;
    reactions[i] = (reactions[i] ?? 0) + shear;
    reactions[i + 1] = (reactions[i + 1] ?? 0) + load * length - shear;
    const peak = shear / load;
    if (peak > 0 && peak < length) moment = Math.max(moment, left + shear ** 2 / (2 * load));
    const found = deepest((x) => sag(x, length, load, left, right) / stiffness, length);
    if (Math.abs(found.value) > Math.abs(worst.deflection)) {
      worst = { deflection: found.value, span: i, at: found.at };
    }
  });
  return { moment, supportMoments: moments, reactions, ...worst };
}

/** `EI` times the deflection at x of one span under load and end moments. */
function sag(x: number, length: number, load: number, left: number, right: number): number {
  const even = (load * x * (length ** 3 - 2 * length * x ** 2 + x ** 3)) / 24;
  const ends = (x * (length - x) * (left * (2 * length - x) + right * (length + x))) / (6 * length);
  return even + ends;
}

/** Moments over supports: a band of three unknowns a row, solved by elimination. */
function supportMoments(spans: readonly number[], load: number): number[] {
  const inner = spans.length - 1;
  const diagonal: number[] = [];
  const right: number[] = [];
  for (let i = 0; i < inner; i++) {
    const [before = 0, after = 0] = [spans[i], spans[i + 1]];
    diagonal.push(2 * (before + after));
    right.push(-(load * (before ** 3 + after ** 3)) / 4);
  }
  for (let i = 1; i < inner; i++) {
    const shared = spans[i] ?? 0;
    const factor = shared / (diagonal[i - 1] ?? 1);
    diagonal[i] = (diagonal[i] ?? 0) - factor * shared;
    right[i] = (right[i] ?? 0) - factor * (right[i - 1] ?? 0);
  }
  const moments = new Array<number>(inner + 2).fill(0);
  for (let i = inner - 1; i >= 0; i--) {
    const next = i === inner - 1 ? 0 : (spans[i + 1] ?? 0) * (moments[i + 2] ?? 0);
    moments[i + 1] = ((right[i] ?? 0) - next) / (diagonal[i] ?? 1);
  }
  return moments.slice(0, spans.length + 1);
}

/** The largest size of a smooth curve between 0 and `length`: by even steps, then closer about the best of them. */
function deepest(curve: (x: number) => number, length: number): { at: number; value: number } {
  let [from, to] = [0, length];
  let at = 0;
  for (let round = 0; round < 4; round++) {
    const step = (to - from) / 40;
    for (let i = 0; i <= 40; i++) {
      const x = from + i * step;
      if (Math.abs(curve(x)) > Math.abs(curve(at))) at = x;
    }
    [from, to] = [Math.max(0, at - step), Math.min(length, at + step)];
  }
  return { at, value: curve(at) };
}
