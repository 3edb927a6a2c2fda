/** A whole file that draws something, short enough to be typed. Kept true by a test. */
export const FIRST_RUN = `board slat { width 3-1/2"    thickness 3/4" }
post post-4 { along 3-1/2"    through 3-1/2" }

pattern plain {
  repeat slat
  gap 1/2"
  fit gaps 3/8" to 5/8"
}

run first {
  length 12' over posts
  posts post-4, at most 4' 6" clear
  height 6'    bottom 2"
  slats on front face
  fill plain
}`;

/** What to write when there is nothing to draw. */
export function emptyNotice(): HTMLElement[] {
  return [
    element('h1', 'Nothing to draw yet'),
    element(
      'p',
      'A picture begins with a run, its stock and its pattern, and appears as you type. If a run is written already, Problems says what it still lacks. For a start:',
    ),
    element('pre', FIRST_RUN),
  ];
}

/** Someone who looks, and what is to be hidden, for the run of `FIRST_RUN`. Kept true by a test. */
export const FIRST_LOOK = `viewer window { at 6' along first, 12' behind    floor up 2' }

place seat {
  at 6' along first, 6' in front
  width 5'    from 1' to 4' above ground
}

hide seat from window 90 %`;

/** What to write when nobody looks at anything yet. */
export function nobodyLooksNotice(): HTMLElement[] {
  return [
    element('h1', 'Nobody looks yet'),
    element(
      'p',
      'Say where someone stands and what is to be hidden from them, and this shows the screen from their eye, with what is left to see of the place. For a start:',
    ),
    element('pre', FIRST_LOOK),
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
