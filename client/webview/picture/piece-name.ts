/** What a piece is called, read from its key: `bank/b2/c07` is "bank, bay 2, slat 7". */
export function pieceName(key: string): string {
  return key
    .split('/')
    .map((part, i) => (i === 0 ? plain(part) : partName(part)))
    .join(', ');
}

function partName(part: string): string {
  const [, behind, letter, number] = /^(back-)?([bpc])0*(\d+)$/.exec(part) ?? [];
  if (letter !== undefined)
    return `${behind ? 'back ' : ''}${{ b: 'bay', p: 'post', c: 'slat' }[letter]} ${number}`;
  if (part === 'back-trim') return 'back trim';
  const board = /^board-(\d+)$/.exec(part)?.[1];
  if (board !== undefined) return `board ${board}`;
  if (part === 'back') return 'back half';
  const [, end, count] = /^spacer-([a-z]+)-0*(\d+)$/.exec(part) ?? [];
  if (end !== undefined) return `${end} spacer ${count}`;
  const [, what, which] =
    /^(cleat|rail|stile|trim|stiffener|batten|collar|channel)-([a-z-]+)$/.exec(part) ?? [];
  if (which !== undefined) return `${which.replaceAll('-', ' ')} ${what}`;
  return plain(part);
}

function plain(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
