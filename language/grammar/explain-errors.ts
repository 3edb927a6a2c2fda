import type { ParseResult } from 'langium';
import { blockWord, code, describe, misspelled, oneOf } from './expectations.ts';
import { quoted } from './names.ts';
import { nearNames } from './near-names.ts';
import type { Token } from './statement-ends.ts';
import type { Reading, SyntaxWords } from './syntax-words.ts';

type ParserError = ParseResult['parserErrors'][number];

/** Where any word is read, what words are meant. */
const WORD_AFTER: Readonly<Record<string, string>> = {
  measure: 'the unit to measure in, such as `inches`, `feet` or `mm`',
  kind: 'what it is, such as `wood`, `aluminum` or `steel`',
};

interface OpenBlock {
  readonly type: string;
  /** Such as `run bank`. */
  readonly title: string;
}

/**
 * Errors in a text, and where words stand that the parser does better without: those that look like the
 * start of a statement but are not, and those that keep a block from being opened.
 */
export interface Explained {
  readonly errors: ParserError[];
  /** Offsets. */
  readonly strays: ReadonlySet<number>;
}

/**
 * Replaces the parser's own errors by one for each statement that cannot be read, saying what to write
 * instead. The parser says whether there is an error at all; where it finds none, neither does this.
 */
export function explainErrors(
  tokens: readonly Token[],
  errors: readonly ParserError[],
  syntax: SyntaxWords,
): Explained {
  const explanation = new Explanation(tokens, syntax);
  const found = explanation.errors();
  if (found.length > 0) return { errors: found, strays: explanation.strays };
  const unexplained = errors.map((error) => ({
    ...error,
    name: error.name,
    message: 'This cannot be read here.',
  }));
  return { errors: unexplained, strays: new Set() };
}

class Explanation {
  readonly strays = new Set<number>();
  private readonly tokens: readonly Token[];
  private readonly syntax: SyntaxWords;
  private readonly found: ParserError[] = [];
  private block: OpenBlock | undefined;

  constructor(tokens: readonly Token[], syntax: SyntaxWords) {
    this.tokens = tokens;
    this.syntax = syntax;
  }

  errors(): ParserError[] {
    let place = 0;
    while (place < this.tokens.length) place = this.next(place);
    if (this.block) this.report(place, `${this.title()} is not closed: write } where it ends.`);
    return this.found;
  }

  /** Reads what stands at a place and returns where to go on, always further on. */
  private next(place: number): number {
    const word = this.wordAt(place);
    if (word === 'END') return place + 1;
    if (word === '}') {
      if (!this.block) this.report(place, 'This } closes nothing; leave it out.');
      this.block = undefined;
      return place + 1;
    }
    if (!this.block) return this.element(place, word);
    if (!this.starters().has(word) && this.syntax.words.elements.has(word) && this.beginsElement(place)) {
      this.report(place, `${this.title()} is not closed: write } before ${code(word)}.`);
      this.block = undefined;
      return this.element(place, word);
    }
    return this.statement(place, word);
  }

  private element(place: number, word: string): number {
    const type = this.syntax.elementOf(word);
    if (!type) return this.unknownElement(place, word);
    const reading = this.syntax.read('Element', this.tokens, place);
    const end = this.end(reading, this.syntax.words.elements);
    if (end !== undefined) {
      if (this.wordAt(end - 1) === '{') this.open(type, place, end - 1);
      return end;
    }
    this.misread('Element', place, reading);
    return this.enter(type, place, Math.max(reading.furthest, place + 1));
  }

  /** Goes on inside a block whose head could not be read. */
  private enter(type: string, head: number, from: number): number {
    const brace = this.braceInLine(from - 1) ?? this.braceInLine(from);
    if (brace !== undefined) {
      this.setAside(head, from, brace);
      this.open(type, head, brace);
      return brace + 1;
    }
    const line = this.skipLine(from);
    let inside = line;
    while (this.wordAt(inside) === 'END') inside++;
    const block = this.syntax.words.blocks.get(type);
    if (block && (this.wordAt(inside) === '}' || block.starters.has(this.wordAt(inside)))) {
      this.setAside(head, from, line);
      this.open(type, head, line);
    }
    return line;
  }

  /** Takes out of a head what keeps its block from being opened, if what is left makes a head. */
  private setAside(head: number, from: number, to: number): void {
    const left = this.tokens.slice(head, from);
    const { furthest, expected } = this.syntax.read('Element', left, 0);
    const opens = expected.some((each) => each.kind === 'word' && each.word === '{');
    if (furthest !== left.length || !opens) return;
    for (const { startOffset } of this.tokens.slice(from, to)) this.strays.add(startOffset);
  }

