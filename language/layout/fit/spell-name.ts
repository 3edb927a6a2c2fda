// Words of the language that are no names unless quoted; those that may be names stand out of this list.
const RESERVED = new Set(
  (
    'above along anywhere at bays between board change clear cleat cleats else embed end ends fill fit flip ' +
    'for from gaps gate half hinges in job lengths made material measure most move none not of on ' +
    'opening opens over pattern post posts rail rails repeat rip run see-through seen slats through to tops ' +
    'under use with'
  ).split(' '),
);

const BARE =
  /^[A-Za-z_\u00AA-\u00FF\u0100-\u1FFF\u3040-\uD7FF][\w\-\u00AA-\u00FF\u0100-\u1FFF\u3040-\uD7FF]*$/;

/** A name as the text has to spell it: in quotes unless it reads as one word that means nothing else. */
export function spellName(name: string): string {
  if (BARE.test(name) && !RESERVED.has(name)) return name;
  if (!name.includes('"')) return `"${name}"`;
  return name.includes("'") ? `\u201C${name}\u201D` : `'${name}'`;
}
