import type * as ast from '../grammar/index.ts';
import { isStock } from '../grammar/index.ts';
import type { BrokenRun, Job, RunSpec } from './job.ts';
import { pickStatements } from './pick-statements.ts';
import { readDecisions } from './read-decisions.ts';
import { tellCaps } from './read-dressing.ts';
import { readLength } from './read-length.ts';
import { withoutLineCircles } from './read-lines-as.ts';
import { readMaterial } from './read-material.ts';
import { readMeasure } from './read-measure.ts';
import { readAllMeasured, withMeasured } from './read-measured.ts';
import { readMeasuredStock } from './read-measured-stock.ts';
import { readNames } from './read-names.ts';
import { readNotices } from './read-notices.ts';
import { readPattern } from './read-pattern.ts';
import { readPrivacy } from './read-privacy.ts';
import { withPropertyLines } from './read-property-lines.ts';
import { readQuote } from './read-quote.ts';
import { readRules } from './read-rules.ts';
import { type RunSurroundings, readRun, tellGateRun } from './read-run.ts';
import { readCutAim, readOnHand, readSaw } from './read-saw.ts';
import { readSite } from './read-site.ts';
import { readStock } from './read-stock.ts';
import { readViews } from './read-views.ts';
import { withoutJoinedWalls } from './read-walls.ts';
import { follow, type JobContext, makeReader, originOf, type Reader, tell } from './reader.ts';
import { NO_BINDINGS } from './resolve-parameter.ts';
import { untangled } from './untangle-placements.ts';

/**
 * The job of one file: plain data with units resolved, references followed and defaults filled.
 *
 * Works on any tree, however broken, and never throws: what cannot be worked out is left out, and what
 * the text itself has wrong is among the `problems`. References that lead nowhere are told by linking,
 * so here they only leave their run broken. Problems of other files are theirs.
 *
 * @param root a linked file
 */
export function buildJob(root: ast.SlatFile, context: JobContext): Job {
  const opened = makeReader(root, context);
  const elements = root.elements ?? [];
  const node = elements.find((element) => element.$type === 'Job');
  const pick = pickStatements(opened, 'job', node?.statements);
  const measure = readMeasure(opened, pick('MeasureStatement'), node ?? root);
  const currency = currencyOf(opened, pick('MoneyStatement'));
  const reader: Reader = { ...opened, measure: measure.value, ...(currency ? { currency } : {}) };
  const later = readNames(reader);
  const privacy = readPrivacy(reader, pick('SeeThroughLimit'), pick('GapLimit'));
  const limit = pick('HeightLimit');
  const heightLimit = readLength(reader, limit?.limit, { what: 'limit height' });
  const alike = pick('AlikeDemand');
  const screws = readLength(reader, pick('ScrewsStatement')?.length, { what: 'screws' });
  const site = readSite(reader, pick);
  const stock: Job['stock'] = elements.flatMap((element) => {
    if (element.$type === 'Material') readMaterial(reader, element);
    // Read for itself: what is wrong with it is told whether or not a run uses it.
    if (element.$type === 'Pattern') readPattern(reader, element, NO_BINDINGS);
    return isStock(element) ? (readStock(reader, element) ?? []) : [];
  });
  const measuredStock = readMeasuredStock(reader);
  tellCaps(reader);
  const saw = readSaw(reader, pick('SawStatement'), pick('SparesStatement'));
  const trim = saw.saw.trim?.value;
  const runs = withPropertyLines(
    reader,
    node,
    readRuns(reader, later, { ...site, ...(trim === undefined ? {} : { trim }) }),
  );
  const job = {
    uri: context.uri,
    origin: originOf(reader, node ?? root),
    measure,
    privacy,
    ...(heightLimit ? { heightLimit } : {}),
    site,
    ...readDecisions(reader, node),
    ...readViews(reader, later),
    rules: readRules(reader, pick('RulesStatement')),
    ...readNotices(reader, node, pick),
    ...(currency ? { currency } : {}),
    ...saw,
    ...readCutAim(reader, pick('CutAim')),
    ...(screws ? { screws } : {}),
    quote: readQuote(
      reader,
      elements.filter((element) => element.$type === 'Quote'),
    ),
    onHand: readOnHand(
      reader,
      elements.filter((element) => element.$type === 'OnHand'),
    ),
    options: elements.flatMap((element) =>
      element.$type === 'Option' && element.name?.trim() && !later.has(element)
        ? [{ value: element.name, origin: originOf(reader, element) }]
        : [],
    ),
    stock,
    measuredStock,
    runs,
  };
  const problems = [...reader.problems.values()];
  const demand = alike ? { alike: originOf(reader, alike) } : {};
  return { ...job, ...demand, ...(node?.name !== undefined ? { name: node.name } : {}), problems };
}

/** ISO code of the job's money; told when it is none. */
function currencyOf(reader: Reader, statement: ast.MoneyStatement | undefined): string | undefined {
  const word = statement?.currency;
  if (!statement || word === undefined) return undefined;
  if (/^[A-Z]{3}$/.test(word)) return word;
  const args = {
    word,
    place: 'currency',
    suggestion: '',
    known: 'USD, EUR, GBP, CAD, AUD and other codes of ISO 4217',
  };
  tell(reader, 'unknown-word', originOf(reader, statement, 'currency'), args);
  return undefined;
}

/** Runs in file order, each with its gates. One that has the name of an earlier one is left out. */
function readRuns(
  reader: Reader,
  later: ReadonlySet<ast.Element>,
  site: RunSurroundings,
): readonly (RunSpec | BrokenRun)[] {
  const gates = new Map<ast.Run, ast.Gate[]>();
  const runs: ast.Run[] = [];
  for (const element of reader.root.elements ?? []) {
    if (element.$type === 'Run' && element.name?.trim() && !later.has(element)) runs.push(element);
    if (element.$type !== 'Gate' || !element.name?.trim() || later.has(element)) continue;
    const run = follow(element.run);
    if (!run) continue;
    if (run.$container !== reader.root) tellGateRun(reader, element, run, 'other-file');
    gates.set(run, [...(gates.get(run) ?? []), element]);
  }
  const measured = readAllMeasured(reader);
  const read = runs.map((run) => {
    const spec = readRun(reader, run, gates.get(run) ?? [], site);
    return 'broken' in spec ? spec : withMeasured(reader, spec, measured.get(run));
  });
  return withoutLineCircles(reader, withoutJoinedWalls(reader, untangled(reader, read)));
}