  private unknownElement(place: number, word: string): number {
    const { elements, blocks } = this.syntax.words;
    const near = this.isWord(place) ? nearNames(this.image(place), elements, 1)[0] : undefined;
    const homes = [...blocks.values()].filter((block) => block.starters.has(word));
    if (near) this.report(place, misspelled(this.image(place), near));
    else if (homes.length > 0) {
      const names = oneOf(homes.map((block) => `a ${blockWord(block.type)}`));
      this.report(place, `${code(word)} belongs inside the braces of ${names}.`);
    } else {
      const holds = oneOf([...elements].map(code));
      this.report(
        place,
        `${code(this.image(place))} begins nothing that a file holds; a file holds ${holds}.`,
      );
    }
    const type = near && this.syntax.elementOf(near);
    if (type) return this.enter(type, place, place + 1);
    return this.skipLine(place, true);
  }

  private statement(place: number, word: string): number {
    const starters = this.starters();
    if (!starters.has(word)) return this.unknownStatement(place, word);
    const rule = this.syntax.words.blocks.get(this.block?.type ?? '')?.statements ?? '';
    const reading = this.syntax.read(rule, this.tokens, place);
    const end = this.end(reading, starters);
    if (end !== undefined) return end;
    const at = Math.max(reading.furthest, place + 1);
    const meant =
      reading.ends.has(at) && this.isWord(at) ? nearNames(this.image(at), starters, 1)[0] : undefined;
    if (meant && this.wordAt(at) === 'ID') return this.unknownStatement(at, this.wordAt(at));
    this.misread(rule, place, reading);
    return this.skipStatement(at);
  }

  private unknownStatement(place: number, word: string): number {
    const type = this.block?.type ?? '';
    const here = `a ${blockWord(type)}`;
    const image = this.image(place);
    const near = this.isWord(place) ? nearNames(image, this.starters(), 1)[0] : undefined;
    const homes = [...this.syntax.words.blocks.values()].filter((block) => block.starters.has(word));
    if (near) this.report(place, misspelled(image, near, type));
    else if (homes.length > 0) {
      const names = oneOf(homes.map((block) => `a ${blockWord(block.type)}`));
      this.report(place, `${code(word)} belongs in ${names}, not in ${here}.`);
    } else {
      const begin = oneOf([...this.starters()].map(code));
      this.report(place, `${code(image)} begins no statement of ${here}; statements begin with ${begin}.`);
    }
    return this.skipStatement(place + 1);
  }

  /** Reports where a statement or a head stops making sense. */
  private misread(rule: string, start: number, reading: Reading): void {
    const at = Math.max(reading.furthest, start + 1);
    this.report(at, this.misreadMessage(rule, start, at, reading));
  }

  private misreadMessage(rule: string, start: number, at: number, reading: Reading): string {
    const { expected } = reading;
    const mayEnd = reading.ends.has(at);
    const token = this.tokens[at];
    const before = this.image(at - 1);
    const visible = token !== undefined && token.tokenType.name !== 'END';
    if (visible && expected.some(({ kind }) => kind === 'name')) {
      const misnamed = this.misnamed(rule, start, at, reading);
      if (misnamed) return misnamed;
    }
    const closes = expected.some((each) => each.kind === 'word' && each.word === ')');
    if (closes && !this.wordIs(at, ['(', '=']))
      return `A closing parenthesis ) is missing after ${code(before)}.`;
    const opens = expected.some((each) => each.kind === 'word' && each.word === '{');
    if (opens && !visible) return `An opening brace { is missing after ${code(before)}.`;
    const measured = mayEnd && visible ? this.measureHint(at) : undefined;
    if (measured) return measured;
    const comes = WORD_AFTER[this.wordAt(at - 1)] ?? describe(expected, mayEnd);
    if (comes === '') return `After ${code(before)} nothing more is read in this line.`;
    return `After ${code(before)} comes ${comes}${visible ? `, not ${code(this.image(at))}` : ''}.`;
  }

  /** A name was wanted: is what stands there meant as one? */
  private misnamed(rule: string, start: number, at: number, reading: Reading): string | undefined {
    const token = this.tokens[at];
    if (!token) return undefined;
    if (/^[a-z]/.test(token.image) && this.isWord(at)) {
      const starters = this.block ? this.starters() : this.syntax.words.elements;
      const read = this.syntax.read(rule, this.tokens, start, at);
      if (this.end(read, starters) === undefined && read.furthest <= at + 1) return undefined;
      return `${code(token.image)} is a word of the language; to use it as a name, put it in quotes: ${quoted(token.image)}.`;
    }
    const lengthToo = reading.expected.some(({ kind }) => kind === 'length');
    if (lengthToo || !/^[\d]/.test(token.image)) return undefined;
    return `A name begins with a letter; put any other in quotes: ${quoted(this.unspaced(at))}.`;
  }

  /** Slips in writing lengths that leave a statement with something over. */
  private measureHint(at: number): string | undefined {
    const before = this.tokens[at - 1];
    const token = this.tokens[at];
    if (!before || !token || !/^\d/.test(before.image)) return undefined;
    const [first, second] = [before.tokenType.name, token.tokenType.name];
    if (first === 'NUMBER' && second === 'FRACTION') {
      return `Write inches and fraction with a hyphen and the inch mark: ${before.image}-${token.image}".`;
    }
    if (first === 'LENGTH' && (second === 'NUMBER' || second === 'FRACTION')) {
      return `Give ${code(token.image)} its unit: ${before.image} ${token.image}".`;
    }
    if (first !== 'LENGTH' && second === 'ID' && token.startOffset - (before.endOffset ?? 0) <= 2) {
      return `${code(token.image)} is no unit; lengths are written with ' and ", or with mm, cm or m.`;
    }
    return undefined;
  }

