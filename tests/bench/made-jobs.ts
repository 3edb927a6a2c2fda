/** A job made for measuring. */
export interface MadeJob {
  readonly name: string;
  readonly text: string;
  /** The first statement that moves every slat of one run: what is typed is typed here. */
  readonly marker: string;
}

const STOCK = `board wide { width 5-1/2"  thickness 1"  lengths 8', 10', 12' }
board middle { width 3-1/2"  thickness 1"  lengths 8', 10', 12' }
rip narrow from wide to 1-1/2"
post line { along 3-1/2"  through 3-1/2"  lengths 8', 10', 12' }
cleat hold { width 3/4"  thickness 3/4"  lengths 8' }
rail carry { width 3-1/2"  thickness 1-1/2"  lengths 8', 10' }

pattern beat(space = 1/2") {
  repeat wide, narrow, middle, narrow
  gap space
  end anywhere
  fit gaps 3/8" to 5/8", else short repeat, else rip last
}
`;

/** About 200 lines and 500 pieces: eight runs of four bays, commented as a builder would. */
export function smallJob(): MadeJob {
  const runs = Array.from({ length: 8 }, (_, n) => run(`side-${n + 1}`, 4, 10)).join('\n');
  const text = `${STOCK}\njob "Measured" {\n  measure feet to 1/16"\n  see-through at most 25 %\n}\n\n${runs}${filler(200, runs)}`;
  return { name: '200 lines, 500 pieces', text, marker: 'bottom 2"' };
}

/** 100 bays and 5 000 pieces in one run. */
export function largeJob(): MadeJob {
  const text = `${STOCK}\njob "Measured" {\n  measure feet to 1/16"\n  see-through at most 25 %\n}\n\n${run('long', 100, 45)}`;
  return { name: '100 bays, 5 000 pieces', text, marker: 'bottom 2"' };
}

function run(name: string, bays: number, slats: number): string {
  // The pattern's mean pitch is 3-1/2 inches.
  const height = Math.round(slats * 3.5) + 2;
  return `// ${name}: measured from its own first post
run ${name} {
  seen from street
  length ${bays * 4}' over posts
  posts line, ${bays} bays
  height ${height}"
  bottom 2"
  embed 30"
  slats between posts
  cleats hold
  fill beat(space = 1/2")
}
`;
}

function filler(lines: number, runs: string): string {
  const missing = Math.max(0, lines - `${STOCK}${runs}`.split('\n').length - 6);
  return Array.from({ length: missing }, (_, n) => `// note ${n + 1}: ask the yard for straight ones\n`).join(
    '',
  );
}

/** A small file; every second one names a board that nothing states. */
export function neighborFile(n: number): string {
  const board = n % 2 === 0 ? 'wide' : 'missing-board';
  return `${STOCK}\npattern p${n} {\n  repeat ${board}\n  gap 1/2"\n}\n${run(`n${n}`, 3, 10).replace('beat(space = 1/2")', `p${n}`)}`;
}
