import type { ParseResult } from 'langium';
import { blockWord, code, misspelled, oneOf } from './expectations.ts';
import { type BlockWords, elementType } from './grammar-words.ts';
import { misreadMessage } from './misread-message.ts';
import { editDistance, nearNames } from './near-names.ts';
import type { Token } from './statement-ends.ts';
import type { Reading, SyntaxWords } from './syntax-words.ts';
import { TokenView } from './token-view.ts';

export type ParserError = ParseResult['parserErrors'][number];

/** No one reads more errors than these in one file. */
const MOST_ERRORS = 200;

/** What is wrong with a text. Places of words are given by their offsets. */
export interface Explained {
  /** One for each statement that cannot be read, in the order of the text. */
  readonly errors: ParserError[];
  /**
   * Words the parser does better without: those that look like the start of a statement but are not,
   * and those that keep a block from being opened.
   */
  readonly strays: ReadonlySet<number>;
  /** All words of what cannot be read; without them the rest is free of errors. */
  readonly unreadable: ReadonlySet<number>;
}

/** Finds every statement of a text that cannot be read, and says what to write instead. */
export function explainErrors(tokens: readonly Token[], syntax: SyntaxWords): Explained {
  const explanation = new Explanation(tokens, syntax);
  explanation.readAll();
  return explanation;
}

interface OpenBlock {
  readonly type: string;
  /** Such as `run bank`. */
  readonly title: string;
  /** Its head could not be read. */
  readonly lost: boolean;
}

class Explanation implements Explained {
  readonly errors: ParserError[] = [];
  readonly strays = new Set<number>();
  readonly unreadable = new Set<number>();
  private readonly view: TokenView;
  private readonly syntax: SyntaxWords;
  private block: OpenBlock | undefined;
  private found = 0;

  constructor(tokens: readonly Token[], syntax: SyntaxWords) {
    this.view = new TokenView(tokens);
    this.syntax = syntax;
  }

  readAll(): void {
    let place = 0;
    while (place < this.view.length) {
      const [found, lost] = [this.found, this.block?.lost];
      const next = this.next(place);
      if (this.found > found || lost || this.block?.lost) this.spans(this.unreadable, place, next);
      place = next;
    }
    if (this.block) this.report(place, `${this.title()} is not closed: write } where it ends.`);
  }

  /** Reads what stands at a place and returns where to go on, always further on. */
  private next(place: number): number {
    const word = this.view.wordAt(place);
    if (word === 'END') return place + 1;
    if (word === '}') {
      if (!this.block) this.report(place, 'This } closes nothing; leave it out.');
      this.block = undefined;
      return place + 1;
    }
    if (!this.block) return this.element(place, word);
    if (!this.starters().has(word) && this.beginsElement(place)) {
      this.report(place, `${this.title()} is not closed: write } before ${code(word)}.`);
      this.block = undefined;
      return place;
    }
    return this.statement(place, word);
  }

  private element(place: number, word: string): number {
    const { elements } = this.syntax.words;
    const type = elementType(this.syntax.words, word, this.view.wordAt(place + 1));
    if (!type) return this.unknownElement(place, word);
    const reading = this.syntax.read('Element', this.view.tokens, place);
    const end = this.end(reading, elements);
    if (end === undefined) {
      this.misread('Element', place, reading, elements);
      return this.enter(type, place, reading.furthest);
    }
    if (this.view.wordAt(end - 1) === '{') this.open(type, place, false);
    return end;
  }

  private unknownElement(place: number, word: string): number {
    const { elements, elementTypes } = this.syntax.words;
    const image = this.view.image(place);
    const near = this.near(place, elements);
    const homes = this.homesOf(word);
    if (near) this.report(place, misspelled(image, near));
    else if (homes) this.report(place, `${code(word)} belongs inside the braces of ${homes}.`);
    else {
      const holds = oneOf([...elements].map(code));
      this.report(place, `${code(image)} begins nothing that a file holds; a file holds ${holds}.`);
    }
    const type = near && elementTypes.get(near);
    return type ? this.enter(type, place, place + 1) : this.skipLine(place, true);
  }

