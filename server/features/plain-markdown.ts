/** Nothing that a file says becomes markup. */
export function plain(text: string): string {
  return text.replace(/[\\`*_{}[\]()#+!|<>~&]/g, (mark) => `\\${mark}`).replace(/[\r\n]/g, ' ');
}
