import { type FileSystemProvider, type LangiumDocument, URI } from 'langium';
import {
  createSlatCoreServices,
  type SlatCoreServices,
  type SlatSharedServices,
} from '../language/grammar/index.ts';
import { lentParser } from './lent-parser.ts';

/** Files that exist in a test only, by path; a path ending in a slash is a folder. Counts what is read. */
export class MemoryFiles implements FileSystemProvider {
  readonly contents = new Map<string, string>();
  readonly reads: string[] = [];

  constructor(files: Readonly<Record<string, string>> = {}) {
    for (const [path, text] of Object.entries(files)) this.contents.set(path, text);
  }

  statSync(uri: URI) {
    const isDirectory = [...this.contents.keys()].some((path) => path.startsWith(`${uri.path}/`));
    const isFile = this.contents.has(uri.path);
    if (!isFile && !isDirectory) throw new Error(`There is no ${uri.path}.`);
    return { isFile, isDirectory, uri };
  }

  readFileSync(uri: URI): string {
    this.reads.push(uri.path);
    const text = this.contents.get(uri.path);
    if (text === undefined) throw new Error(`There is no ${uri.path}.`);
    return text;
  }

  existsSync(uri: URI): boolean {
    return this.contents.has(uri.path);
  }

  readBinarySync(uri: URI): Uint8Array {
    return new TextEncoder().encode(this.readFileSync(uri));
  }

  readDirectorySync(uri: URI) {
    const inside = [...this.contents.keys()].filter((path) => path.startsWith(`${uri.path}/`));
    return inside.map((path) => ({ isFile: true, isDirectory: false, uri: URI.file(path) }));
  }

  stat = async (uri: URI) => this.statSync(uri);
  exists = async (uri: URI) => this.existsSync(uri);
  readBinary = async (uri: URI) => this.readBinarySync(uri);
  readFile = async (uri: URI) => this.readFileSync(uri);
  readDirectory = async (uri: URI) => this.readDirectorySync(uri);
}

export interface TestServices {
  readonly shared: SlatSharedServices;
  readonly slat: SlatCoreServices;
  readonly files: MemoryFiles;
  /** Loads a file with everything it uses, linked; not validated. */
  open(path: string): Promise<LangiumDocument>;
}

/** The language over files in memory. */
export function createTestServices(files: Readonly<Record<string, string>> = {}): TestServices {
  const memory = new MemoryFiles(files);
  const { shared, slat } = createSlatCoreServices({ fileSystemProvider: () => memory }, lentParser);
  return {
    shared,
    slat,
    files: memory,
    async open(path) {
      const document = await shared.workspace.LangiumDocuments.getOrCreateDocument(URI.file(path));
      await shared.workspace.DocumentBuilder.build([document]);
      return document;
    },
  };
}