  /** Goes on inside a block whose head could not be read. */
  private enter(type: string, head: number, from: number): number {
    const brace = this.view.braceInLine(from - 1);
    const line = brace ?? this.skipLine(from);
    let inside = line;
    while (this.view.wordAt(inside) === 'END') inside++;
    const block = this.syntax.words.blocks.get(type);
    const opens = this.view.wordAt(inside) === '}' || block?.starters.has(this.view.wordAt(inside));
    if (brace === undefined && !(block && opens)) return line;
    this.setAside(head, from, line);
    this.open(type, head, true);
    return brace === undefined ? line : brace + 1;
  }

  /** Takes out of a head what keeps its block from being opened, if what is left makes a head. */
  private setAside(head: number, from: number, to: number): void {
    const left = this.view.tokens.slice(head, from);
    const { furthest, expected } = this.syntax.read('Element', left, 0);
    const opens = expected.some((each) => each.kind === 'word' && each.word === '{');
    if (furthest === left.length && opens) this.spans(this.strays, from, to);
  }

  private statement(place: number, word: string): number {
    const starters = this.starters();
    if (!starters.has(word)) return this.unknownStatement(place, word);
    const rule = this.blockWords()?.statements ?? '';
    const reading = this.syntax.read(rule, this.view.tokens, place);
    const end = this.end(reading, starters);
    if (end !== undefined) return end;
    const at = reading.furthest;
    if (reading.ends.has(at) && this.view.wordAt(at) === 'ID' && this.near(at, starters)) {
      return this.unknownStatement(at, 'ID');
    }
    this.misread(rule, place, reading, starters);
    return this.skipStatement(at);
  }

  private unknownStatement(place: number, word: string): number {
    const type = this.block?.type ?? '';
    const here = `a ${blockWord(type)}`;
    const image = this.view.image(place);
    const near = this.near(place, this.starters());
    const homes = this.homesOf(word);
    // A word that is at home elsewhere is a slip of the pen only where a single letter is wrong.
    if (near && (!homes || editDistance(image, near, 1) === 1))
      this.report(place, misspelled(image, near, type));
    else if (homes) this.report(place, `${code(word)} belongs in ${homes}, not in ${here}.`);
    else {
      const leads = this.wordsBefore(place, word).map((start) => code(`${start} ${image}`));
      const begin = [...this.starters()].map(code);
      const instead = leads.length > 0 ? `write ${oneOf(leads)}` : `statements begin with ${oneOf(begin)}`;
      this.report(place, `${code(image)} begins no statement of ${here}; ${instead}.`);
    }
    return this.skipStatement(place + 1);
  }

  /** First words of statements that go on with this one, which stands without them; what any name could be is no word. */
  private wordsBefore(place: number, word: string): readonly string[] {
    const token = this.view.tokens[place];
    if (!token || word === 'ID') return [];
    const rule = this.blockWords()?.statements ?? '';
    const named = (name: string) => ({ ...token, image: name, tokenType: { ...token.tokenType, name } });
    const goesOn = (start: string, next: string) =>
      this.syntax.read(rule, [named(start), named(next)], 0).furthest === 2;
    return [...this.starters()].filter((start) => goesOn(start, word) && !goesOn(start, 'ID'));
  }

  /** Reports where a statement or a head stops making sense. */
  private misread(rule: string, start: number, reading: Reading, starters: ReadonlySet<string>): void {
    const at = reading.furthest;
    const readsAsName = () => {
      const read = this.syntax.read(rule, this.view.tokens, start, at);
      return this.end(read, starters) !== undefined || read.furthest > at + 1;
    };
    this.report(at, misreadMessage(this.view, at, reading, readsAsName));
  }

