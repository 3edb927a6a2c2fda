import type { TextChange } from '../layout/index.ts';
import type { Origin, ThresholdMeasure } from '../model/index.ts';

export type Severity = 'error' | 'warning' | 'information';

/** What a finding rests on. */
export interface Basis {
  /** A published source, common practice, the job's own statement, or geometry and the language itself. */
  readonly kind: 'published' | 'common practice' | 'job' | 'geometry' | 'language';
  readonly source: string;
  readonly section?: string;
  /** How sure we are of a published value. */
  readonly confirmed?: 'primary' | 'secondary' | 'from memory';
}

/** Values for the message; texts and numbers only. Lengths are formatted in the job's measure. */
export type Args = Readonly<Record<string, string | number>>;

/** A way out, as edits of the text. */
export interface Fix {
  readonly title: string;
  readonly changes: readonly TextChange[];
  readonly preferred?: boolean;
}

/** One thing the builder should know, where it stands, and what it rests on. */
export interface Finding {
  readonly code: string;
  readonly at: Origin;
  readonly args: Args;
  /** Keys of the pieces it concerns. */
  readonly pieces?: readonly string[];
  readonly related?: readonly { readonly at: Origin; readonly note: string }[];
  readonly fixes?: readonly Fix[];
  /** More ways out that take work to find: sought once they are asked for, never on the way of a key. */
  readonly moreFixes?: () => readonly Fix[];
}

/**
 * A limit of a finding that a job may set otherwise with `threshold CODE VALUE`: in ticks, percent,
 * degrees or times, as the trade has it in either system.
 */
export interface Threshold {
  readonly is: ThresholdMeasure;
  readonly imperial: number;
  readonly metric: number;
  /** What is limited, for completion and hover: "least clearance under slats". */
  readonly says: string;
}

/** What the registry holds for each code; the page `<code>.md` stands beside the check. */
export interface FindingKind {
  readonly code: string;
  readonly severity: Severity;
  readonly stage: 'text' | 'model' | 'layout';
  readonly basis: Basis;
  readonly threshold?: Threshold;
  /** One sentence or two from the args: what is so, and what to write or do instead. */
  readonly message: (args: Args) => string;
}
