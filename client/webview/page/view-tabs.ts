import { SHOWN, type Shown } from '../../preview-protocol.ts';

const NAMES: Readonly<Record<Shown, string>> = {
  front: 'Front',
  back: 'Back',
  plan: 'Plan',
  section: 'Section',
  eye: 'From the eye',
  all: 'All',
};

/** Tabs for the kinds of views: one of them is in the order of Tab, arrows go from one to the next. */
export function viewTabs(show: (shown: Shown) => void): { bar: HTMLElement; mark: (shown: Shown) => void } {
  const bar = document.createElement('div');
  bar.className = 'views';
  bar.setAttribute('role', 'tablist');
  bar.setAttribute('aria-label', 'Views');
  const tabs = SHOWN.map((shown, at) => {
    const tab = document.createElement('button');
    tab.type = 'button';
    tab.textContent = NAMES[shown];
    tab.title = `${NAMES[shown]} (${at + 1})`;
    tab.dataset.show = shown;
    tab.setAttribute('role', 'tab');
    tab.setAttribute('aria-controls', 'picture-pane');
    tab.addEventListener('click', () => show(shown));
    return tab;
  });
  bar.append(...tabs);
  bar.addEventListener('keydown', (event) => {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    const at = tabs.indexOf(document.activeElement as HTMLButtonElement);
    const to = event.key === 'Home' ? 0 : event.key === 'End' ? tabs.length - 1 : at + (step ?? 0);
    const next = tabs[(to + tabs.length) % tabs.length];
    if (!next || at < 0 || to === at) return;
    event.preventDefault();
    next.focus();
    next.click();
  });
  const mark = (shown: Shown): void => {
    for (const tab of tabs) {
      const chosen = tab.dataset.show === shown;
      tab.setAttribute('aria-selected', String(chosen));
      tab.tabIndex = chosen ? 0 : -1;
    }
  };
  return { bar, mark };
}
