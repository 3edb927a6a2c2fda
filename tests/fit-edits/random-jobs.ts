/** A small job with a pattern that seldom closes as drawn. */
export interface RandomJob {
  readonly name: string;
  readonly text: string;
}

/** Numbers from 0 to 1, the same for the same seed (Mulberry32, a public-domain generator by T. Ettinger, from memory). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A job from a seed: level or upright, a gate in every third, bands, parameters and remedies in all mixtures. */
export function randomJob(seed: number): RandomJob {
  const random = seeded(seed);
  const pick = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)] as T;
  const whole = (low: number, high: number) => low + Math.floor(random() * (high - low + 1));
  const metric = random() < 0.35;
  const sixteenths = (count: number) => {
    const [full, rest] = [Math.floor(count / 16), count % 16];
    return `${[full > 0 || rest === 0 ? full : '', rest > 0 ? `${rest}/16` : ''].filter((part) => part !== '').join('-')}"`;
  };
  /** From one number of inches to another, or about as many millimeters. */
  const long = (low: number, high: number) =>
    metric ? `${whole(low * 25, high * 25)} mm` : sixteenths(whole(low * 16, high * 16));
  const repeat = pick(['wide', 'wide, thin', 'wide, mid, thin, mid', 'wide, 2 of thin', 'mid, wide']);
  const end = pick(['end anywhere', 'end whole', 'end on wide', 'end on wide']);
  const edge = pick(['', '', 'edge gap half', `edge gap ${long(0.25, 0.75)}`]);
  const gapText = long(0.375, 1);
  const fit = pick(['', '', 'fit rip last', 'fit short repeat, else rip last', 'fit move ends']);
  const upright = random() < 0.4;
  const bottom = random() < 0.4 ? `bottom ${long(2, 3)} to ${long(4, 6)}` : `bottom ${long(2, 4)}`;
  const gate =
    seed % 3 === 0
      ? `gate door in side {
  opening ${long(33, 40)} from ${long(46, 50)}
  hinges on ${pick(['left', 'right'])}
  frame bar
  fill beat(${pick(['space = 1/2"', 'wide = mid', 'thin = mid'])})
  ${pick(['flip upright', 'flip upright, over', ''])}
}`
      : '';
  const text = `job "Made ${seed}" { measure ${metric ? 'mm to 1 mm' : pick(['inches to 1/16"', 'feet to 1/16"'])} }
board plank { width 5-1/2"; thickness 1" }
board mid { width 3-1/2"; thickness 1" }
board small { width 2-5/8"; thickness 1" }
post stake { along 3-1/2"; through 3-1/2" }
rail bar { width 3-1/2"; thickness 1-1/2" }
cleat nib { width 3/4"; thickness 3/4" }
pattern beat(wide = plank, thin = small, space = ${gapText}) {
  repeat ${repeat}
  gap space
  ${[end, edge, fit].filter(Boolean).join('\n  ')}
}
run side {
  length ${long(150, 200)}
  posts stake, ${pick(["at most 6' clear", '3 bays', '4 posts'])}
  height ${long(50, 72)}
  ${bottom}
  slats ${pick(['on front face', 'between posts'])}
  cleats nib
  rails bar
  fill beat${pick(['', '(wide = mid)', '(space = 5/8")'])}
  ${upright ? pick(['flip upright', 'flip upright, top edge to right']) : pick(['', 'flip over'])}
}
${gate}
`;
  return { name: `made ${seed}`, text };
}
