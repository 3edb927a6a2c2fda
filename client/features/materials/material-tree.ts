import { type Disposable, EventEmitter, type TreeDataProvider, type TreeItem } from 'vscode';
import type { Material, Materials } from '../../../server/protocol.ts';
import { DisposableStore } from '../../infrastructure/index.ts';
import type { MaterialsSource } from '../language-client/index.ts';
import { itemOf } from './material-item.ts';

/** What is bought for one document, as a tree that follows it. Pieces are asked for when they are unfolded. */
export class MaterialTree implements TreeDataProvider<Material>, Disposable {
  private readonly store = new DisposableStore();
  private readonly source: MaterialsSource;
  private readonly changed = this.store.add(new EventEmitter<void>());
  private readonly staled = this.store.add(new EventEmitter<boolean>());
  readonly onDidChangeTreeData = this.changed.event;
  /** Whether what is shown belongs to the text before the last change. */
  readonly onStale = this.staled.event;
  private uri: string | undefined;
  private lines: readonly Material[] = [];
  private shown = '';

  constructor(source: MaterialsSource) {
    this.source = source;
    this.store.add(
      source.onMaterialsChanged((materials) => {
        if (materials.uri === this.uri) this.take(materials);
      }),
    );
  }

  /** Shows another document's, or nothing. */
  async show(uri: string | undefined): Promise<void> {
    if (this.uri !== undefined && this.uri !== uri) {
      this.source.leaveMaterials(this.uri);
      this.lines = [];
      this.shown = '';
      this.changed.fire();
    }
    this.uri = uri;
    if (uri === undefined) return;
    const materials = await this.source.followMaterials(uri);
    if (this.uri === uri) this.take(materials);
  }

  getTreeItem(material: Material): TreeItem {
    return itemOf(material, this.uri ?? '');
  }

  async getChildren(material?: Material): Promise<Material[]> {
    if (!material) return [...this.lines];
    if (material.under) return [...material.under];
    if (material.pieces === undefined || this.uri === undefined) return [];
    return [...(await this.source.materialPieces(this.uri, material.id))];
  }

  dispose(): void {
    this.store.dispose();
  }

  /** What is as it was is not shown anew, so that nothing flickers. */
  private take({ lines, stale }: Materials): void {
    this.staled.fire(stale);
    const shown = JSON.stringify(lines ?? []);
    if (!lines || shown === this.shown) return;
    this.lines = lines;
    this.shown = shown;
    this.changed.fire();
  }
}
