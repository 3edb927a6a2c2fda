/**
 * Jobs made to reach what the examples do not: gates of every kind, slats on the back, stations, ground
 * off the datum, trim, half edge gaps, a metric run with uneven thirds. All invented.
 */
const STOCK = `
material ash { kind wood }
board wide { width 5-1/2"; thickness 1"; made of ash; lengths 16' }
board small { width 2-5/8"; thickness 1"; made of ash; lengths 16' }
board lath { width 45 mm; thickness 21 mm; lengths 5 m }
rip strip from wide to 1-3/4"
post stake { along 3-1/2"; through 3-1/2"; lengths 12' }
post stout { along 5-1/2"; through 3-1/2"; lengths 12' }
rail bar { width 3-1/2"; thickness 1-1/2"; lengths 16' }
rail heavy { width 3-1/4"; thickness 4-1/2"; lengths 16' }
cleat nib { width 3/4"; thickness 3/4" }
pattern plain(slat = wide, space = 1/2") { repeat slat; gap space; end anywhere; fit gaps 1/4" to 1-1/4" }
pattern trio(space = 3/4") {
  repeat wide, 2 of small
  gap space
  end on wide
  fit gaps 1/2" to 1", else short repeat, else rip last, else trim with wide at bottom
}
pattern halves { repeat wide, strip; gap 1/2"; edge gap half; end whole; fit gaps 1/4" to 1-1/2" }
pattern open-ended { repeat wide, small; gap 5/8"; end on wide }
`;

export interface MadeJob {
  readonly name: string;
  readonly text: string;
}

const made = (name: string, measure: string, text: string): MadeJob => ({
  name,
  text: `job "${name}" { measure ${measure} }\n${STOCK}\n${text}`,
});

export const madeJobs: readonly MadeJob[] = [
  made(
    'two gates',
    'feet to 1/16"',
    `run wharf {
  length 41' 7-3/8"
  posts stake, at most 5' 6" clear
  height 6' to 6' 2"; bottom 2" to 5"
  slats between posts; cleats nib; end gap 1/8"
  fill trio
}
gate crew in wharf { opening 40" from 9' 3"; hinges on right; posts stout; frame bar; flip upright, top edge to hinges; fill plain(slat = small) }
gate tender in wharf { opening 34-3/8" from 27'; hinges on left; frame heavy; slats between frame; cleats nib; brace none; fill plain }`,
  ),
  made(
    'face and stations',
    'inches to 1/8"',
    `run tow {
  length 30'
  posts stake, at 5' 3", 11' 7-1/2", 19', 24' 1-1/4"
  ground down 9-3/4"
  height 52"; bottom 3"
  slats on back face; end gap 1/4"
  fill halves
}
gate mule in tow { opening 41" from 14'; hinges on right; frame bar; slats on front face; flip upright, over }`,
  ),
  made(
    'uneven thirds',
    'mm to 5 mm',
    `run ropewalk {
  length 10 m
  posts stake, 7 bays
  ground up 120 mm
  height 1.83 m; bottom 55 mm to 90 mm
  slats between posts; cleats nib; end gap 3 mm
  fill plain(slat = lath, space = 14 mm)
}
run sail-loft {
  length 7333 mm
  posts stake, 4 posts
  height 1500 mm; bottom 60 mm
  slats between posts; cleats nib; rails bar
  fill plain(slat = lath, space = 14 mm)
  flip upright
}`,
  ),
  made(
    'upright on a face',
    'inches to 1/16"',
    `run ledge {
  length 23' 1-1/16"
  posts stake, 4 bays
  height 5'; bottom 2-1/2"
  slats on front face; rails bar
  fill trio
  flip upright, top edge to right, end for end
}
gate wicket in ledge { opening 37" from 7' 2"; hinges on left; frame bar; height 4' 6"; bottom 3" }`,
  ),
  made(
    'left over',
    'feet to 1/16"',
    `run slip {
  length 19' 4"
  posts stake, at most 6' on center
  height 5' 1-3/8"; bottom 2"
  slats between posts; cleats nib
  fill open-ended
}
run plinth {
  length 12'
  posts stake, at most 4' clear
  height 64-3/8"; bottom 2"
  slats on front face
  fill trio
  fit trim with wide at bottom
}
run ripped {
  length 12'
  posts stake, at most 4' clear
  height 63-1/4"; bottom 2"
  slats on front face
  fill trio
  fit rip last not under 1/2"
}`,
  ),
];
