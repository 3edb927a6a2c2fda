import { findOverlaps, type Layout, type RunLayout } from '../layout/index.ts';
import type { Job, Problem } from '../model/index.ts';
import { asBuiltDiffers } from './as-built-differs.ts';
import { baysUnequal } from './bays-unequal.ts';
import { boardOverfilled } from './board-overfilled.ts';
import { boardTooLong } from './board-too-long.ts';
import { boardsMixed } from './boards-mixed.ts';
import { boughtUnused } from './bought-unused.ts';
import { braceFlat } from './brace-flat.ts';
import { braceFootBlocked } from './brace-foot-blocked.ts';
import { cornerLinesMiss } from './corner-lines-miss.ts';
import { cornerNotSquare } from './corner-not-square.ts';
import { deckPostMoment } from './deck-post-moment.ts';
import { deckPostConnection, deckPostInJoist, deckPostUnbacked } from './deck-posts.ts';
import type { JobCheck, LayoutCheck, RunCheck } from './define.ts';
import { depositOverLimit } from './deposit-over-limit.ts';
import { nearUtility, noTicket, ticketShort } from './digging.ts';
import { endGapUnusual } from './end-gap-unusual.ts';
import { facesDiffer } from './faces-differ.ts';
import { fillerNarrow, fillerWide } from './filler-width.ts';
import type { Finding, FindingKind } from './finding.ts';
import { gapCloses, gapGrows } from './gap-movement.ts';
import { gapTooWide } from './gap-too-wide.ts';
import { gapsDiffer } from './gaps-differ.ts';
import { hingeGapSmall, latchGapSmall } from './gate-gaps.ts';
import { gateInSlope } from './gate-in-slope.ts';
import { gateNarrow } from './gate-narrow.ts';
import { gatePostsShallow } from './gate-posts-shallow.ts';
import { hingePostBends, hingesFew } from './gate-strength.ts';
import { clearanceHigh, clearanceLow } from './ground-clearance.ts';
import { guardClimbable, guardLow, guardOpening, guardUnjudged } from './guard.ts';
import { heightOverLimit } from './height-over-limit.ts';
import { holeNarrow } from './hole-narrow.ts';
import { impossibleGeometry } from './impossible-geometry.ts';
import { jointGapSmall } from './joint-gap-small.ts';
import { jointUnsupported } from './joint-unsupported.ts';
import { leafScrapes } from './leaf-scrapes.ts';
import { leafTooWide } from './leaf-too-wide.ts';
import { linesLeftOver } from './lines-left-over.ts';
import { marksRounded } from './marks-rounded.ts';
import { noPrice } from './no-price.ts';
import { nominalSize } from './nominal-size.ts';
import { notMeasured } from './not-measured.ts';
import { offsetOpen } from './offset-open.ts';
import { opennessRelief } from './openness-relief.ts';
import { orderedEarly } from './ordered-early.ts';
import { overlapSmall } from './overlap-small.ts';
import { patternOpen } from './pattern-open.ts';
import { permitNeeded } from './permit-needed.ts';
import { placeSeen, sightUnclear } from './place-seen.ts';
import { planeOffset } from './plane-offset.ts';
import { grooveWeakens, slatLockedOut, slatSlipsOut } from './pocket-holds.ts';
import {
  poolClimbable,
  poolGapUnder,
  poolGateOpens,
  poolLatch,
  poolLow,
  poolOpening,
  poolUnjudged,
} from './pool.ts';
import { embedShallow, embedUnderFormula, frostDeeper } from './post-depth.ts';
import { postLeans } from './post-leans.ts';
import { postLengthTight } from './post-length-tight.ts';
import { postMovedForObstacle } from './post-moved-for-obstacle.ts';
import { postOffLine } from './post-off-line.ts';
import { postBends, postBendsScreening } from './post-strength.ts';
import { propertyLineCrossed, propertyLineNear } from './property-line.ts';
import { ripTooThin } from './rip-too-thin.ts';
import { screwShort, screwThrough } from './screw-length.ts';
import { inSightTriangle } from './sight-triangle.ts';
import { slatBends, slatSags } from './slat-strength.ts';
import { spanTooLong } from './span-too-long.ts';
import { sparesFew } from './spares-few.ts';
import { gateNarrowerThanStairs, gateOverStairs, stairHeadBlocked } from './stair-head.ts';
import { checkDecisions, decisionKinds } from './stated-decisions.ts';
import { fixesOf } from './stated-fixes.ts';
import { statedProblems } from './stated-problems.ts';
import { stepBreaksLines } from './step-breaks-lines.ts';
import { textProblems } from './text-problems.ts';
import { tooOpen } from './too-open.ts';
import { treatedEnds } from './treated-ends.ts';
import { wallGapLarge, wallGapSmall } from './wall-gap.ts';
import { wallInPost } from './wall-in-post.ts';
import { wallUnmeasured } from './wall-unmeasured.ts';
import { wasteHigh } from './waste-high.ts';

const JOB_CHECKS: readonly JobCheck[] = [nominalSize, boardsMixed, orderedEarly, noTicket, ticketShort];