  private report(at: number, message: string): void {
    const place = Math.min(at, this.tokens.length);
    // What is missing at the end of a line is shown at the last word of that line.
    let last = place;
    while (last > 0 && (last === this.tokens.length || this.wordAt(last) === 'END')) last--;
    const shown = this.tokens[last];
    if (!shown) return;
    this.found.push({
      name: 'SyntaxError',
      message,
      token: shown,
      resyncedTokens: [],
      context: { ruleStack: [], ruleOccurrenceStack: [] },
    });
  }

  /** The longest end after which something new may begin. */
  private end(reading: Reading, starters: ReadonlySet<string>): number | undefined {
    const fit = [...reading.ends].filter((end) => {
      if (this.wordAt(end - 1) === '{') return true;
      const next = this.wordAt(end);
      return next === '' || next === 'END' || next === '}' || starters.has(next) || this.beginsElement(end);
    });
    return fit.length > 0 ? Math.max(...fit) : undefined;
  }

  /** Whether an element of the file begins here, at the start of a line. */
  private beginsElement(place: number): boolean {
    const before = this.wordAt(place - 1);
    return (
      this.syntax.words.elements.has(this.wordAt(place)) &&
      (before === 'END' || before === '{' || before === '}')
    );
  }

  private open(type: string, head: number, brace: number): void {
    const words = this.tokens.slice(head, brace).filter((token) => token.tokenType.name !== 'END');
    const title = [blockWord(type), ...words.slice(1, 2).map((token) => token.image)].join(' ');
    this.block = { type, title };
  }

  private title(): string {
    const title = this.block?.title ?? '';
    return title.charAt(0).toUpperCase() + title.slice(1);
  }

  private starters(): ReadonlySet<string> {
    return this.syntax.words.blocks.get(this.block?.type ?? '')?.starters ?? new Set();
  }

  private braceInLine(from: number): number | undefined {
    for (let place = from; place < this.tokens.length; place++) {
      const word = this.wordAt(place);
      if (word === '{') return place;
      if (word === 'END' || word === '}') return undefined;
    }
    return undefined;
  }

  /** To the end of the line; with `blocks`, a block opened on it is skipped whole. */
  private skipLine(from: number, blocks = false): number {
    let depth = 0;
    for (let place = from; place < this.tokens.length; place++) {
      const word = this.wordAt(place);
      if (word === '{' && blocks) depth++;
      else if (word === '}' && depth > 0) depth--;
      else if (depth > 0 && this.beginsElement(place)) return place;
      else if (depth === 0 && (word === 'END' || word === '}')) return place;
    }
    return this.tokens.length;
  }

  /** To the next statement: in the next line, or begun in this one by a word that begins a whole statement. */
  private skipStatement(from: number): number {
    const starters = this.starters();
    let depth = 0;
    for (let place = from; place < this.tokens.length; place++) {
      const word = this.wordAt(place);
      if (word === '{') depth++;
      else if (depth > 0) {
        if (word === '}') depth--;
        else if (this.beginsElement(place)) return place;
      } else if (word === 'END' || word === '}') return place;
      else if (starters.has(word)) {
        if (this.readable(place)) return place;
        this.strays.add(this.tokens[place]?.startOffset ?? -1);
      }
    }
    return this.tokens.length;
  }

  /** Whether a whole statement of the open block stands here. */
  private readable(place: number): boolean {
    const rule = this.syntax.words.blocks.get(this.block?.type ?? '')?.statements ?? '';
    return this.end(this.syntax.read(rule, this.tokens, place), this.starters()) !== undefined;
  }

  private wordAt(place: number): string {
    return this.tokens[place]?.tokenType.name ?? '';
  }

  private wordIs(place: number, words: readonly string[]): boolean {
    return words.includes(this.wordAt(place));
  }

  private isWord(place: number): boolean {
    return /^[A-Za-z]/.test(this.image(place)) && this.wordAt(place) !== 'END';
  }

  private image(place: number): string {
    const image = this.tokens[place]?.image ?? '';
    return image.length > 30 ? `${image.slice(0, 30)}...` : image;
  }

  /** The text of a token and of those that follow it without a space. */
  private unspaced(place: number): string {
    let text = this.image(place);
    for (let next = place + 1; next < this.tokens.length; next++) {
      const [before, token] = [this.tokens[next - 1], this.tokens[next]];
      if (!before || !token || token.startOffset !== (before.endOffset ?? 0) + 1) break;
      if (token.tokenType.name === 'END' || /^[{}(),=]/.test(token.image)) break;
      text += token.image;
    }
    return text.replace(/"/g, '');
  }
}
