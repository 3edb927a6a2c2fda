/** What a piece is called, read from its key: `bank/b2/c07` is "bank, bay 2, slat 7". */
export function pieceName(key: string): string {
  return key
    .split('/')
    .map((part, i) => (i === 0 ? plain(part) : partName(part)))
    .join(', ');
}

/** What is called by its kind: which of them it is, and its number where there are several. */
const PART =
  /^(cleat|rail|stile|trim|stiffener|batten|collar|channel|filler|kick|brace|cable|spacer|board|strip)(?:-([a-z]+(?:-[a-z]+)*))?(?:-0*(\d+))?$/;

function partName(part: string): string {
  const [, behind, letter, number] = /^(back-)?([bpc])0*(\d+)$/.exec(part) ?? [];
  if (letter !== undefined)
    return `${behind ? 'back ' : ''}${{ b: 'bay', p: 'post', c: 'slat' }[letter]} ${number}`;
  if (part === 'back-trim') return 'back trim';
  if (part === 'back') return 'back half';
  const [, held, way] = /^(brace|stake)-(along|across)$/.exec(part) ?? [];
  if (held !== undefined) return `${held} ${way} the run`;
  const [, what, which = '', nth] = PART.exec(part) ?? [];
  if (what !== undefined)
    return [which.replaceAll('-', ' '), what === 'kick' ? 'kick board' : what, nth].filter(Boolean).join(' ');
  return plain(part);
}

function plain(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
