import type { Args, Basis, FindingKind, Severity } from './finding.ts';

/** What differs between the findings of one family. */
export interface FamilyMember<A> {
  readonly severity?: Severity;
  readonly basis?: Basis;
  readonly message: (args: A) => string;
}

/**
 * Kinds of a close family of findings whose arguments are typed by code, so that a code without a
 * message, or a message that asks for an argument nobody gives, does not compile.
 */
export function defineFamily<AllArgs extends object>(
  stage: FindingKind['stage'],
  basis: Basis,
  members: { readonly [Code in keyof AllArgs & string]: FamilyMember<AllArgs[Code]> },
): readonly FindingKind[] {
  return Object.entries<FamilyMember<never>>(members).map(([code, member]) => ({
    code,
    severity: member.severity ?? 'error',
    stage,
    basis: member.basis ?? basis,
    message: (args: Args) => member.message(args as never),
  }));
}
