import { type LangiumSharedCoreServices, type URI, UriUtils } from 'langium';

/** Decides which files `use` may reach. */
export interface WorkspaceBounds {
  /** Folders set by the host; they hold when the editor has opened none. */
  setRoots(folders: readonly URI[]): void;
  /**
   * Whether `target` may be read on behalf of `from`. Goes by the address alone; a host with a real
   * file system that wants links followed first replaces this service.
   */
  isInside(target: URI, from: URI): boolean;
}

/**
 * Inside is: below one of the editor's workspace folders; with none, below one of the roots the host
 * has set (the command line sets the folder it is run in); with none of these either, the folder of
 * the using file and what is below it.
 */
export class DefaultWorkspaceBounds implements WorkspaceBounds {
  private readonly shared: LangiumSharedCoreServices;
  private roots: readonly URI[] = [];

  constructor(shared: LangiumSharedCoreServices) {
    this.shared = shared;
  }

  setRoots(folders: readonly URI[]): void {
    this.roots = folders;
  }

  isInside(target: URI, from: URI): boolean {
    const opened = this.shared.workspace.WorkspaceManager.workspaceFolders ?? [];
    const folders = opened.length > 0 ? opened.map((folder) => folder.uri) : this.roots;
    const allowed = folders.length > 0 ? folders : [UriUtils.dirname(from)];
    return allowed.some((folder) => UriUtils.contains(folder, target) && !UriUtils.equals(folder, target));
  }
}
