import { one, type StatementSnippets } from './snippet.ts';

/** Statements of a job, what it demands and costs, who looks, by rule of the grammar. */
export const JOBS_SNIPPETS: StatementSnippets = {
  PropertyStatement: [
    one(
      'property line',
      "property line [2'~600 mm] [behind|in front of] [run]",
      'along a run, from the middle of its posts',
    ),
  ],
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
  OptionRun: [one('in run', 'in run [name]: []', "a statement in place of the run's own")],
  OptionGate: [one('in gate', 'in gate [name]: []', "a statement in place of the gate's own")],
  OptionPattern: [one('in pattern', 'in pattern [name]: []', "a statement in place of the pattern's own")],
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
  MoneyStatement: [one('money', 'money [USD]', 'currency of all prices')],
  SawStatement: [
    one(
      'saw kerf',
      'saw kerf [1/8"~3 mm], trim [1/2"~10 mm], keep [2\'~600 mm]',
      'what a cut takes, what is cut off each board first, and offcuts that are kept',
    ),
  ],
  CutAim: [
    one('cut for', 'cut for least [waste|cost]', 'what boards are planned for; cost where it is not stated'),
    one(
      'cut for fewest settings',
      'cut for fewest settings, up to [5] % more',
      'boards in few ways, so that the stop is set seldom, at the least cost or a little more',
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
  WidthStatement: [one('width', 'width [5-1/2"~140 mm]', 'the face seen')],
  HeightLimit: [one('limit height', "limit height [6'~1.8 m]", 'above the lowest ground within each bay')],
  SightTriangle: [
    one(
      'sight triangle',
      "sight triangle at [0'~0 m], [0'~0 m], legs [25'~7.5 m] bearing [90°] and [25'~7.5 m] bearing [0°]",
      'a corner of roads to be looked across',
    ),
  ],
  OrderedStatement: [one('ordered', 'ordered "[2026-05-01]"', 'the day materials were ordered')],
  AgreedStatement: [
    one('agreed', 'agreed "[2026-04-20]" by "[client]"', 'the day what is built was agreed to, and by whom'),
  ],
  TicketStatement: [
    one(
      'ticket',
      'ticket "[NUMBER]", called "[2026-05-01]", digging "[2026-05-06]"',
      'the notice given before digging; add `, until "2026-05-20"` for when it runs out',
    ),
  ],
};
