import { type Delta, diffViews, type View, type ViewKind } from '../../language/drawing/index.ts';

/** A picture that a client looks at: what it has been sent, and how to bring it up to date. */
export class FollowedPicture {
  /** The views that are looked at. */
  readonly kinds: readonly ViewKind[];
  private views: readonly View[] = [];
  private version = 0;

  constructor(kinds: readonly ViewKind[]) {
    this.kinds = kinds;
  }

  /** All of it, for a client that begins to look or has lost track. */
  whole(views: readonly View[]): Delta {
    this.version++;
    this.views = views;
    return diffViews([], views, 0, this.version);
  }

  /** What changed since; undefined when nothing did. */
  change(views: readonly View[]): Delta | undefined {
    const same = views.length === this.views.length && views.every((view, at) => view === this.views[at]);
    if (same) return undefined;
    if (this.version === 0) return this.whole(views);
    const delta = diffViews(this.views, views, this.version, this.version + 1);
    const reordered =
      views.length !== this.views.length || views.some((view, at) => view.key !== this.views[at]?.key);
    this.views = views;
    if (!reordered && delta.views.length + delta.put.length + delta.drop.length === 0) return undefined;
    this.version++;
    return delta;
  }
}