  private report(at: number, message: string): void {
    this.found++;
    // What is missing at the end of a line is shown at the last word of that line.
    const token = this.view.lastVisible(at);
    if (!token || this.errors.length >= MOST_ERRORS) return;
    const context = { ruleStack: [], ruleOccurrenceStack: [] };
    this.errors.push({ name: 'SyntaxError', message, token, resyncedTokens: [], context });
  }

  /** The longest end after which something new may begin. */
  private end(reading: Reading, starters: ReadonlySet<string>): number | undefined {
    let longest: number | undefined;
    for (const end of reading.ends) {
      const next = this.view.wordAt(end);
      const over = this.view.isOver(end) || next === '}' || starters.has(next) || this.beginsElement(end);
      const fits = over || this.view.wordAt(end - 1) === '{';
      if (fits && end > (longest ?? -1)) longest = end;
    }
    return longest;
  }

  /** Whether an element of the file begins here, at the start of a line. */
  private beginsElement(place: number): boolean {
    const before = this.view.wordAt(place - 1);
    const starts = before === 'END' || before === '{' || before === '}';
    return starts && this.syntax.words.elements.has(this.view.wordAt(place));
  }

  private open(type: string, head: number, lost: boolean): void {
    const at = head + blockWord(type).split(' ').length;
    const name = this.view.wordAt(at) === '{' ? '' : this.view.image(at);
    this.block = { type, title: `${blockWord(type)} ${name}`.trim(), lost };
  }

  private title(): string {
    const title = this.block?.title ?? '';
    return title.charAt(0).toUpperCase() + title.slice(1);
  }

  private blockWords(): BlockWords | undefined {
    return this.syntax.words.blocks.get(this.block?.type ?? '');
  }

  private starters(): ReadonlySet<string> {
    return this.blockWords()?.starters ?? new Set();
  }

  /** The word among `words` that the one here was probably meant to be. */
  private near(place: number, words: ReadonlySet<string>): string | undefined {
    return this.view.isWord(place) ? nearNames(this.view.image(place), words, 1)[0] : undefined;
  }

  /** Blocks in which a word begins a statement: `a board or a rail`. */
  private homesOf(word: string): string {
    const homes = [...this.syntax.words.blocks.values()].filter(({ starters }) => starters.has(word));
    return oneOf(homes.map(({ type }) => `a ${blockWord(type)}`));
  }

  private spans(into: Set<number>, from: number, to: number): void {
    for (let place = from; place < to; place++) into.add(this.view.offset(place));
  }

  /** To the end of the line; with `blocks`, a block opened on it is skipped whole. */
  private skipLine(from: number, blocks = false): number {
    let depth = 0;
    for (let place = from; place < this.view.length; place++) {
      const word = this.view.wordAt(place);
      if (word === '{' && blocks) depth++;
      else if (word === '}' && depth > 0) depth--;
      else if (depth > 0 && this.beginsElement(place)) return place;
      else if (depth === 0 && (word === 'END' || word === '}')) return place;
    }
    return this.view.length;
  }

  /** To the next statement: in the next line, or begun in this one by a word that begins a whole statement. */
  private skipStatement(from: number): number {
    const starters = this.starters();
    let depth = 0;
    for (let place = from; place < this.view.length; place++) {
      const word = this.view.wordAt(place);
      if (word === '{') depth++;
      else if (depth > 0) {
        if (word === '}') depth--;
        else if (this.beginsElement(place)) return place;
      } else if (word === 'END' || word === '}') return place;
      else if (starters.has(word)) {
        if (this.readable(place)) return place;
        this.strays.add(this.view.offset(place));
      }
    }
    return this.view.length;
  }

  /** Whether a whole statement of the open block stands here. */
  private readable(place: number): boolean {
    const reading = this.syntax.read(this.blockWords()?.statements ?? '', this.view.tokens, place);
    return this.end(reading, this.starters()) !== undefined;
  }
}
