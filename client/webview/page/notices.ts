/** A whole file that draws something, short enough to be typed. Kept true by a test. */
export const FIRST_RUN = `board slat { width 3-1/2"    thickness 3/4" }
post post-4 { along 3-1/2"    through 3-1/2" }

pattern plain {
  repeat slat
  gap 1/2"
}

run first {
  length 12' over posts
  posts post-4, at most 6' clear
  height 6'    bottom 2"
  fill plain
}`;

/** What to write when there is nothing to draw. */
export function emptyNotice(): HTMLElement[] {
  return [
    element('h1', 'Nothing to draw yet'),
    element(
      'p',
      'A picture begins with a run. Write one, with its stock and its pattern, and it appears here as you type:',
    ),
    element('pre', FIRST_RUN),
  ];
}

/** Why there is no picture. */
export function troubleNotice(text: string): HTMLElement[] {
  return [element('h1', 'No picture'), element('p', text)];
}

function element(tag: string, text: string): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}
