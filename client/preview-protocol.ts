/**
 * What the preview's page and its host say to each other: the only seam between them. Plain data.
 *
 * The page says `ready` once it listens and gets the whole picture; after that it gets deltas. A delta
 * that does not continue the version it shows makes it say `askPicture`, which is answered with the whole.
 */
import type { Delta, ViewKind } from '../language/drawing/index.ts';

/** Type of the panel, as in the manifest. */
export const PREVIEW_VIEW_TYPE = 'slatwright.preview';

/** Where the picture is looked at from: a sheet point p is shown at p * scale + (x, y), in CSS pixels. */
export interface Camera {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** What is shown: views of one kind, or all. */
export type Shown = ViewKind | 'all';

export const SHOWN: readonly Shown[] = ['front', 'back', 'plan', 'section', 'eye', 'all'];

/** Kinds of views to ask the server for. */
export function kindsOf(shown: Shown): readonly ViewKind[] {
  return shown === 'all' ? ['plan', 'front', 'back', 'section', 'eye'] : [shown];
}

export function isShown(value: unknown): value is Shown {
  return SHOWN.some((shown) => shown === value);
}

/** What the page keeps over a reload of the window, and what the host restores the panel from. */
export interface PreviewState {
  readonly uri: string;
  readonly show?: Shown;
  /** Each kind of view is looked at from a place of its own. */
  readonly cameras?: Readonly<Partial<Record<Shown, Camera>>>;
}

/** Host to page. */
export type ToPage =
  /** A new state of the picture, or with base 0 all of it. */
  | { readonly type: 'picture'; readonly show: Shown; readonly textVersion: number; readonly delta: Delta }
  /** Show other views. */
  | { readonly type: 'show'; readonly show: Shown }
  /** The document is another one now: its picture follows. */
  | { readonly type: 'document'; readonly uri: string }
  /** Light these pieces and no others. Never moves the picture. */
  | { readonly type: 'highlight'; readonly pieces: readonly string[] }
  /** Show all of the picture. */
  | { readonly type: 'fit' }
  /** There is no picture to be had, and why. */
  | { readonly type: 'trouble'; readonly text: string };

/** Page to host. */
export type FromPage =
  /** The page listens; 0 when it shows nothing yet. */
  | { readonly type: 'ready'; readonly show: Shown; readonly version: number }
  /** Other views are to be shown: all of their picture is asked for. */
  | { readonly type: 'show'; readonly show: Shown }
  /** The page cannot continue from what it shows. */
  | { readonly type: 'askPicture'; readonly version: number }
  /** A piece was clicked. */
  | { readonly type: 'pick'; readonly piece: string };

/** Whether something a page sent is a message, as far as its type goes. */
export function isFromPage(message: unknown): message is FromPage {
  const type = (message as { type?: unknown } | null)?.type;
  return type === 'ready' || type === 'show' || type === 'askPicture' || type === 'pick';
}
