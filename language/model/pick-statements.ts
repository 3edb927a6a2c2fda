import { type Node, originOf, type Reader, tell } from './reader.ts';

/** The first statement of a kind in a block. */
export type Picked<S extends Node> = <T extends S['$type']>(type: T) => Extract<S, { $type: T }> | undefined;

/** What each statement is called when it is spoken of, by node type. */
const WORDS: Readonly<Record<string, string>> = {
  MeasureStatement: 'measure',
  SeeThroughLimit: 'see-through',
  GapLimit: 'gap at most',
  AlikeDemand: 'alike from both sides',
  HeightLimit: 'limit height',
  WindStatement: 'wind',
  SoilStatement: 'soil',
  FrostStatement: 'frost',
  FittedStatement: 'fitted',
  TicketStatement: 'ticket',
  OrderedStatement: 'ordered',
  SpeciesStatement: 'species',
  GradeStatement: 'grade',
  BendingStatement: 'bending',
  StiffnessStatement: 'stiffness',
  DensityStatement: 'density',
  WallStatement: 'wall',
  HoleStatement: 'hole',
  KindStatement: 'kind',
  RulesStatement: 'rules',
  DropStatement: 'drop',
  PoolStatement: 'pool',
  MoneyStatement: 'money',
  SawStatement: 'saw kerf',
  CutAim: 'cut for',
  ScrewsStatement: 'screws',
  TreatedStatement: 'treated',
  SparesStatement: 'spares',
  WidthStatement: 'width',
  ThicknessStatement: 'thickness',
  AlongStatement: 'along',
  ThroughStatement: 'through',
  MadeOfStatement: 'made of',
  LengthsStatement: 'lengths',
  SpanLimit: 'span',
  RepeatStatement: 'repeat',
  PatternGap: 'gap',
  EdgeGap: 'edge gap',
  EndRule: 'end',
  Fit: 'fit',
  SeenFrom: 'seen from',
  RunLength: 'length',
  PostsStatement: 'posts',
  GatePosts: 'posts',
  EmbedStatement: 'embed',
  PostTops: 'tops',
  HeightStatement: 'height',
  BottomStatement: 'bottom',
  GroundStatement: 'ground',
  GroundAcross: 'ground across',
  SlopeStatement: 'slope',
  BeginsAtWall: 'begins at wall',
  EndsAtWall: 'ends at wall',
  ScribedFiller: 'scribed filler',
  LastCourse: 'last course',
  KickBoard: 'kick board',
  OnDeck: 'on',
  SurfaceStatement: 'surface',
  BoardsStatement: 'boards',
  JoistsStatement: 'joists',
  RimStatement: 'rim',
  BlockingStatement: 'blocking',
  GroundBelow: 'ground',
  PlacedStatement: 'placed',
  AfterStatement: 'after',
  LinesStatement: 'lines as',
  AllElse: 'all else as',
  CornerStatement: 'corner',
  SlatsStatement: 'slats',
  ScrewsLook: 'screws',
  CleatsStatement: 'cleats',
  RailsStatement: 'rails',
  StiffenersStatement: 'stiffeners',
  BattensStatement: 'battens',
  JointsStatement: 'joints',
  JointGap: 'joint gap',
  CapsStatement: 'caps',
  CollarsStatement: 'collars',
  TemporaryBracing: 'temporary bracing',
  CapShape: 'flat or hipped',
  CapEdge: 'edge',
  Overhang: 'overhang',
  EndGap: 'end gap',
  FillStatement: 'fill',
  FlipStatement: 'flip',
  Opening: 'opening',
  HingeSide: 'hinges',
  OpensTo: 'opens to',
  HingeGap: 'hinge gap',
  AccessibleGate: 'accessible',
  LatchGap: 'latch gap',
  FrameStatement: 'frame',
  GateRails: 'rails',
  LeavesStatement: 'leaves',
  BraceStatement: 'brace',
  AtSpot: 'at',
  ToSpot: 'to',
  EyeStatement: 'eye',
  FloorStatement: 'floor',
  HeightsStatement: 'from',
};

/**
 * Sorts a block's statements by kind. A second one of a kind is told and not used, so is one that does
 * not belong: `allowed` lists node types where not all that parse do.
 */
export function pickStatements<S extends Node>(
  reader: Reader,
  block: string,
  statements: readonly S[] | undefined,
  allowed?: ReadonlySet<string>,
): Picked<S> {
  const first = new Map<string, S>();
  for (const statement of statements ?? []) {
    const what = WORDS[statement.$type];
    // A statement that broke off before it took shape; parsing tells of it.
    if (what === undefined) continue;
    const earlier = first.get(statement.$type);
    if (allowed && !allowed.has(statement.$type))
      tell(reader, 'wrong-statement', originOf(reader, statement), { what, block });
    else if (earlier)
      tell(reader, 'stated-twice', originOf(reader, statement), { what, block }, [
        { origin: originOf(reader, earlier), note: what },
      ]);
    else first.set(statement.$type, statement);
  }
  return (type) => first.get(type) as never;
}

/** Tells, at a block's name, what it lacks. */
export function tellMissing(
  reader: Reader,
  block: Node & { readonly name?: string },
  what: string,
  candidates: readonly string[] = [],
): undefined {
  tell(reader, 'missing-statement', originOf(reader, block, 'name'), {
    what,
    block: block.$type.toLowerCase(),
    name: block.name ?? '',
    candidates: candidates.join(', '),
  });
  return undefined;
}
