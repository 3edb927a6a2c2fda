import { one, type StatementSnippets } from './snippet.ts';

/** Statements of stock and patterns, by rule of the grammar. */
export const STOCK_SNIPPETS: StatementSnippets = {
  WallStatement: [one('wall', 'wall [1/8"~3 mm]', 'of a tube; what states none is full')],
  ThicknessStatement: [one('thickness', 'thickness [3/4"~20 mm]', 'through the screen')],
  MeasuredWidth: [
    one('width', 'width [5-7/16"~138 mm], [5-3/8"~137 mm]', 'as measured, one board or several'),
  ],
  MeasuredThickness: [
    one('thickness', 'thickness [11/16"~18 mm], [3/4"~19 mm]', 'as measured, one board or several'),
  ],
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
};
