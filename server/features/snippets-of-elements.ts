import { one, type StatementSnippets } from './snippet.ts';

/** Statements of what stands at the top of a file, by rule of the grammar. */
export const ELEMENTS_SNIPPETS: StatementSnippets = {
  Use: [one('use', 'use "[]"', 'stock and patterns of another file')],
  Job: [
    one(
      'job',
      `job "[Name]" {
  measure [inches to 1/16"~mm to 1 mm]
  see-through at most [20] %
}`,
      'how it is measured, and what it asks for',
    ),
  ],
  Material: [
    one('material', 'material [name] { kind [wood|composite|pvc|aluminum|steel] }', 'what stock is made of'),
  ],
  Board: [
    one(
      'board',
      `board [name] {
  width [5-1/2"~140 mm]    thickness [3/4"~20 mm]
  lengths [8', 12'~2.4 m, 3.6 m]
}`,
      'what slats are cut from',
    ),
  ],
  Rip: [one('rip', 'rip [name] from [board] to [2-1/2"~60 mm]', 'a strip of a board')],
  Post: [
    one(
      'post',
      `post [name] {
  along [3-1/2"~90 mm]    through [3-1/2"~90 mm]
  lengths [8', 10'~2.4 m, 3 m]
}`,
      'a kind of post',
    ),
  ],
  Rail: [
    one(
      'rail',
      `rail [name] {
  width [3-1/2"~90 mm]    thickness [1-1/2"~45 mm]
}`,
      'carries upright slats; frames gates',
    ),
  ],
  Cleat: [
    one(
      'cleat',
      `cleat [name] {
  width [3/4"~20 mm]    thickness [3/4"~20 mm]
}`,
      'holds slats that stand between posts or rails',
    ),
  ],
  Channel: [
    one(
      'channel',
      `channel [name] {
  width [1-1/4"~32 mm]    thickness [1-1/8"~28 mm]    wall [1/8"~3 mm]
}`,
      'U-shaped, for the ends of slats; thickness is outside, through the screen',
    ),
  ],
  Pattern: [
    one(
      'pattern',
      `pattern [name] {
  repeat [board]
  gap [1/2"~12 mm]
  end [anywhere|whole]
  fit gaps [3/8"~10 mm] to [5/8"~16 mm], else rip last
}`,
      'slats that repeat, and how they fill their height',
    ),
  ],
  Run: [
    one(
      'run',
      `run [name] {
  seen from [garden]
  length [24'~7.2 m] over posts
  posts [post], at most [6'~1.8 m] clear
  height [6'~1.8 m]    bottom [2"~50 mm] above ground
  slats between posts
  cleats [cleat]
  fill [pattern]
}`,
      'a straight screen of level slats between posts',
    ),
  ],
  Gate: [
    one(
      'gate',
      `gate [name] in [run] {
  opening [42"~1050 mm] from [8'~2.4 m]
  hinges on [left|right]    opens to [garden]
  frame [rail]
  fill [pattern]
}`,
      'a gate with a framed leaf',
    ),
  ],
  Deck: [
    one(
      'deck',
      `deck [name] {
  surface up [25-1/2"~650 mm]
  boards [1"~28 mm]
  joists [1-1/2"~45 mm] by [7-1/4"~240 mm], [16"~400 mm] on center
  rim [1-1/2"~45 mm]
}`,
      'an edge of a deck that a run stands on',
    ),
  ],
  Measured: [
    one(
      'measured',
      `measured [run] {
  bay [1] planned [6'~1800 mm], top [6'~1800 mm], middle [6'~1800 mm], bottom [6'~1800 mm]
}`,
      'what stands of a run, as measured: slats are cut to it',
    ),
  ],
  MeasuredBoard: [
    one(
      'measured board',
      `measured board [name] {
  width [5-7/16"~138 mm], [5-3/8"~137 mm]
}`,
      'what boards measure as they came: gaps and the story pole are worked out with their mean',
    ),
  ],
  Viewer: [
    one(
      'viewer',
      `viewer [name] {
  at [12'~3.6 m] along [run], [10'~3 m] [behind|in front]
  eye [5' 4"~1.6 m]
}`,
      'someone who looks: where they stand, and how high their eye is above the floor there',
    ),
  ],
  Place: [
    one(
      'place',
      `place [name] {
  at [12'~3.6 m] along [run], [6'~1.8 m] [in front|behind]
  width [6'~1.8 m]
  from [1'~300 mm] to [4'~1.2 m] above ground
}`,
      'what is to be hidden: an upright area along a run',
    ),
  ],
  Hide: [one('hide', 'hide [place] from [viewer] [90] %', 'how much of a place a viewer must not see')],
  Option: [
    one(
      'option',
      `option [name] {
  in pattern [name]: gap [3/8"~10 mm]
}`,
      'the job as it would be with other statements, to be laid beside it',
    ),
  ],
  Quote: [
    one(
      'quote',
      `quote {
  labor $[48] per hour
  task [fixing] [6] minutes per [slat|post|run|gate|board|cut]
  price [screw|concrete|gravel|finish|hinge|latch|cap] $[0.10] each
  overhead [15] %
  markup [25] %
}`,
      'rates and prices; what is not given is not made up',
    ),
  ],
  OnHand: [
    one(
      'on hand',
      'on hand {\n  [board] [4] of [5\' 10"~1.8 m]\n}',
      'boards that lie in the yard; they cost nothing',
    ),
  ],
  Cap: [
    one(
      'cap',
      `cap [name] {
  [flat|hipped]    thickness [1"~25 mm]    overhang [1/2"~12 mm]
}`,
      'what posts wear on top',
    ),
  ],
};
