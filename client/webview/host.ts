import type { FromPage, PreviewState, ToPage } from '../preview-protocol.ts';

/** What the page needs of whoever shows it: the editor, or a stand-in in a plain browser. */
export interface Host {
  send(message: FromPage): void;
  listen(listener: (message: ToPage) => void): void;
  load(): PreviewState | undefined;
  save(state: PreviewState): void;
}

interface EditorApi {
  postMessage(message: unknown): void;
  getState(): unknown;
  setState(state: unknown): void;
}

declare function acquireVsCodeApi(): EditorApi;

/** The editor's side of a webview. To be called once in a page's life. */
export function editorHost(): Host {
  const api = acquireVsCodeApi();
  return {
    send: (message) => api.postMessage(message),
    listen: (listener) => window.addEventListener('message', ({ data }) => listener(data as ToPage)),
    load: () => api.getState() as PreviewState | undefined,
    save: (state) => api.setState(state),
  };
}
