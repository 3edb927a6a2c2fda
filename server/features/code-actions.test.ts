import { expect, it } from 'vitest';
import { CodeActionKind, CodeActionTriggerKind } from 'vscode-languageserver-types';
import { BANK } from '../reckoning/testing/bank.ts';
import { openTexts } from '../testing/index.ts';

async function actions(
  text: string,
  only?: readonly string[],
  triggerKind: CodeActionTriggerKind = CodeActionTriggerKind.Invoked,
) {
  const { slat, document, position, params } = await openTexts({ 'a.slat': text });
  const found = await slat.lsp.CodeActionProvider?.getCodeActions(document, {
    ...params,
    range: { start: position, end: position },
    context: { triggerKind, diagnostics: document.diagnostics ?? [], ...(only ? { only: [...only] } : {}) },
  });
  return (found ?? []) as {
    title: string;
    kind: string;
    command?: { command: string; arguments?: unknown[] };
  }[];
}

const inRun = BANK.replace('posts pole,', 'posts <|>pole,');

it('leads from anywhere in a run to what would be better for it', async () => {
  const [better] = await actions(inRun, [CodeActionKind.Refactor]);
  expect(better).toMatchObject({
    title: 'Look for better choices for bank...',
    kind: CodeActionKind.RefactorRewrite,
    command: { command: 'slatwright.findBetter', arguments: ['file:///work/a.slat', 'bank'] },
  });
  const titles = (await actions(inRun)).map(({ title }) => title);
  expect(titles).toContain('Look for better choices for bank...');
});

it('offers that neither unasked, nor as a quick fix, nor outside of runs', async () => {
  for (const { kind } of await actions(inRun, undefined, CodeActionTriggerKind.Automatic))
    expect(kind).toBe(CodeActionKind.QuickFix);
  for (const { kind } of await actions(inRun, [CodeActionKind.QuickFix]))
    expect(kind).toBe(CodeActionKind.QuickFix);
  expect(await actions(BANK.replace('money USD', 'money <|>USD'), [CodeActionKind.Refactor])).toEqual([]);
});

it('seeks what closes the space under slats once fixes are asked for', async () => {
  const high = BANK.replace('bottom 4"', 'bottom 8"')
    .replace('board plank', 'board sole { width 7-1/4"; thickness 1-1/2" }\nboard plank')
    .replace('posts pole,', 'posts <|>pole,');
  const { document } = await openTexts({ 'a.slat': high });
  const told = document.diagnostics?.find(({ code }) => code === 'clearance-high');
  expect(told?.data).toMatchObject({ more: true });
  expect(JSON.stringify(told?.data)).not.toContain('kick');
  expect((await actions(high)).map(({ title }) => title)).toContain('Write kick board sole');
});
