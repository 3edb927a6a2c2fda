import { EmptyFileSystemProvider, type FileSystemNode, type FileSystemProvider, type URI } from 'langium';
import type { SeenFile } from './worker-messages.ts';

/** Files that are known because someone has sent their texts; there are no others. */
export class ToldFiles extends EmptyFileSystemProvider implements FileSystemProvider {
  private texts = new Map<string, string>();

  /** Takes the files there are now; those that are new or other than before, and those that are gone. */
  tell(files: readonly SeenFile[]): {
    readonly changed: readonly string[];
    readonly gone: readonly string[];
  } {
    const before = this.texts;
    this.texts = new Map(files.map(({ uri, text }) => [uri, text]));
    return {
      changed: files.filter(({ uri, text }) => before.get(uri) !== text).map(({ uri }) => uri),
      gone: [...before.keys()].filter((uri) => !this.texts.has(uri)),
    };
  }

  has(uri: URI): boolean {
    return this.texts.has(uri.toString());
  }

  override async stat(uri: URI): Promise<FileSystemNode> {
    return this.statSync(uri);
  }

  override statSync(uri: URI): FileSystemNode {
    this.textOf(uri);
    return { isFile: true, isDirectory: false, uri };
  }

  override async readFile(uri?: URI): Promise<string> {
    return this.textOf(uri);
  }

  override readFileSync(uri?: URI): string {
    return this.textOf(uri);
  }

  private textOf(uri: URI | undefined): string {
    const text = uri && this.texts.get(uri.toString());
    if (text === undefined) throw new Error(`${uri?.toString()} was not sent`);
    return text;
  }
}
