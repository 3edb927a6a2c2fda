/** A run of four bays with prices, and boards in the yard. */
export const BANK = `job "Bank" { measure feet to 1/16"; money USD; saw kerf 1/8"; spares 5 %, at least 1 }
board plank { width 3-1/2"; thickness 3/4"; lengths 8' $9.20 each, 16' $18 each }
cleat nib { width 3/4"; thickness 3/4"; lengths 8' $2 each }
post pole { along 3-1/2"; through 3-1/2"; lengths 8' $14 each }
pattern even(space = 1/2") { repeat plank; gap space; end anywhere; fit gaps 3/8" to 3/4" }
run bank {
  seen from street
  length 16' over posts
  posts pole, 2 bays
  height 4'; bottom 4"
  embed 2'
  slats between posts
  cleats nib
  fill even
}
quote { labor $48 per hour; task fixing 6 minutes per slat; price screw $0.10 each }
on hand { plank 3 of 8' 2" }
`;

/** So many runs that a search for better choices of one, which lays out all of them each time, takes seconds. */
export const LONG = `${BANK}
${Array.from({ length: 8 }, (_, n) => `run side-${n} { length 24'; posts pole, at most ${4 + (n % 3)}' clear; height 6'; bottom 4"; slats between posts; cleats nib; fill even }`).join('\n')}
pattern odd(space = 1/2") { repeat plank; gap space; end anywhere; fit gaps 1/8" to 1-1/2" }
`;
