import { type LangiumDocument, type LangiumDocuments, URI, UriUtils } from 'langium';
import type { SlatFile, Use } from './generated/ast.ts';
import { isUse } from './generated/ast.ts';
import { nodePath } from './node-path.ts';
import type { SlatSharedServices } from './services.ts';
import type { WorkspaceBounds } from './workspace-bounds.ts';

/** Greatest number of files one file may reach through `use`, itself included. */
export const MOST_FILES = 200;
/** Longest chain of `use`. */
export const DEEPEST_CHAIN = 32;

export type UseProblem =
  /** No text between the quotes. */
  | 'empty'
  | 'not-slat'
  | 'outside'
  | 'missing'
  | 'directory'
  | 'unreadable'
  /** The file reaches more files than {@link MOST_FILES}, or a longer chain than {@link DEEPEST_CHAIN}. */
  | 'too-many'
  | 'too-deep';

/** What became of one `use` of a file. */
export interface UseResult {
  /** As written. */
  readonly path: string;
  /** Node path of the statement. */
  readonly at: string;
  /** Address of the file meant, where it can be told. */
  readonly uri?: string;
  readonly problem?: UseProblem;
  /** When the file used leads back here: addresses from this file round to itself, this one left out at the end. */
  readonly cycle?: readonly string[];
}

interface Edge {
  readonly path: string;
  readonly at: string;
  readonly uri?: string;
  readonly problem?: 'empty' | 'not-slat' | 'outside';
}

/** Files reached from one file, nearest first. */
export interface Closure {
  readonly files: ReadonlySet<string>;
  /** Addresses used by the file itself through which a bound is passed. */
  readonly overflow: ReadonlyMap<string, 'too-many' | 'too-deep'>;
}

/** Who uses whom. Knows only what has been parsed; cycles are harmless and everything is bounded. */
export class UseGraph {
  private readonly edges = new Map<string, readonly Edge[]>();
  private readonly failures = new Map<string, UseProblem>();
  private readonly documents: LangiumDocuments;
  private readonly bounds: () => WorkspaceBounds;

  constructor(shared: SlatSharedServices) {
    this.documents = shared.workspace.LangiumDocuments;
    this.bounds = () => shared.workspace.WorkspaceBounds;
  }

  /** Reads the uses of a freshly parsed document. */
  update(document: LangiumDocument): void {
    const file = document.parseResult.value as SlatFile;
    const uses = (file.elements ?? []).filter(isUse);
    this.edges.set(
      document.uri.toString(),
      uses.map((use) => this.edgeOf(use, document.uri)),
    );
  }

  remove(uri: string): void {
    this.edges.delete(uri);
  }

  /** Addresses a document uses directly and may read. */
  targets(uri: string): string[] {
    return (this.edges.get(uri) ?? []).flatMap((edge) => (edge.uri && !edge.problem ? [edge.uri] : []));
  }

  /** Everything a file sees: itself, then what it uses, nearest first. */
  closure(uri: string): Closure {
    const files = new Set([uri]);
    const overflow = new Map<string, 'too-many' | 'too-deep'>();
    // Breadth first, each address with the use of the first file that leads to it.
    let level: [uri: string, via: string][] = this.targets(uri).map((target) => [target, target]);
    for (let depth = 1; level.length > 0; depth++) {
      const next: [string, string][] = [];
      for (const [target, via] of level) {
        if (files.has(target)) continue;
        if (depth > DEEPEST_CHAIN || files.size >= MOST_FILES) {
          overflow.set(via, depth > DEEPEST_CHAIN ? 'too-deep' : 'too-many');
          continue;
        }
        files.add(target);
        for (const further of this.targets(target)) next.push([further, via]);
      }
      level = next;
    }
    return { files, overflow };
  }

  /** Every document that sees one of the given ones, these included. */
  dependents(uris: ReadonlySet<string>): ReadonlySet<string> {
    const users = new Map<string, string[]>();
    for (const user of this.edges.keys()) {
      for (const target of this.targets(user)) {
        const known = users.get(target);
        if (known) known.push(user);
        else users.set(target, [user]);
      }
    }
    const found = new Set(uris);
    for (const uri of found) for (const user of users.get(uri) ?? []) found.add(user);
    return found;
  }

  /** Remembers why a file could not be loaded. */
  fail(uri: string, problem: UseProblem | undefined): void {
    if (problem) this.failures.set(uri, problem);
    else this.failures.delete(uri);
  }

  /** What became of each `use` of a document. */
  results(uri: string): UseResult[] {
    const { overflow } = this.closure(uri);
    return (this.edges.get(uri) ?? []).map((edge) => {
      if (edge.problem || edge.uri === undefined) return edge;
      const loaded = this.documents.hasDocument(URI.parse(edge.uri));
      const problem = loaded
        ? overflow.get(edge.uri)
        : (this.failures.get(edge.uri) ?? overflow.get(edge.uri));
      const cycle = this.wayBack(edge.uri, uri);
      return {
        ...edge,
        ...(loaded || problem ? (problem ? { problem } : {}) : { problem: 'missing' as const }),
        ...(cycle ? { cycle } : {}),
      };
    });
  }

  /** Shortest way from a used file back to the user, the user first. */
  private wayBack(from: string, to: string): string[] | undefined {
    const cameFrom = new Map<string, string | undefined>([[from, undefined]]);
    for (const [uri] of cameFrom) {
      if (uri === to) {
        const way: string[] = [];
        for (let step = cameFrom.get(uri); step !== undefined; step = cameFrom.get(step)) way.unshift(step);
        return [to, ...way];
      }
      if (cameFrom.size > MOST_FILES) return undefined;
      for (const target of this.targets(uri)) if (!cameFrom.has(target)) cameFrom.set(target, uri);
    }
    return undefined;
  }

  private edgeOf(use: Use, from: URI): Edge {
    const path = (use.path ?? '').trim();
    const edge = { path, at: nodePath(use) };
    if (path === '') return { ...edge, problem: 'empty' };
    const target = resolveUse(path, from);
    if (!target) return { ...edge, problem: 'outside' };
    const uri = target.toString();
    if (!this.bounds().isInside(target, from)) return { ...edge, uri, problem: 'outside' };
    if (UriUtils.extname(target) !== '.slat') return { ...edge, uri, problem: 'not-slat' };
    return { ...edge, uri };
  }
}

/** The file meant by a path as written, taken from the folder of the using file; undefined where it can have no address. */
export function resolveUse(path: string, from: URI): URI | undefined {
  try {
    const target = UriUtils.resolvePath(UriUtils.dirname(from), path);
    // Half a surrogate pair resolves, and only its address cannot be written.
    target.toString();
    return target;
  } catch {
    return undefined;
  }
}
