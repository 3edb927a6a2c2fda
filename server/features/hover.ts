import { type AstNode, AstUtils, type CstNode, CstUtils, GrammarAST, type LangiumDocument } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { HoverParams } from 'vscode-languageserver';
import { type Hover, MarkupKind } from 'vscode-languageserver-types';
import {
  isGate,
  isJob,
  isMaterial,
  isParameter,
  isPattern,
  isRun,
  isStock,
  nodePath,
  type SlatFile,
} from '../../language/grammar/index.ts';
import type { RunLayout } from '../../language/layout/index.ts';
import { patternAlone, stockAlone } from '../../language/model/index.ts';
import { formatLength, IMPERIAL, type Measure } from '../../language/units/index.ts';
import type { SlatServices } from '../services.ts';
import { jobContext, type Kept } from '../work/index.ts';
import { isFirstWord } from './grammar-phrases.ts';
import { bracingLines } from './hover-bracing.ts';
import { measuredLines } from './hover-measured.ts';
import { fitLines, leavesLines, lengthLines, patternLines, runLines, stockLines } from './hover-text.ts';
import { spanLines, type ToldWorking, workingsAt } from './hover-workings.ts';
import { plain } from './plain-markdown.ts';
import { STATEMENT_SNIPPETS } from './statement-snippets.ts';

/** What stands under the pointer amounts to. */
interface Told {
  readonly title: string;
  readonly lines: readonly string[];
  readonly workings?: readonly ToldWorking[];
}

/** Hovers: lengths in both systems, what names come to, and what a statement is for. */
export class SlatHover implements HoverProvider {
  private readonly services: SlatServices;

  constructor(services: SlatServices) {
    this.services = services;
  }

  getHoverContent(document: LangiumDocument, { position }: HoverParams): Hover | undefined {
    const root = document.parseResult.value.$cstNode;
    const leaf = root && CstUtils.findLeafNodeAtOffset(root, document.textDocument.offsetAt(position));
    if (!leaf || leaf.hidden) return undefined;
    const kept = this.services.shared.work.Keeper.of(document.uri.toString());
    const measure = kept?.work.job.measure.value ?? IMPERIAL;
    const told = this.ofLength(leaf) ?? this.ofName(leaf, kept, measure) ?? ofStatement(leaf, kept, measure);
    if (!told) return undefined;
    const parts = [told, ...(told.workings ?? [])];
    const value = parts
      .map(({ title, lines }) =>
        [`**${plain(title)}**`, '', ...lines.map((line) => `- ${plain(line)}`)].join('\n'),
      )
      .join('\n\n');
    return {
      contents: { kind: MarkupKind.Markdown, value },
      range: (CstUtils.getDatatypeNode(leaf) ?? leaf).range,
    };
  }

  private ofLength(leaf: CstNode): Told | undefined {
    const lines = /^\d/.test(leaf.text) ? lengthLines(leaf.text) : [];
    const [title, ...rest] = lines;
    return title === undefined ? undefined : { title, lines: rest };
  }

  private ofName(leaf: CstNode, kept: Kept | undefined, measure: Measure): Told | undefined {
    const [target] = this.services.references.References.findDeclarations(leaf);
    if (target) return this.ofNode(target, kept, measure);
    // The word that begins an element tells of the whole of it.
    const first = leaf.astNode.$cstNode?.offset === leaf.offset;
    return first ? this.ofNode(leaf.astNode, kept, measure) : undefined;
  }

  private ofNode(node: AstNode, kept: Kept | undefined, measure: Measure): Told | undefined {
    const document = AstUtils.getDocument(node);
    const root = document.parseResult.value as SlatFile;
    const context = jobContext(this.services.shared, document);
    if (isStock(node)) {
      const stock = stockAlone(root, context, measure, node);
      return {
        title: titleOf(node),
        lines: stock
          ? [...stockLines(stock, measure), ...spanLines(stock, kept, measure)]
          : ['cannot be read as written'],
      };
    }
    if (isPattern(node)) {
      const pattern = patternAlone(root, context, measure, node);
      return {
        title: titleOf(node),
        lines: pattern ? patternLines(pattern, measure) : ['cannot be read as written'],
      };
    }
    if (isMaterial(node)) {
      const kind = node.statements.find((statement) => statement.$type === 'KindStatement')?.kind;
      return {
        title: titleOf(node),
        lines: [kind ?? 'not stated: taken as wood'],
      };
    }
    if (isParameter(node)) {
      return {
        title: titleOf(node),
        lines: [`stands for ${node.default?.$cstNode?.text ?? 'nothing'} unless a fill says otherwise`],
      };
    }
    if (isRun(node)) return ofRun(node, kept, measure);
    if (isGate(node)) return ofGate(node, kept, measure);
    if (isJob(node) && kept) return ofJob(kept);
    return undefined;
  }
}

