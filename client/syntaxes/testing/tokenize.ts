import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import oniguruma from 'vscode-oniguruma';
import textmate, { type IGrammar, type StateStack } from 'vscode-textmate';

const require = createRequire(import.meta.url);

/** A stretch of text and its innermost scope. */
export interface Colored {
  readonly text: string;
  readonly scope: string;
}

/** The highlighting grammar, run by the library the editor itself runs. */
export async function loadGrammar(): Promise<IGrammar> {
  await oniguruma.loadWASM(readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm')));
  const path = new URL('../slat.tmLanguage.json', import.meta.url);
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: async () => textmate.parseRawGrammar(readFileSync(path, 'utf8'), path.pathname),
  });
  const grammar = await registry.loadGrammar('source.slat');
  if (!grammar) throw new Error('the highlighting grammar does not load');
  return grammar;
}

/** Tokens of every line, white space between tokens left out. */
export function colorLines(grammar: IGrammar, source: string): Colored[][] {
  let state: StateStack = textmate.INITIAL;
  return source.split('\n').map((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
    state = ruleStack;
    return tokens
      .map(({ startIndex, endIndex, scopes }) => ({
        text: line.slice(startIndex, endIndex),
        scope: scopes.at(-1) ?? '',
      }))
      .filter(({ text }) => text.trim() !== '');
  });
}
