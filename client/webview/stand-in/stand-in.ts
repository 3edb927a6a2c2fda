/**
 * The preview's page in a plain browser: the stand-in host takes pictures from `serve.ts` (which asks the
 * real language server) instead of from an editor. Not shipped.
 *
 * Query: `file` (path of a .slat file), `theme` (a body class of the editor), `show` (views), `only` (picture alone).
 */
import type { Picture } from '../../../server/protocol.ts';
import {
  type FromPage,
  isShown,
  kindsOf,
  type PreviewState,
  type Shown,
  type ToPage,
} from '../../preview-protocol.ts';
import { type App, type Host, startApp } from '../index.ts';
import { THEMES, useTheme } from './themes.ts';

declare global {
  interface Window {
    /** For whoever drives the page: the app, and what it said to its host. */
    standIn: { app: App; said: FromPage[]; state: PreviewState | undefined };
  }
}

const query = new URLSearchParams(location.search);
const file = query.get('file') ?? 'examples/bicycle-court.slat';
const text = document.getElementById('text') as HTMLTextAreaElement;
const themes = document.getElementById('themes') as HTMLElement;
const parent = document.getElementById('picture') as HTMLElement;

useTheme(query.get('theme') ?? 'vscode-light');
document.body.classList.toggle('picture-only', query.has('only'));
for (const name of Object.keys(THEMES)) {
  const button = document.createElement('button');
  button.textContent = name.replace('vscode-', '');
  button.addEventListener('click', () => useTheme(name));
  themes.append(button);
}

const asked = query.get('show');
let show: Shown = isShown(asked) ? asked : 'front';
const said: FromPage[] = [];
const host: Host = {
  send: (message) => {
    said.push(message);
    if (message.type === 'ready' || message.type === 'show') show = message.show;
    if (message.type === 'pick') void ask('pick', { piece: message.piece });
    else void ask('picture', { kinds: kindsOf(show) });
  },
  listen: () => undefined,
  load: () => ({ uri: file, show }),
  save: (state) => {
    window.standIn = { ...window.standIn, state };
  },
};
parent.dataset.uri = file;
const app = startApp(host, parent);
window.standIn = { ...window.standIn, app, said };

text.addEventListener('input', () => void ask('text', { text: text.value }));
text.addEventListener('selectionchange', () => void ask('cursor', { offset: text.selectionStart }));

interface Answer {
  readonly text?: string;
  readonly picture?: Picture;
  readonly pieces?: readonly string[];
  readonly offset?: number;
}

async function ask(what: string, body: object): Promise<void> {
  const response = await fetch(`/${what}?file=${encodeURIComponent(file)}`, {
    method: 'POST',
    body: JSON.stringify(body),
  });
  const { picture, pieces, text: whole, offset } = (await response.json()) as Answer;
  if (whole !== undefined && text.value === '') text.value = whole;
  if (picture) give({ type: 'picture', show, textVersion: picture.textVersion, delta: picture.delta });
  if (pieces) give({ type: 'highlight', pieces });
  if (offset !== undefined) text.setSelectionRange(offset, offset);
}

function give(message: ToPage): void {
  app.receive(message);
}
