/**
 * A name for a file that any file system takes, made of the name of what is in it; `taken` holds those that are given,
 * and what comes out like one of them gets a number.
 *
 * @param extension with its dot
 */
export function fileNameOf(name: string, extension: string, taken: Set<string>): string {
  const plain =
    name
      .replace(/[^\p{L}\p{N}_-]+/gu, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 80) || 'run';
  let free = plain;
  for (let n = 2; taken.has(free.toLowerCase()); n++) free = `${plain}-${n}`;
  taken.add(free.toLowerCase());
  return `${free}${extension}`;
}
