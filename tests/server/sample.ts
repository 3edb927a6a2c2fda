/** Stock and a pattern that the test jobs use. */
export const LIBRARY = `board plank {
  width 5-1/2"    thickness 3/4"
  lengths 8', 12'
}
board "wide board" { width 7-1/4"; thickness 3/4"; lengths 8', 12' }
rip strip from plank to 2-1/2"
post pole { along 3-1/2"    through 3-1/2" }
rail beam { width 3-1/2"    thickness 1-1/2" }
cleat batten { width 3/4"    thickness 3/4" }

pattern weave(space = 1/2") {
  repeat plank, strip
  gap space
  end anywhere
  fit gaps 3/8" to 3/4", else rip last
}
`;

export const JOB = `use "library.slat"

job "Terrace" {
  measure inches to 1/16"
}

run west {
  seen from terrace
  length 18' over posts
  posts pole, at most 6' clear
  height 6'    bottom 2" above ground
  slats between posts
  cleats batten
  fill weave
}

run north {
  seen from terrace
  length 12' over posts
  posts pole, 2 bays
  height 5'    bottom 2" above ground
  slats between posts
  cleats batten
  fill weave
}
`;
