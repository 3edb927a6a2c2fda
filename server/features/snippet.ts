/** What a statement or an element begins as when it is chosen from the list. */
export interface StatementSnippet {
  readonly label: string;
  /** Square brackets stand for tab stops: `[6'~1.8 m]` by system, `[left|right]` a choice, `[]` empty. */
  readonly body: string;
  readonly about: string;
}

/** The body as editors take it, with lengths of one system. */
export function snippetText(body: string, system: 'imperial' | 'metric'): string {
  let stop = 0;
  return body.replace(/\[([^\]]*)\]/g, (_, inside: string) => {
    stop++;
    const [imperial = '', metric = imperial] = inside.split('~');
    const text = system === 'metric' ? metric : imperial;
    if (text === '') return `$${stop}`;
    const choices = text.split('|');
    return choices.length > 1 ? `\${${stop}|${choices.join(',')}|}` : `\${${stop}:${text}}`;
  });
}

export const one = (label: string, body: string, about: string): StatementSnippet => ({ label, body, about });

/** By rule of the grammar. */
export type StatementSnippets = Readonly<Record<string, readonly StatementSnippet[]>>;
