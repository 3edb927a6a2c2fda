import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openJob } from '../../tests/jobs/index.ts';
import { FIRST_LOOK, FIRST_RUN } from '../webview/page/notices.ts';

interface Snippet {
  readonly prefix: string;
  readonly body: readonly string[];
}

const snippets: Record<string, Snippet> = JSON.parse(
  readFileSync(new URL('./slat.json', import.meta.url), 'utf8'),
);

/** What stands there when every place is left as it is; of choices the first. */
function expanded({ body }: Snippet): string {
  return body
    .join('\n')
    .replace(/\$\{\d+\|([^,|]*)[^|]*\|\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$\d/g, '');
}

it.each(Object.entries(snippets))('%s reads as the language', async (_, snippet) => {
  const text = expanded(snippet);
  expect(text).not.toMatch(/[$|]/);
  const { document } = await openJob(text);
  const { lexerErrors, parserErrors } = document.parseResult;
  expect([...lexerErrors, ...parserErrors].map(({ message }) => message)).toEqual([]);
});

it.each(['Whole screen, inches', 'Whole screen, millimeters'])(
  '%s is drawn and nothing is wrong with it',
  async (name) => {
    const { layout, findings } = await openJob(expanded(snippets[name] as Snippet));
    expect(layout.runs.map(({ key }) => key)).toEqual(['bank']);
    expect(findings.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  },
);

it('what the empty preview tells one to write is drawn', async () => {
  const { views, findings } = await openJob(FIRST_RUN);
  expect(findings.map(({ code, message }) => `${code}: ${message}`)).toEqual([]);
  const titles = views().map(({ title }) => title);
  expect(titles).toContain('Elevation of first, seen from front');
  for (const title of titles) expect(title).toContain('first');
});

it('what the preview tells one to write for a look is drawn from the eye', async () => {
  const { views, findings } = await openJob(`${FIRST_RUN}\n${FIRST_LOOK}`);
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  expect(views().map(({ title }) => title)).toContainEqual(expect.stringMatching(/^seat as window sees it/));
});
