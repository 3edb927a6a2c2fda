import { GrammarAST } from 'langium';
import { alternativesOf, firstTokens, type GrammarWords, grammarWords, ruleNamed } from './grammar-words.ts';
import { type NameKind, nameKindOf } from './kinds.ts';
import type { Token } from './statement-ends.ts';

/** Something that may stand at a place of the text. `name` without `of` is a name being given. */
export type Expectation =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'name'; readonly of?: NameKind }
  | { readonly kind: 'length' }
  | { readonly kind: 'token'; readonly token: string };

/** How far a rule can be read from a place of the text. */
export interface Reading {
  /** Places where the rule may end. A block ends behind its opening brace: what is inside is read on its own. */
  readonly ends: ReadonlySet<number>;
  /** The furthest place at which something else was expected, and what. */
  readonly furthest: number;
  readonly expected: readonly Expectation[];
}

/**
 * Reads single statements and heads of blocks after the grammar, trying every way, to find out where
 * they stop making sense and what could stand there. The parser itself recovers from errors and
 * builds the tree; this one only explains.
 */
export class SyntaxWords {
  readonly words: GrammarWords;
  private readonly grammar: GrammarAST.Grammar;
  private readonly nameTokens: ReadonlySet<string>;
  private readonly lengthTokens: ReadonlySet<string>;
  /** Rules that a choice such as RunStatement offers for a first word. */
  private readonly choices = new Map<string, GrammarAST.ParserRule[]>();

  constructor(grammar: GrammarAST.Grammar) {
    this.grammar = grammar;
    this.words = grammarWords(grammar);
    this.nameTokens = firstTokens(ruleNamed(grammar, 'Name'));
    this.lengthTokens = firstTokens(ruleNamed(grammar, 'LengthText'));
  }

  /** @param asName place of a token that shall count as a name, whatever it is */
  read(rule: string, tokens: readonly Token[], from: number, asName?: number): Reading {
    const reader = new Reader(tokens, this.nameTokens, this.lengthTokens, asName);
    const ends = new Set<number>();
    for (const choice of this.choicesOf(rule, tokens[from]?.tokenType.name ?? '')) {
      for (const end of reader.rule(choice, from)) ends.add(end);
    }
    // What is whole expects nothing more, however much was tried before.
    let whole = from;
    for (const end of ends) whole = Math.max(whole, end);
    if (whole > reader.furthest) return { ends, furthest: whole, expected: [] };
    return { ends, furthest: reader.furthest, expected: reader.expected };
  }

  private choicesOf(rule: string, word: string): GrammarAST.ParserRule[] {
    const key = `${rule} ${word}`;
    const known = this.choices.get(key);
    if (known) return known;
    const found = alternativesOf(ruleNamed(this.grammar, rule)).filter((choice) =>
      firstTokens(choice).has(word),
    );
    this.choices.set(key, found);
    return found;
  }
}

class Reader {
  furthest = -1;
  expected: Expectation[] = [];
  private readonly tokens: readonly Token[];
  private readonly nameTokens: ReadonlySet<string>;
  private readonly lengthTokens: ReadonlySet<string>;
  private readonly asName: number | undefined;

  constructor(
    tokens: readonly Token[],
    nameTokens: ReadonlySet<string>,
    lengthTokens: ReadonlySet<string>,
    asName?: number,
  ) {
    this.tokens = tokens;
    this.nameTokens = nameTokens;
    this.lengthTokens = lengthTokens;
    this.asName = asName;
  }

  rule(rule: GrammarAST.AbstractRule, from: number): Set<number> {
    if (rule.name === 'Name') return this.name(from, this.nameTokens);
    if (rule.name === 'LengthText') return this.take(from, this.lengthTokens, { kind: 'length' });
    if (GrammarAST.isParserRule(rule)) return this.element(rule.definition, from);
    return this.take(from, rule.name, { kind: 'token', token: rule.name });
  }

  private element(element: GrammarAST.AbstractElement, from: number): Set<number> {
    const once = this.once(element, from);
    if (element.cardinality === '?') return once.add(from);
    if (element.cardinality !== '*' && element.cardinality !== '+') return once;
    const all = new Set(once);
    for (const end of all) for (const further of this.once(element, end)) all.add(further);
    return element.cardinality === '*' ? all.add(from) : all;
  }

  private once(element: GrammarAST.AbstractElement, from: number): Set<number> {
    if (GrammarAST.isGroup(element)) return this.group(element, from);
    if (GrammarAST.isAlternatives(element)) {
      return new Set(element.elements.flatMap((part) => [...this.element(part, from)]));
    }
    if (GrammarAST.isAssignment(element)) return this.element(element.terminal, from);
    if (GrammarAST.isCrossReference(element)) {
      const rule = GrammarAST.isRuleCall(element.terminal) ? element.terminal.rule.ref : undefined;
      const accepted = rule && rule.name !== 'Name' ? firstTokens(rule) : this.nameTokens;
      return this.name(from, accepted, nameKindOf(element.type.$refText));
    }
    if (GrammarAST.isRuleCall(element)) {
      return element.rule.ref ? this.rule(element.rule.ref, from) : new Set();
    }
    if (GrammarAST.isKeyword(element)) {
      return this.take(from, element.value, { kind: 'word', word: element.value });
    }
    return new Set([from]);
  }

  private group(group: GrammarAST.Group, from: number): Set<number> {
    let ends = new Set([from]);
    for (const part of group.elements) {
      ends = new Set([...ends].flatMap((end) => [...this.element(part, end)]));
      if (GrammarAST.isKeyword(part) && part.value === '{') return ends;
    }
    return ends;
  }

  private name(from: number, accepted: ReadonlySet<string>, of?: NameKind): Set<number> {
    if (from === this.asName) return new Set([from + 1]);
    return this.take(from, accepted, of ? { kind: 'name', of } : { kind: 'name' });
  }

  private take(from: number, accepted: ReadonlySet<string> | string, expectation: Expectation): Set<number> {
    const found = this.tokens[from]?.tokenType.name;
    const fits =
      typeof accepted === 'string' ? found === accepted : found !== undefined && accepted.has(found);
    if (fits) return new Set([from + 1]);
    if (from > this.furthest) {
      this.furthest = from;
      this.expected = [];
    }
    if (from === this.furthest) this.expected.push(expectation);
    return new Set();
  }
}
