// Words of the language that are no names unless quoted; those that may be names stand out of this list.
const RESERVED = new Set(
  (
    'above after alike along alternate angle anywhere at bays bearing begins between board both butt by ' +
    'change channel clear cleat cleats corner degrees diameter else embed end ends faces fill fit fitted flip for from gaps ' +
    'gate half hinges hole in inside job lap lengths level limit made material measure miter most ' +
    'move no none not of on opening opens over pattern placed post posts rail rails repeat rip run ' +
    'see-through seen sides slats slope steps through to tops turns under use with ' +
    'accept and apart because before behind cap caps collars eye floor hide hipped place stiffeners threshold ' +
    'times viewer across falls rises toward ' +
    'accessible all as battens deposit each measured extra hand hour kerf labor margin markup minutes money option overhead per price quote ' +
    'saw rules spares task tax'
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