const RUN_CHECKS: readonly RunCheck[] = [
  guardUnjudged,
  guardLow,
  guardOpening,
  guardClimbable,
  poolUnjudged,
  poolLow,
  poolGapUnder,
  poolOpening,
  poolClimbable,
  poolGateOpens,
  poolLatch,
  permitNeeded,
  gateInSlope,
  gateNarrow,
  gateOverStairs,
  gateNarrowerThanStairs,
  stairHeadBlocked,
  baysUnequal,
  linesLeftOver,
  boardTooLong,
  postLengthTight,
  boardOverfilled,
  screwShort,
  screwThrough,
  braceFlat,
  braceFootBlocked,
  deckPostConnection,
  deckPostInJoist,
  deckPostMoment,
  deckPostUnbacked,
  facesDiffer,
  slatSlipsOut,
  grooveWeakens,
  slatLockedOut,
  clearanceHigh,
  clearanceLow,
  gapTooWide,
  heightOverLimit,
  endGapUnusual,
  gatePostsShallow,
  marksRounded,
  hingeGapSmall,
  latchGapSmall,
  stepBreaksLines,
  leafScrapes,
  leafTooWide,
  jointUnsupported,
  jointGapSmall,
  overlapSmall,
  patternOpen,
  asBuiltDiffers,
  notMeasured,
  postLeans,
  postOffLine,
  postMovedForObstacle,
  ripTooThin,
  spanTooLong,
  slatBends,
  slatSags,
  postBends,
  postBendsScreening,
  embedShallow,
  embedUnderFormula,
  frostDeeper,
  holeNarrow,
  gapCloses,
  gapGrows,
  opennessRelief,
  hingesFew,
  hingePostBends,
  tooOpen,
  nearUtility,
  wallInPost,
  wallGapSmall,
  wallGapLarge,
  fillerNarrow,
  fillerWide,
  wallUnmeasured,
];

const LAYOUT_CHECKS: readonly LayoutCheck[] = [
  boughtUnused,
  depositOverLimit,
  noPrice,
  sparesFew,
  treatedEnds,
  wasteHigh,
  cornerLinesMiss,
  gapsDiffer,
  cornerNotSquare,
  planeOffset,
  offsetOpen,
  placeSeen,
  propertyLineCrossed,
  propertyLineNear,
  sightUnclear,
  inSightTriangle,
];

/** Every kind of finding there is: the one registry of code, severity, message and basis. */
export const FINDING_KINDS: readonly FindingKind[] = [
  ...textProblems,
  ...statedProblems,
  ...impossibleGeometry,
  ...JOB_CHECKS.map((check) => check.kind),
  ...RUN_CHECKS.map((check) => check.kind),
  ...LAYOUT_CHECKS.map((check) => check.kind),
  ...decisionKinds,
];

const BY_CODE = new Map(FINDING_KINDS.map((kind) => [kind.code, kind]));

/** The kind a code stands for. A code that is not registered is a defect and throws. */
export function findingKind(code: string): FindingKind {
  const kind = BY_CODE.get(code);
  if (!kind) throw new Error(`no finding is registered as ${code}`);
  return kind;
}

/** What the text says, in the language of the registry. */
export function messageOf(finding: Pick<Finding, 'code' | 'args'>): string {
  return findingKind(finding.code).message(finding.args);
}

/** Findings on the job as stated: problems of reading it, then the checks that need no piece. */
export function checkJob(job: Job): readonly Finding[] {
  return [
    ...job.problems.map(toldOf),
    ...JOB_CHECKS.flatMap((check) => check.check(job)),
    ...checkDecisions(job, BY_CODE),
  ];
}

/** Findings on one run's pieces: impossible geometry, then every check. Pure, so it can be remembered with the run. */
export function checkRun(run: RunLayout, job: Job): readonly Finding[] {
  return [...run.problems, ...findOverlaps(run)]
    .map(toldOf)
    .concat(RUN_CHECKS.flatMap((check) => check.check(run, job)));
}

/**
 * Codes of the errors and warnings of one run, each as often as it is told. What only informs is not worked out, so
 * that a search may ask for it of thousands of runs.
 */
export function warningCodes(run: RunLayout, job: Job): readonly string[] {
  const problems = [...run.problems, ...findOverlaps(run)].map(({ code }) => code);
  return [
    ...problems.filter((code) => findingKind(code).severity !== 'information'),
    ...WARNING_CHECKS.flatMap((check) => check.check(run, job).map(({ code }) => code)),
  ];
}

const WARNING_CHECKS = RUN_CHECKS.filter(({ kind }) => kind.severity !== 'information');

/** Findings on how runs meet, which no run knows by itself. */
export function checkLayout(layout: Layout, job: Job): readonly Finding[] {
  return LAYOUT_CHECKS.flatMap((check) => check.check(layout, job));
}

function toldOf(problem: Problem): Finding {
  const { code, origin, args, related } = problem;
  return {
    code,
    at: origin,
    args,
    related: related?.map((r) => ({ at: r.origin, note: r.note })) ?? [],
    fixes: fixesOf(problem),
  };
}
