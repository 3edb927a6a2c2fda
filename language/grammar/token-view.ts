import type { Token } from './statement-ends.ts';

const LONGEST_SHOWN = 30;

/** The tokens of a text by place; beyond either end there is nothing, and asking is harmless. */
export class TokenView {
  readonly tokens: readonly Token[];

  constructor(tokens: readonly Token[]) {
    this.tokens = tokens;
  }

  get length(): number {
    return this.tokens.length;
  }

  /** What the grammar calls the token: a word is called what it says. */
  wordAt(place: number): string {
    return this.tokens[place]?.tokenType.name ?? '';
  }

  /** The token as written, shortened for messages. */
  image(place: number): string {
    const image = this.tokens[place]?.image ?? '';
    return image.length > LONGEST_SHOWN ? `${image.slice(0, LONGEST_SHOWN)}...` : image;
  }

  offset(place: number): number {
    return this.tokens[place]?.startOffset ?? -1;
  }

  /** Whether letters stand here, a word of the language or a name. */
  isWord(place: number): boolean {
    return /^[A-Za-z]/.test(this.tokens[place]?.image ?? '');
  }

  /** Whether the line or the file ends here. */
  isOver(place: number): boolean {
    return place >= this.length || this.wordAt(place) === 'END';
  }

  /** The text of a token and of those that follow it without a space. */
  unspaced(place: number): string {
    let text = this.image(place);
    for (let next = place + 1; next < this.length && text.length < LONGEST_SHOWN; next++) {
      const [before, token] = [this.tokens[next - 1], this.tokens[next]];
      if (!before || !token || token.startOffset !== (before.endOffset ?? 0) + 1) break;
      if (/^[\s;{}(),=]/.test(token.image)) break;
      text += token.image;
    }
    return text.replace(/"/g, '');
  }

  /** The last visible token at or before a place. */
  lastVisible(place: number): Token | undefined {
    let last = Math.min(place, this.length);
    while (last > 0 && this.isOver(last)) last--;
    return this.tokens[last];
  }

  /** Where a brace opens before the line or the block ends. */
  braceInLine(from: number): number | undefined {
    for (let place = from; place < this.length; place++) {
      const word = this.wordAt(place);
      if (word === '{') return place;
      if (word === 'END' || word === '}') return undefined;
    }
    return undefined;
  }
}
