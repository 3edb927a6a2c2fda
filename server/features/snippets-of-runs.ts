import { one, type StatementSnippets } from './snippet.ts';

/** Statements of runs, decks and what was measured, by rule of the grammar. */
export const RUNS_SNIPPETS: StatementSnippets = {
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
  StairsStatement: [
    one(
      'stairs',
      'stairs from [6\'~1800 mm] to [9\'~2700 mm], down [30"~760 mm], going [10"~260 mm]',
      'go down from the edge between two stations, how far down, and how deep a tread is; a gate there opens onto the deck',
    ),
  ],
  GroundBelow: [one('ground', "ground down [2'~600 mm]", 'below the deck, from the datum')],
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
    one(
      'post planned at',
      `post [1] planned at [6'~1800 mm], leans [left|right] [1/4"~6 mm] in [4'~1.2 m]`,
      'the same, held to the post that was planned there',
    ),
    one(
      'post off',
      'post [1] off [1/2"~12 mm] toward [front|back]',
      'how far a post stands off the line of the run',
    ),
  ],
  MeasuredHeight: [one('height', "height [6'~1800 mm]", 'top of the slats above ground, as it can be now')],
  MeasuredBottom: [
    one('bottom', 'bottom [2"~50 mm]', 'lowest edge of the slats above ground, as it is to be now'),
  ],
  CutSlats: [
    one('cut', 'cut bay [1] courses [1] to [6]', 'slats that are cut already, to the plan'),
    one(
      'cut at',
      "cut bay [1] courses [1] to [6] at [6'~1800 mm]",
      'slats that are cut already, to a length',
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
  HoleStatement: [one('hole', 'hole [12"~300 mm] diameter, gravel [6"~150 mm]', 'what each post stands in')],
  SeenFrom: [one('seen from', 'seen from [garden]', 'the side its front looks to')],
  RunLength: [
    one('length', "length [24'~7.2 m] over posts", 'outside to outside of the end posts'),
    one('length between walls', "length [24'~7.2 m] between walls", 'from wall to wall, with both gaps'),
  ],
  BeginsAtWall: [
    one(
      'begins at wall',
      'begins at wall, [1-1/2"~40 mm] off',
      'a wall past the first post, and how far off it; `toward` the run and `away` from it say how it strays from plumb',
    ),
    one(
      'begins at wall, leans',
      `begins at wall, [1-1/2"~40 mm] off, leans [toward|away] [1/2"~12 mm] in [6'~1.8 m]`,
      'a wall past the first post that is out of plumb',
    ),
  ],
  EndsAtWall: [
    one('ends at wall', 'ends at wall, [1-1/2"~40 mm] off', 'a wall past the last post, and how far off it'),
    one(
      'ends at wall, measured',
      `ends at wall, [1-1/2"~40 mm] off, at [0'~0 m] toward [0"~0 mm], at [3'~900 mm] toward [1/4"~6 mm], at [6'~1.8 m] away [1/8"~3 mm]`,
      'a wall past the last post, measured from a plumb line at heights above the ground there',
    ),
  ],
  ScribedFiller: [
    one(
      'scribed filler',
      'scribed filler [board], at least [1/2"~12 mm]',
      'an upright board from the end post to the wall, cut to its line; no narrower than that',
    ),
  ],
  PostsStatement: [
    one('posts, at most', "posts [post], at most [6'~1.8 m] clear", 'fewest equal bays within a limit'),
    one('posts, bays', 'posts [post], [4] bays', 'a number of equal bays'),
    one('posts, at stations', "posts [post], at [6', 12'~1.8 m, 3.6 m]", 'where each stands'),
  ],
  EmbedStatement: [one('embed', "embed [3'~900 mm]", 'post below ground; in a gate, of its posts')],
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
    one('slope racked', 'slope racked', 'rails slope with the ground, upright slats plumb on them'),
  ],
  LastCourse: [
    one('last course follows ground', 'last course follows ground', 'one more below, ripped with a taper'),
  ],
  KickBoard: [
    one(
      'kick board',
      'kick board [board], [1/2"~12 mm] above ground, follows ground',
      'closes the space under the slats',
    ),
  ],
  TemporaryBracing: [
    one(
      'temporary bracing',
      "temporary bracing [board], [4'~1200 mm] up, [4'~1200 mm] out",
      'sets the posts and comes off again: two strips a bay, two braces to stakes at each post',
    ),
    one(
      'temporary bracing, bay by bay',
      "temporary bracing [board], strips at [6\"~150 mm] and [5'~1500 mm], stakes [board] [2'~600 mm], bay by bay",
      'with heights of the strips, stakes of their own, and no more pieces than one bay takes',
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
    one(
      'after, closed by',
      'after [], steps [back|forward] [6"~150 mm], closed by [return|filler board]',
      'and what closes the offset: slats square to both runs, or a board',
    ),
    one(
      'after, closed by panel',
      `after [], [4'~1.2 m] on, steps [back|forward] [6"~150 mm], closed by panel`,
      'a bay at an angle from one plane to the other',
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
    one('slats in grooves', 'slats in grooves, [5/8"~15 mm] deep', 'cut into the posts or the frame'),
    one('slats in channels', 'slats in channels []', 'on the posts or the frame'),
    one('slats through split posts', 'slats through split posts', 'posts are two of their stock, bolted'),
  ],
  ScrewsLook: [
    one('screws', 'screws [plugged|hidden|alternate]', 'how they are kept from telling the sides apart'),
  ],
  CleatsStatement: [one('cleats', 'cleats []', 'hold slats that stand between')],
  RailsStatement: [one('rails', 'rails []', 'carry upright slats')],
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
  JointsStatement: [
    one('joints', 'joints [staggered|in line]', 'where slats on a face of the posts meet end to end'),
    one('joints at every', 'joints at every [2] posts', 'the same in every course'),
  ],
  JointGap: [one('joint gap', 'joint gap [1/8"~3 mm]', 'between slats that meet end to end')],
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
};
