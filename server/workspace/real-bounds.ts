import { realpathSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { type LangiumSharedCoreServices, URI } from 'langium';
import { DefaultWorkspaceBounds } from '../../language/grammar/index.ts';

/** Bounds on a real file system: links are followed first, so that none leads out of the workspace. */
export class RealWorkspaceBounds extends DefaultWorkspaceBounds {
  private readonly services: LangiumSharedCoreServices;
  private own: readonly URI[] = [];

  constructor(shared: LangiumSharedCoreServices) {
    super(shared);
    this.services = shared;
  }

  override setRoots(folders: readonly URI[]): void {
    super.setRoots(folders);
    this.own = folders;
  }

  override isInside(target: URI, from: URI): boolean {
    if (!super.isInside(target, from)) return false;
    if (target.scheme !== 'file') return true;
    const folders = this.services.workspace.WorkspaceManager.workspaceFolders ?? [];
    const real = URI.file(followed(target.fsPath));
    const allowed = folders.length > 0 ? folders.map(({ uri }) => URI.parse(uri)) : this.own;
    const inside = allowed.length > 0 ? allowed : [URI.file(dirname(from.fsPath))];
    return inside.some((folder) => isBelow(URI.file(followed(folder.fsPath)), real));
  }
}

function isBelow(folder: URI, file: URI): boolean {
  const root = folder.path.endsWith('/') ? folder.path : `${folder.path}/`;
  return file.path.startsWith(root) && file.path.length > root.length;
}

/** The path with links followed, as far up as it exists. */
function followed(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    const above = dirname(path);
    return above === path ? path : join(followed(above), basename(path));
  }
}
