/** What a statement or an element begins as when it is chosen from the list. */
export interface StatementSnippet {
  readonly label: string;
  /** Square brackets stand for tab stops: `[6'~1.8 m]` by system, `[left|right]` a choice, `[]` empty. */
  readonly body: string;
  readonly about: string;
}

/** The body as editors take it, with lengths of one system. */
export function snippetText(body: string, system: 'imperial' | 'metric'): string {
  let stop = 0;
  return body.replace(/\[([^\]]*)\]/g, (_, inside: string) => {
    stop++;
    const [imperial = '', metric = imperial] = inside.split('~');
    const text = system === 'metric' ? metric : imperial;
    if (text === '') return `$${stop}`;
    const choices = text.split('|');
    return choices.length > 1 ? `\${${stop}|${choices.join(',')}|}` : `\${${stop}:${text}}`;
  });
}

const one = (label: string, body: string, about: string): StatementSnippet => ({ label, body, about });

/** By rule of the grammar. A rule that is not here gets its bare words. */
export const STATEMENT_SNIPPETS: Readonly<Record<string, readonly StatementSnippet[]>> = {
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
  PropertyStatement: [
    one(
      'property line',
      "property line [2'~600 mm] [behind|in front of] [run]",
      'along a run, from the middle of its posts',
    ),
  ],
  AllElse: [one('all else as', 'all else as [run]', 'what is not stated here is as in another run')],
  LinesStatement: [one('lines as', 'lines as [run]', 'goes on with the slat lines of another run')],
  OnDeck: [one('on', 'on [deck], posts [outside rim|inside frame|to footing]', 'at the edge of a deck')],
  SurfaceStatement: [one('surface', 'surface [up|down] [25-1/2"~650 mm]', 'from the datum')],
  BoardsStatement: [one('boards', 'boards [1"~28 mm]', 'thickness of the deck boards')],
  JoistsStatement: [
    one(
      'joists',
      'joists [1-1/2"~45 mm] by [7-1/4"~240 mm], [16"~400 mm] on center from [3/4"~22 mm]',
      'square to the edge',
    ),
    one(
      'joists along edge',
      'joists [1-1/2"~45 mm] by [7-1/4"~240 mm], along edge',
      'the rim is one of them',
    ),
  ],
  RimStatement: [one('rim', 'rim [1-1/2"~45 mm], double', 'around the joists; one layer, or two')],
  BlockingStatement: [one('blocking', "blocking at [4'~1.2 m]", 'between joists, for posts to be tied to')],
  GroundBelow: [one('ground', "ground down [2'~600 mm]", 'below the deck, from the datum')],
  Measured: [
    one(
      'measured',
      `measured [run] {
  bay [1] planned [6'~1800 mm], top [6'~1800 mm], middle [6'~1800 mm], bottom [6'~1800 mm]
}`,
      'what stands of a run, as measured: slats are cut to it',
    ),
  ],
  MeasuredBay: [
    one(
      'bay',
      "bay [1] planned [6'~1800 mm], top [6'~1800 mm], middle [6'~1800 mm], bottom [6'~1800 mm]",
      'clear from post to post at three heights of its slats, and what was planned then',
    ),
    one('bay clear', "bay [1] clear [6'~1800 mm]", 'clear from post to post at the middle of its slats'),
  ],
  MeasuredPost: [
    one(
      'post leans',
      `post [1] leans [left|right] [1/4"~6 mm] in [4'~1.2 m]`,
      'how far a post is out of plumb',
    ),
  ],
  CutSlats: [
    one('cut', 'cut bay [1] courses [1] to [6]', 'slats that are cut already, to the plan'),
    one(
      'cut at',
      "cut bay [1] courses [1] to [6] at [6'~1800 mm]",
      'slats that are cut already, to a length',
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
  AtSpot: [
    one(
      'at',
      "at [12'~3.6 m] along [run], [10'~3 m] [behind|in front]",
      'a station of a run, and how far off its posts',
    ),
  ],
  ToSpot: [
    one('to', "to [20'~6 m] along [run], [10'~3 m] [behind|in front]", 'the other end of the stretch walked'),
  ],
  EyeStatement: [one('eye', 'eye [5\' 4"~1.6 m]', 'above the floor')],
  FloorStatement: [
    one('floor', "floor [up|down] [2'~600 mm]", 'from the datum; the ground beside the run if not said'),
  ],
  HeightsStatement: [
    one('from', "from [1'~300 mm] to [4'~1.2 m] above ground", 'how low and how high it reaches'),
  ],
  RulesStatement: [
    one(
      'rules',
      'rules [us-model-codes|us-pool|us-corner|us-digging|canada-guards|australia-pool|england-fences|germany-screens]',
      'rules of a place to hold the job against; none is in force unless chosen',
    ),
  ],
  DropStatement: [
    one(
      'drop',
      "drop [4'~1.2 m] [behind|in front]",
      'the ground falls away there, so that the run guards it',
    ),
  ],
  GroundAcross: [
    one(
      'ground across',
      'ground across [rises|falls] [2"~50 mm] in [3\'~1 m] toward [front|back]',
      'how the ground slopes beside the run, for the arc of a gate',
    ),
  ],
  PoolStatement: [one('pool', 'pool [behind|in front]', "the run is part of a pool's barrier")],
  Option: [
    one(
      'option',
      `option [name] {
  in pattern [name]: gap [3/8"~10 mm]
}`,
      'the job as it would be with other statements, to be laid beside it',
    ),
  ],
  OptionRun: [one('in run', 'in run [name]: []', "a statement in place of the run's own")],
  OptionGate: [one('in gate', 'in gate [name]: []', "a statement in place of the gate's own")],
  OptionPattern: [one('in pattern', 'in pattern [name]: []', "a statement in place of the pattern's own")],
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
  LaborRate: [one('labor', 'labor $[48] per hour', 'for all tasks')],
  TaskTime: [
    one('task', 'task [fixing] [6] minutes per [slat|post|run|bay|gate|board|cut|job]', 'how long it takes'),
  ],
  ItemPrice: [
    one(
      'price',
      'price [screw|concrete|gravel|finish|hinge|latch|cap] $[0.10] each',
      'of what is bought besides boards',
    ),
  ],
  Surcharge: [
    one('overhead', 'overhead [15] %', 'of what it costs'),
    one('markup', 'markup [25] %', 'on what it costs'),
    one('margin', 'margin [20] %', 'of what is asked'),
    one('tax', 'tax [8] %', 'on what is asked'),
  ],
  Deposit: [one('deposit', 'deposit [30] %, at most $[1,000]', 'to begin with; caps differ by place')],
  ExtraLine: [
    one('extra', 'extra "[rock in a hole]" [2] at $[90]', 'what cannot be counted from the pieces'),
  ],
  OnHand: [
    one(
      'on hand',
      'on hand {\n  [board] [4] of [5\' 10"~1.8 m]\n}',
      'boards that lie in the yard; they cost nothing',
    ),
  ],
  MoneyStatement: [one('money', 'money [USD]', 'currency of all prices')],
  SawStatement: [
    one(
      'saw kerf',
      'saw kerf [1/8"~3 mm], trim [1/2"~10 mm]',
      'what a cut takes, and what is cut off each board first',
    ),
  ],
  SparesStatement: [
    one(
      'spares',
      'spares [5] %, at least [1]',
      'boards bought besides those that are cut, of each section and length',
    ),
  ],
  ScrewsStatement: [
    one('screws', 'screws [2-1/2"~60 mm]', 'their length, where it is not to follow from the slats'),
  ],
  TreatedStatement: [one('treated', 'treated', 'with preservative; its cut ends want sealing')],
  MeasureStatement: [
    one('measure', 'measure [inches|feet|mm|cm|m] to [1/16"~1 mm]', 'the tape, and its finest mark'),
  ],
  SeeThroughLimit: [
    one('see-through at most', 'see-through at most [20] %', 'open area allowed, straight on'),
  ],
  AlikeDemand: [
    one('alike from both sides', 'alike from both sides', 'asks every run to look alike from behind'),
  ],
  ThresholdStatement: [
    one('threshold', 'threshold [clearance-low] []', 'from where on a finding is told, by its name'),
  ],
  AcceptStatement: [
    one('accept', 'accept [] because "[]"', 'a finding that is known of and left as it is, with the reason'),
  ],
  GapLimit: [one('gap at most', 'gap at most [3/4"~20 mm]', 'widest gap allowed')],
  KindStatement: [one('kind', 'kind [wood|composite|pvc|aluminum|steel]', 'what it is')],
  WindStatement: [
    one(
      'wind, speed',
      'wind [115 mph~50 m/s], exposure [B|C|D], by [ASCE 7-16|ASCE 7-22|ASCE 7-10|ASCE 7-05]',
      'the speed your local authority names, and the standard it goes by',
    ),
    one('wind pressure', 'wind pressure [15 psf~0.7 kPa]', 'at the level of allowable stress'),
  ],
  SoilStatement: [
    one('soil', 'soil [clay|silt|sand|gravel|rock|bedrock]', 'bears posts sideways'),
    one('soil class', 'soil class [1|2|3|4|5]', 'of the table of presumptive bearing'),
  ],
  FrostStatement: [one('frost', 'frost [36"~900 mm]', 'how deep the ground freezes')],
  FittedStatement: [
    one(
      'fitted at',
      'fitted at [14] % moisture, [68 °F~20 °C]',
      'the day of fitting; what moves later moves from there',
    ),
  ],
  SpeciesStatement: [one('species', 'species [western-redcedar]', 'wood by the tables')],
  GradeStatement: [one('grade', 'grade [2|1]', 'of sawn lumber: No.1 or No.2')],
  BendingStatement: [
    one('bending', 'bending [1000 psi~7 MPa]', 'allowable stress in wind, as its maker states it'),
  ],
  StiffnessStatement: [one('stiffness', 'stiffness [1100000 psi~7.6 GPa]', 'modulus of elasticity')],
  DensityStatement: [one('density', 'density [23 lb/ft3~370 kg/m3]', 'as it is when dry')],
  WallStatement: [one('wall', 'wall [1/8"~3 mm]', 'of a tube; what states none is full')],
  HoleStatement: [one('hole', 'hole [12"~300 mm] diameter, gravel [6"~150 mm]', 'what each post stands in')],
  WidthStatement: [one('width', 'width [5-1/2"~140 mm]', 'the face seen')],
  ThicknessStatement: [one('thickness', 'thickness [3/4"~20 mm]', 'through the screen')],
  AlongStatement: [one('along', 'along [3-1/2"~90 mm]', 'along the run')],
  ThroughStatement: [one('through', 'through [3-1/2"~90 mm]', 'through the run')],
  MadeOfStatement: [one('made of', 'made of []', 'a material')],
  LengthsStatement: [one('lengths', "lengths [8', 12'~2.4 m, 3.6 m]", 'lengths it is sold in')],
  SpanLimit: [one('span at most', "span at most [4'~1.2 m]", 'longest clear span allowed')],
  RepeatStatement: [one('repeat', 'repeat []', 'slats, read from the top; upright, from the left')],
  PatternGap: [one('gap', 'gap [1/2"~12 mm]', 'between neighbors')],
  EdgeGap: [one('edge gap', 'edge gap [half]', 'outside the first and last slat')],
  EndRule: [
    one('end on', 'end on []', 'the slat that may be last'),
    one('end whole', 'end whole', 'only whole repeats'),
    one('end anywhere', 'end anywhere', 'any slat may be last'),
  ],
  Fit: [
    one('fit gaps', 'fit gaps [3/8"~10 mm] to [5/8"~16 mm]', 'what may be done so that it closes'),
    one('fit move ends', 'fit move ends', 'move bottom and top within their bands'),
    one('fit rip last', 'fit rip last not under [2"~50 mm]', 'rip the last slat narrower'),
  ],
  SeenFrom: [one('seen from', 'seen from [garden]', 'the side its front looks to')],
  RunLength: [one('length', "length [24'~7.2 m] over posts", 'outside to outside of the end posts')],
  PostsStatement: [
    one('posts, at most', "posts [post], at most [6'~1.8 m] clear", 'fewest equal bays within a limit'),
    one('posts, bays', 'posts [post], [4] bays', 'a number of equal bays'),
    one('posts, at stations', "posts [post], at [6', 12'~1.8 m, 3.6 m]", 'where each stands'),
  ],
  EmbedStatement: [one('embed', "embed [3'~900 mm]", 'post below ground')],
  PostTops: [one('tops', 'tops [1"~25 mm] above slats', 'posts above the highest slat')],
  HeightStatement: [one('height', "height [6'~1.8 m]", 'top of the highest slat above ground')],
  BottomStatement: [one('bottom', 'bottom [2"~50 mm] above ground', 'lowest edge above ground')],
  GroundStatement: [
    one('ground', 'ground [down|up] [4"~100 mm]', 'off the datum'),
    one(
      'ground at stations',
      `ground at 0' up 0", at [24'~7.2 m] down [9"~230 mm]`,
      'straight between; heights are above its highest',
    ),
  ],
  SlopeStatement: [
    one('slope level top', 'slope level top', 'more courses below as the ground falls'),
    one('slope in steps', 'slope in steps', 'bays step down by whole pitches'),
  ],
  HeightLimit: [one('limit height', "limit height [6'~1.8 m]", 'above the lowest ground within each bay')],
  SightTriangle: [
    one(
      'sight triangle',
      "sight triangle at [0'~0 m], [0'~0 m], legs [25'~7.5 m] bearing [90°] and [25'~7.5 m] bearing [0°]",
      'a corner of roads to be looked across',
    ),
  ],
  TicketStatement: [
    one(
      'ticket',
      'ticket "[NUMBER]", called "[2026-05-01]", digging "[2026-05-06]"',
      'the notice given before digging; add `, until "2026-05-20"` for when it runs out',
    ),
  ],
  NoHole: [
    one(
      'utility',
      'utility from [17\' 8"~5.4 m] to [20\' 2"~6.1 m] for "[gas]"',
      'a buried line: no post there, and by hand beside it',
    ),
    one(
      'no hole',
      'no hole from [17\' 8"~5.4 m] to [20\' 2"~6.1 m] for "[water pipe]"',
      'no post may stand here',
    ),
  ],
  PlacedStatement: [
    one(
      'placed at',
      "placed at [0'~0 m], [0'~0 m] bearing [90]°",
      'east and north of the datum point, and which way it goes',
    ),
  ],
  AfterStatement: [
    one('after, on', 'after [], [3/4"~20 mm] on', 'straight on, a space between, with posts of its own'),
    one(
      'after, steps',
      'after [], steps [back|forward] [6"~150 mm]',
      'straight on in a plane of its own, from a post of its own',
    ),
    one('after, turns', 'after [], turns [left|right], inside angle [90]°', 'from the end of another run'),
    one(
      'after, measured corner',
      "after [], turns [left|right], inside angle of [3'~900 mm], [4'~1200 mm], [5'~1500 mm]",
      'a corner by three sides: along both runs, and across',
    ),
  ],
  CornerStatement: [
    one('corner', 'corner [post|miter|lap|butt]', 'how its slats meet those of the run before'),
  ],
  SlatsStatement: [
    one('slats between posts', 'slats between posts', 'held by cleats'),
    one('slats on face', 'slats on [front|back] face', 'on the posts or rails'),
    one('slats on both faces', 'slats on both faces', 'the same lines on front and back'),
    one('slats on alternate faces', 'slats on alternate faces', 'one board by turns on front and back'),
  ],
  CleatsStatement: [one('cleats', 'cleats []', 'hold slats that stand between')],
  RailsStatement: [one('rails', 'rails []', 'carry upright slats')],
  Cap: [
    one(
      'cap',
      `cap [name] {
  [flat|hipped]    thickness [1"~25 mm]    overhang [1/2"~12 mm]
}`,
      'what posts wear on top',
    ),
  ],
  CapShape: [one('flat', 'flat', 'a plain board'), one('hipped', 'hipped', 'a slope on all four sides')],
  CapEdge: [one('edge', 'edge [1/2"~12 mm]', 'thickness at the rim of a hipped cap')],
  Overhang: [one('overhang', 'overhang [1/2"~12 mm]', 'past the post on every side')],
  StiffenersStatement: [
    one('stiffener', 'stiffener []', 'one across the slats at the middle of each bay'),
    one('stiffeners', "stiffeners [board], at most [3'~900 mm] apart", 'as many as keep a span'),
  ],
  BattensStatement: [one('battens', 'battens []', 'over slats on a face, at every post')],
  CapsStatement: [one('caps', 'caps []', 'on every post')],
  CollarsStatement: [one('collars', 'collars [board] at [bottom|top]', 'mitered trim round each post')],
  EndGap: [one('end gap', 'end gap [1/8"~3 mm]', 'at each end of a slat')],
  FillStatement: [one('fill', 'fill []', 'the pattern it is filled with')],
  FlipStatement: [
    one('flip upright', 'flip upright', 'slats stand'),
    one(
      'flip upright, top edge to',
      'flip upright, top edge to [left|right|hinges|latch]',
      'and where the top edge goes',
    ),
    one('flip over', 'flip over', 'top to bottom'),
    one('flip end for end', 'flip end for end', 'left to right'),
  ],
  Opening: [one('opening', `opening [42"~1050 mm] from [8'~2.4 m]`, 'clear between gate posts')],
  HingeSide: [
    one(
      'hinges on',
      'hinges on [left|right]',
      'as seen from the front; add `seen from` and a side to say it from there',
    ),
    one('hinges on, count', 'hinges on [left|right], [3] hinges', 'and how many'),
  ],
  OpensTo: [one('opens to', 'opens to [garden]', 'the side the leaf travels toward')],
  AccessibleGate: [one('accessible', 'accessible', 'asks it to be wide enough for a wheelchair')],
  HingeGap: [one('hinge gap', 'hinge gap [1/4"~6 mm]', 'beside the hinges')],
  LatchGap: [one('latch gap', 'latch gap [1/2"~12 mm]', 'beside the latch')],
  GatePosts: [
    one('posts', 'posts []', "the gate's own posts; two names: the one it hangs on, and the other"),
  ],
  FrameStatement: [one('frame', 'frame []', 'stiles and rails of the leaf')],
  LeavesStatement: [
    one(
      'leaves two',
      `leaves two, meeting gap [1/2"~12 mm]`,
      'that meet; the hinges named are those of the active leaf',
    ),
    one(
      'leaves two, active',
      `leaves two, meeting gap [1/2"~12 mm], active leaf [36"~900 mm]`,
      'and how wide the active one is',
    ),
  ],
  GateRails: [
    one('rails', 'rails [3]', 'in all, evenly spaced'),
    one('rails at', `rails at [3'~900 mm]`, 'middle rails: their middles above ground'),
    one('rails at course', 'rails at course [5]', 'middle rails that carry courses of the run on'),
  ],
  BraceStatement: [one('brace', 'brace [none]', 'from the low hinge corner up to the latch')],
};
