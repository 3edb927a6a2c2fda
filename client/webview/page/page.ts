import type { Shown } from '../../preview-protocol.ts';
import { icon } from './icons.ts';
import { emptyNotice, nobodyLooksNotice, troubleNotice } from './notices.ts';
import { viewTabs } from './view-tabs.ts';

export interface PageActions {
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
  readonly fit: () => void;
  readonly show: (shown: Shown) => void;
}

/** Everything in the page but the drawing. */
export interface Page {
  readonly pane: HTMLElement;
  /** Names what is under the pointer, at a point of the pane; nothing when it is undefined. */
  tip(text: string | undefined, x: number, y: number): void;
  /** Marks which views are shown. */
  shows(shown: Shown): void;
  /** In place of a picture: how to begin, or what went wrong; `none` when there is a picture. */
  notice(kind: 'none' | 'empty' | 'nobody-looks' | { readonly trouble: string }): void;
}

export function makePage(parent: HTMLElement, drawing: SVGElement, actions: PageActions): Page {
  const pane = document.createElement('main');
  pane.className = 'pane';
  const tip = div('tip');
  tip.hidden = true;
  const tools = div('tools');
  tools.setAttribute('role', 'toolbar');
  tools.setAttribute('aria-label', 'Picture');
  tools.append(
    button('Zoom out', 'minus', actions.zoomOut),
    button('Zoom in', 'plus', actions.zoomIn),
    button('Fit picture', 'fit', actions.fit),
  );
  const notice = div('notice');
  notice.hidden = true;
  pane.append(drawing, tools, tip, notice);
  const views = viewTabs(actions.show);
  pane.id = 'picture-pane';
  pane.setAttribute('role', 'tabpanel');
  parent.classList.add('with-views');
  parent.append(views.bar, pane);
  // Until something is known there is nothing to zoom.
  tools.hidden = true;
  let shown = '';
  return {
    pane,
    shows: views.mark,
    tip: (text, x, y) => {
      tip.hidden = text === undefined;
      if (text === undefined) return;
      tip.textContent = text;
      const left = Math.min(x + 14, pane.clientWidth - tip.offsetWidth - 4);
      const top = y + 22 + tip.offsetHeight > pane.clientHeight ? y - tip.offsetHeight - 8 : y + 18;
      tip.style.transform = `translate(${Math.max(4, left)}px, ${Math.max(4, top)}px)`;
    },
    notice: (kind) => {
      const now = typeof kind === 'string' ? kind : kind.trouble;
      if (now === shown) return;
      shown = now;
      notice.hidden = kind === 'none';
      tools.hidden = kind !== 'none';
      notice.replaceChildren(
        ...(kind === 'none'
          ? []
          : kind === 'empty'
            ? emptyNotice()
            : kind === 'nobody-looks'
              ? nobodyLooksNotice()
              : troubleNotice(now)),
      );
    },
  };
}

function div(className: string): HTMLDivElement {
  const element = document.createElement('div');
  element.className = className;
  return element;
}

function button(label: string, name: Parameters<typeof icon>[0], act: () => void): HTMLButtonElement {
  const element = document.createElement('button');
  element.type = 'button';
  element.title = label;
  element.setAttribute('aria-label', label);
  element.append(icon(name));
  element.addEventListener('click', act);
  return element;
}
