import type { FitChoice, RunLayout, TextChange } from '../../layout/index.ts';
import type { FillWays, Job } from '../../model/index.ts';
import type { Measure } from '../../units/index.ts';
import type { ChoiceFigures } from './choice-figures.ts';

/** For which run better is sought, and what judges it. */
export interface BetterTask {
  readonly job: Job;
  /** Name of the run. */
  readonly run: string;
  readonly fills: FillWays;
  /** Codes of what is told of a run that no choice may add to. */
  readonly told: (run: RunLayout, job: Job) => readonly string[];
  /** A choice of fit in words. */
  readonly describe: (choice: FitChoice, measure: Measure) => string;
  /** So many are laid out at most; 600 unless stated. */
  readonly most?: number;
}

/** One choice, with the edits that build exactly it. */
export interface BetterChoice {
  readonly title: string;
  readonly changes: readonly TextChange[];
  readonly figures: ChoiceFigures;
  /** The same for what is built alike, piece for piece. */
  readonly built: string;
}

export interface Better {
  /** The run as it stands. */
  readonly now: ChoiceFigures;
  /** Whether one of the choices is nowhere worse than the run as it stands, and somewhere better. */
  readonly beaten: boolean;
  /** What no other beats, spread over what there is to choose; the run as it stands left out. */
  readonly choices: readonly BetterChoice[];
  /** How many were laid out, and how many of them kept the limits. */
  readonly tried: number;
  readonly kept: number;
}

/** A search that can be gone on with at any time, and left at any time. */
export interface BetterSearch {
  /** What is found so far; undefined where the run cannot be laid out, or has no fill to change. */
  found(): Better | undefined;
  done(): boolean;
  /** Goes on until `enough` says so, which is asked after each layout, or until all is tried. */
  run(enough: () => boolean): void;
}
