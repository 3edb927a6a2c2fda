import { AstUtils, GrammarAST } from 'langium';

/** What the grammar says of one kind of block: its own words and those that begin a statement in it. */
export interface BlockWords {
  /** Rule and node type, such as `Run`. */
  readonly type: string;
  /** Rule of the statements inside, such as `RunStatement`. */
  readonly statements: string;
  readonly starters: ReadonlySet<string>;
  /** Every word that occurs in its statements. */
  readonly words: ReadonlySet<string>;
}

export interface GrammarWords {
  /** Words that begin an element of the file, such as `run`. */
  readonly elements: ReadonlySet<string>;
  /** Node type by first word, such as `Run` for `run`, or by the first two where several begin alike. */
  readonly elementTypes: ReadonlyMap<string, string>;
  /** By node type. */
  readonly blocks: ReadonlyMap<string, BlockWords>;
  /** Every word that begins an element or a statement somewhere. */
  readonly starters: ReadonlySet<string>;
}

/** Reads from the grammar itself which words begin what, so that no second list has to be kept. */
export function grammarWords(grammar: GrammarAST.Grammar): GrammarWords {
  const elementRule = ruleNamed(grammar, 'Element');
  const elements = firstTokens(elementRule);
  const elementTypes = new Map<string, string>();
  const blocks = new Map<string, BlockWords>();
  for (const rule of alternativesOf(elementRule)) {
    const pair = firstPair(rule.definition);
    if (pair) elementTypes.set(pair, rule.name);
    for (const word of firstTokens(rule)) if (!elementTypes.has(word)) elementTypes.set(word, rule.name);
    const statements = statementRule(rule.definition);
    if (!statements) continue;
    blocks.set(rule.name, {
      type: rule.name,
      statements: statements.name,
      starters: firstTokens(statements),
      words: keywordsIn(statements),
    });
  }
  const starters = new Set(elements);
  for (const block of blocks.values()) for (const word of block.starters) starters.add(word);
  return { elements, elementTypes, blocks, starters };
}

/** Node type of the element that begins with a word and another behind it. */
export function elementType(
  { elementTypes }: GrammarWords,
  word: string,
  next: string | undefined,
): string | undefined {
  return elementTypes.get(`${word} ${next}`) ?? elementTypes.get(word);
}

/** The two words an element begins with, where it begins with two: `measured board`. */
function firstPair(element: GrammarAST.AbstractElement): string | undefined {
  if (!GrammarAST.isGroup(element)) return undefined;
  const [first, second] = element.elements;
  if (!GrammarAST.isKeyword(first) || !GrammarAST.isKeyword(second)) return undefined;
  return `${first.value} ${second.value}`;
}

export function ruleNamed(grammar: GrammarAST.Grammar, name: string): GrammarAST.ParserRule {
  const rule = grammar.rules.find((candidate) => candidate.name === name);
  if (!GrammarAST.isParserRule(rule)) throw new Error(`The grammar has no rule ${name}.`);
  return rule;
}

/** Rules of a choice such as `Element: Use | Job | Stock;`, choices inside choices opened up. */
export function alternativesOf(rule: GrammarAST.ParserRule): GrammarAST.ParserRule[] {
  const elements = GrammarAST.isAlternatives(rule.definition) ? rule.definition.elements : [rule.definition];
  const called = elements.map((element) => (GrammarAST.isRuleCall(element) ? element.rule.ref : undefined));
  if (!called.every((target) => GrammarAST.isParserRule(target) && !target.dataType)) return [rule];
  return called.flatMap((target) => (GrammarAST.isParserRule(target) ? alternativesOf(target) : []));
}

/** Names of the tokens a rule may begin with. */
export function firstTokens(rule: GrammarAST.AbstractRule): ReadonlySet<string> {
  const found = new Set<string>();
  if (GrammarAST.isParserRule(rule)) collectFirst(rule.definition, found);
  else found.add(rule.name);
  return found;
}

/** Every keyword of a rule and of the rules it calls. */
function keywordsIn(rule: GrammarAST.ParserRule): ReadonlySet<string> {
  const found = new Set<string>();
  const rules = new Set<GrammarAST.AbstractRule>([rule]);
  for (const each of rules) {
    for (const node of AstUtils.streamAllContents(each)) {
      if (GrammarAST.isKeyword(node)) found.add(node.value);
      const called = GrammarAST.isRuleCall(node) ? node.rule.ref : undefined;
      if (called) rules.add(called);
    }
  }
  return found;
}

/** Returns whether the element may be empty, so that what follows it may come first too. */
function collectFirst(element: GrammarAST.AbstractElement, found: Set<string>): boolean {
  const optional = element.cardinality === '?' || element.cardinality === '*';
  if (GrammarAST.isGroup(element)) {
    return element.elements.every((part) => collectFirst(part, found)) || optional;
  }
  if (GrammarAST.isAlternatives(element)) {
    return element.elements.map((part) => collectFirst(part, found)).some(Boolean) || optional;
  }
  if (GrammarAST.isAssignment(element)) return collectFirst(element.terminal, found) || optional;
  if (GrammarAST.isCrossReference(element) && element.terminal) {
    return collectFirst(element.terminal, found) || optional;
  }
  if (GrammarAST.isKeyword(element)) found.add(element.value);
  else if (GrammarAST.isRuleCall(element) && element.rule.ref) {
    for (const token of firstTokens(element.rule.ref)) found.add(token);
  } else if (GrammarAST.isAction(element)) return true;
  return optional;
}

/** The rule of `statements+=...` inside a block. */
function statementRule(element: GrammarAST.AbstractElement): GrammarAST.ParserRule | undefined {
  if (GrammarAST.isAssignment(element)) {
    const call = element.terminal;
    const called =
      element.feature === 'statements' && GrammarAST.isRuleCall(call) ? call.rule.ref : undefined;
    return GrammarAST.isParserRule(called) ? called : undefined;
  }
  if (!GrammarAST.isGroup(element) && !GrammarAST.isAlternatives(element)) return undefined;
  for (const part of element.elements) {
    const found = statementRule(part);
    if (found) return found;
  }
  return undefined;
}
