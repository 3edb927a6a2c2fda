/**
 * A 53-bit hash of text, as a short string: for telling changed content from unchanged, not for
 * secrets. Two multiply-and-fold lanes over the characters with a final mix.
 */
export function hashText(text: string): string {
  let a = 0x9e3779b9;
  let b = 0x85ebca6b;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    a = Math.imul(a ^ c, 0x9e3779b1);
    b = Math.imul(b ^ c, 0x5f356495);
  }
  a = Math.imul(a ^ (a >>> 16), 0x85ebca6b) ^ Math.imul(b ^ (b >>> 13), 0xc2b2ae35);
  b = Math.imul(b ^ (b >>> 16), 0x85ebca6b) ^ Math.imul(a ^ (a >>> 13), 0xc2b2ae35);
  return ((b & 0x1fffff) * 0x100000000 + (a >>> 0)).toString(36);
}