function ofRun(node: AstNode, kept: Kept | undefined, measure: Measure): Told {
  const path = nodePath(node);
  const run = kept?.runs.find(({ spec }) => spec.origin.path === path);
  if (!kept || !run) return { title: titleOf(node), lines: ['cannot be worked out yet'] };
  const stale = kept.stale.has(run) ? ['cannot be worked out now; these are the last good figures'] : [];
  return { title: titleOf(node), lines: [...stale, ...runLines(run, measure)] };
}

function ofGate(node: AstNode, kept: Kept | undefined, measure: Measure): Told {
  const path = nodePath(node);
  for (const run of kept?.runs ?? []) {
    const leaves = run.leaves.filter(({ spec }) => spec.origin.path === path);
    if (leaves.length > 0) {
      const lines = leavesLines(run, leaves, measure);
      return { title: titleOf(node), lines, workings: workingsAt(node, kept, measure) };
    }
  }
  return { title: titleOf(node), lines: ['cannot be worked out yet'] };
}

function ofJob({ work: { job, layout } }: Kept): Told {
  const measure = job.measure.value;
  const { seeThrough, gap } = job.privacy;
  const pieces = layout.runs.reduce((sum, run) => sum + run.pieces.length, 0);
  return {
    title: job.name === undefined ? 'job' : `job ${job.name}`,
    lines: [
      `shown in ${measure.unit}, marked to ${formatLength(measure.step, { ...measure, step: 1 })}${job.measure.origin.why === 'default' ? ' (nothing stated)' : ''}`,
      ...(seeThrough ? [`at most ${Math.round(seeThrough.value * 1000) / 10} % open straight on`] : []),
      ...(gap ? [`no gap wider than ${formatLength(gap.value, measure)}`] : []),
      `${layout.runs.length} of ${job.runs.length} runs worked out, ${pieces} pieces`,
    ],
  };
}

/** What a statement is for and, where it fills, how that comes out. */
function ofStatement(leaf: CstNode, kept: Kept | undefined, measure: Measure): Told | undefined {
  const word = leaf.grammarSource;
  if (!word || !GrammarAST.isKeyword(word)) return undefined;
  const rule = AstUtils.getContainerOfType(word, GrammarAST.isParserRule);
  if (!rule || !isFirstWord(rule, word)) return undefined;
  const snippets = STATEMENT_SNIPPETS[rule.name] ?? [];
  const about =
    snippets.length === 1
      ? snippets.map((one) => one.about)
      : snippets.map((one) => `${one.label}: ${one.about}`);
  const fills = leaf.astNode.$type === 'FillStatement' || leaf.astNode.$type === 'Fit';
  const fits = fills ? fitLines(fitsAt(leaf.astNode, kept?.runs ?? []), measure) : [];
  const workings = workingsAt(leaf.astNode, kept, measure);
  const measured =
    leaf.astNode.$type === 'MeasuredBay'
      ? measuredLines(nodePath(leaf.astNode), kept?.runs ?? [], measure)
      : [];
  const bracing =
    leaf.astNode.$type === 'TemporaryBracing'
      ? bracingLines(nodePath(leaf.astNode), kept?.runs ?? [], measure)
      : [];
  const lines = [...about, ...fits, ...measured, ...bracing];
  return lines.length + workings.length > 0 ? { title: word.value, lines, workings } : undefined;
}

function fitsAt(statement: AstNode, runs: readonly RunLayout[]) {
  const owner = statement.$container;
  const path = owner ? nodePath(owner) : '';
  if (isRun(owner))
    return runs.find(({ spec }) => spec.origin.path === path)?.fits.filter((fit) => !fit.gate) ?? [];
  return runs.flatMap((run) => {
    const leaf = run.leaves.find(({ spec }) => spec.origin.path === path);
    return leaf ? run.fits.filter((fit) => fit.gate === leaf.gate) : [];
  });
}

function titleOf(node: AstNode): string {
  return `${node.$type.toLowerCase()} ${(node as { name?: string }).name ?? ''}`.trim();
}
