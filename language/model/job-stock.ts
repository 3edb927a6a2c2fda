// What is bought and sawn: materials, boards, posts, and what dresses them.
import type { Species } from '../standards/index.ts';
import type { Money, Ticks } from '../units/index.ts';
import type { Origin, Sourced } from './job-origin.ts';

export type MaterialKind = 'wood' | 'composite' | 'pvc' | 'aluminum' | 'steel';

export interface Material {
  readonly name: string;
  readonly kind: Sourced<MaterialKind>;
  /** Of the library of species; of wood alone. */
  readonly species?: Sourced<Species>;
  readonly grade?: Sourced<'No.1' | 'No.2'>;
  /** The builder's own values, before those of any table: psi, psi, lb/ft3. */
  readonly bending?: Sourced<number>;
  readonly stiffness?: Sourced<number>;
  readonly density?: Sourced<number>;
  /** With preservative: its cut ends want sealing. */
  readonly treated?: Sourced<true>;
  readonly origin: Origin;
}

/** What a board measures as it came, beside what it was taken to be. */
export interface MeasuredSizes {
  /** Each as measured; one of the two may have none. */
  readonly widths: readonly Ticks[];
  readonly thicknesses: readonly Ticks[];
  readonly planned: { readonly width: Sourced<Ticks>; readonly thickness: Sourced<Ticks> };
  readonly origin: Origin;
}

interface StockBase {
  readonly name: string;
  readonly origin: Origin;
  readonly material?: Material;
  /** Of a tube; what states none is full. */
  readonly wall?: Sourced<Ticks>;
  /** Prices of those lengths that have one, in minor units, by length. */
  readonly prices?: ReadonlyMap<Ticks, Sourced<Money>>;
  /** Lengths it is sold in, shortest first. Empty when none is stated. */
  readonly lengths: readonly Sourced<Ticks>[];
}

/** What slats, rails, cleats and trim are made of: by `width` (the face seen) and `thickness`. */
export interface FlatStock extends StockBase {
  readonly kind: 'board' | 'rip' | 'rail' | 'cleat';
  readonly width: Sourced<Ticks>;
  readonly thickness: Sourced<Ticks>;
  /** The longest clear span the builder allows this stock. */
  readonly spanLimit?: Sourced<Ticks>;
  /** For a rip: the board it is ripped from. */
  readonly parent?: FlatStock;
  /** Set where it was measured: `width` is the mean then, `thickness` the greatest. */
  readonly measured?: MeasuredSizes;
}

/** Posts: by `along` the run and `through` it. */
export interface PostStock extends StockBase {
  readonly kind: 'post';
  readonly along: Sourced<Ticks>;
  readonly through: Sourced<Ticks>;
}

/**
 * U-shaped stock that slats end in: `width` is how far it stands off what it is fixed to, `thickness` through the
 * screen, both outside; its web lies on the holder.
 */
export interface ChannelStock extends StockBase {
  readonly kind: 'channel';
  readonly width: Sourced<Ticks>;
  readonly thickness: Sourced<Ticks>;
  readonly wall: Sourced<Ticks>;
}

export type Stock = FlatStock | PostStock | ChannelStock;

/** What a post wears on its top. */
export interface CapStock {
  readonly name: string;
  readonly origin: Origin;
  readonly material?: Material;
  readonly shape: Sourced<'flat' | 'hipped'>;
  /** At its highest. */
  readonly thickness: Sourced<Ticks>;
  /** Thickness at the rim of a hipped one, where its four slopes begin. */
  readonly edge: Sourced<Ticks>;
  /** Past the post on every side; not for a size of its own. */
  readonly overhang: Sourced<Ticks>;
  readonly along?: Sourced<Ticks>;
  readonly through?: Sourced<Ticks>;
}

/** Strips across the slats of every bay of a run. */
export interface StiffenerSpec {
  readonly stock: Sourced<FlatStock>;
  /** Greatest clear span they leave; one at the middle of each bay when left out. */
  readonly apart?: Sourced<Ticks>;
  readonly faces: readonly ('front' | 'back')[];
  readonly origin: Origin;
}

/** A board in the space under the slats of each bay, between its posts. */
export interface KickSpec {
  readonly stock: Sourced<FlatStock>;
  /** Above the ground, wherever that is highest within the bay. */
  readonly clearance: Sourced<Ticks>;
  /** Ripped so that its bottom edge follows the ground; else parallel to what is above it. */
  readonly follows: boolean;
  readonly origin: Origin;
}

/** Four mitered pieces round each post. */
export interface CollarSpec {
  readonly stock: Sourced<FlatStock>;
  readonly ends: readonly ('bottom' | 'top')[];
  readonly origin: Origin;
}
