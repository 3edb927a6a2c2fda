import type { Origin, Problem } from './job.ts';

/** Parts the fixes of a refused length; no spelling of a length holds it. */
export const HINT_SEPARATOR = ' | ';

interface RefusedArgs {
  /** Which length it is: `gap`, `height`. */
  readonly what: string;
  /** As written. */
  readonly spelling: string;
  /** The text that puts it right; empty where no reading stands before the others. */
  readonly hint: string;
  /** All candidates, parted by `HINT_SEPARATOR`; empty when there are none. */
  readonly hints: string;
}

/**
 * What can be wrong with the text or with what it refers to, by code, with the values its message
 * needs. Lengths are spelled, as written or in the job's measure. `what`, `block` and `place` are words
 * of the language as a builder would write them: `end gap`, `run`, `cleats`.
 */
export interface ProblemArgs {
  /** A bare number where a length belongs: `gap 7`. */
  readonly 'unit-missing': RefusedArgs;
  /** A unit the language does not have: `6 in`, `4zz`. */
  readonly 'length-unknown-unit': RefusedArgs;
  /** A doubtful spelling, or none of a length; `problem` is the reason units/ gives. */
  readonly 'length-spelling': RefusedArgs & { readonly problem: string };
  /** An amount in a unit of something else, or past what can be; `units` are those that would do, parted by commas. */
  readonly 'amount-unclear': {
    readonly what: string;
    readonly spelling: string;
    readonly reason: 'unit' | 'range';
    readonly units: string;
    readonly range: string;
  };
  /** A size that cannot be. `limit` is what it is held against; empty for `zero`. */
  readonly 'impossible-size': {
    readonly what: string;
    readonly size: string;
    readonly reason:
      | 'zero'
      | 'too-long'
      | 'low-over-high'
      | 'not-narrower'
      | 'not-thinner'
      | 'too-short'
      | 'no-pocket'
      | 'over-board'
      | 'over-100';
    readonly limit: string;
  };
  /** A count that is no whole number, too small or too large. */
  readonly 'absurd-count': {
    readonly what: string;
    readonly count: string;
    readonly reason: 'not-whole' | 'too-few' | 'too-many';
    readonly least: number;
    readonly most: number;
  };
  /** A second statement of the same kind in a block; the first one counts. `related` is the first. */
  readonly 'stated-twice': { readonly what: string; readonly block: string };
  /** A statement that does not belong in this kind of block. */
  readonly 'wrong-statement': { readonly what: string; readonly block: string };
  /**
   * A block lacks what it needs, told at its name. `candidates` are names that would do, parted by
   * commas; empty when there is none or it is no name that is asked for.
   */
  readonly 'missing-statement': {
    readonly what: string;
    readonly block: string;
    readonly name: string;
    readonly candidates: string;
  };
  /** A word that is none of `known` (parted by commas); `suggestion` is the nearest, or empty. */
  readonly 'unknown-word': {
    readonly word: string;
    readonly place: string;
    readonly suggestion: string;
    readonly known: string;
  };
  /** Money that cannot be read, or of another currency than the job's. */
  readonly 'money-unclear': {
    readonly spelling: string;
    readonly reason: 'spelling' | 'mixed';
    readonly currency: string;
  };
  /** Told at the later one; `related` is the other. `elsewhere` is 1 when that is in a used file. */
  readonly 'duplicate-name': { readonly name: string; readonly kind: string; readonly elsewhere: 0 | 1 };
  /** A post where something flat is needed, a length where stock is needed, and so on. */
  readonly 'wrong-kind': {
    /** A stock's name, or a length as written. */
    readonly name: string;
    readonly kind: string;
    readonly needed: string;
    readonly place: string;
  };
  /** `end on` or `change` names a slat that the pattern does not repeat. */
  readonly 'not-in-repeat': { readonly slat: string; readonly pattern: string; readonly place: string };
  /** A rip, or a parameter's default, that comes back to itself. */
  readonly circular: { readonly name: string; readonly kind: string };
  /** What is referred to stands in another file and cannot be used there; `related` is the place. */
  readonly 'used-broken': { readonly name: string; readonly kind: string };
  /** A gate whose run is in another file or cannot be worked out. */
  readonly 'gate-run': {
    readonly gate: string;
    readonly run: string;
    readonly reason: 'other-file' | 'broken';
  };
  /** Level slats asked to slope with the ground. */
  readonly 'racked-level-slats': { readonly run: string };
  /** A run that comes after itself, by way of others. */
  readonly 'placement-circular': { readonly run: string; readonly way: string };
  /** A run that goes on with its own slat lines, by way of others. */
  readonly 'lines-circular': { readonly run: string; readonly way: string };
  /** A run whose place on the plan does not follow from what is stated. */
  readonly 'placement-unclear': {
    readonly run: string;
    /** The run it is to come after, or the angle as written. */
    readonly other: string;
    readonly reason: 'other-file' | 'taken' | 'both' | 'alone' | 'angle' | 'sides' | 'bearing';
  };
  /** What is said of the walls a run meets does not go together; `other` is the run after it, or empty. */
  readonly 'wall-unclear': {
    readonly run: string;
    readonly other: string;
    readonly reason:
      | 'comes-after'
      | 'followed'
      | 'one-wall'
      | 'no-room'
      | 'no-wall'
      | 'same-height'
      | 'split-posts';
  };
}

export type ProblemCode = keyof ProblemArgs;

export type Related = NonNullable<Problem['related']>;

/** A problem with the args its code asks for. */
export function makeProblem<C extends ProblemCode>(
  code: C,
  origin: Origin,
  args: ProblemArgs[C],
  related: Related = [],
): Problem {
  const plain: Problem = { code, origin, args: { ...args } };
  return related.length > 0 ? { ...plain, related } : plain;
}
