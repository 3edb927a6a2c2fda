// Where slats on a face of the posts meet end to end.
import type { Ticks } from '../units/index.ts';
import type { Sourced } from './job-origin.ts';

/** Slats meet over the middles of posts alone; which of them is what a rule says. */
export type JointRule =
  /** As few boards as the lengths sold allow; of those, joints that are not under those of the course above. */
  | { readonly kind: 'longest' }
  /** No joint under one of the course above where that can be, be it with one board more. */
  | { readonly kind: 'staggered' }
  /** The same in every course, with as few boards as the lengths sold allow. */
  | { readonly kind: 'in-line' }
  /** The same in every course, at every so many posts from where the slats begin. */
  | { readonly kind: 'every'; readonly posts: number };

/** What a run says of its joints. */
export interface JointSpec {
  /** `longest` when left out. */
  readonly rule?: Sourced<JointRule>;
  /** Between two ends that meet; the end gap when left out. */
  readonly gap?: Sourced<Ticks>;
  /** What the job takes off each board before it is cut; as usual when left out. */
  readonly trim?: Ticks;
}
