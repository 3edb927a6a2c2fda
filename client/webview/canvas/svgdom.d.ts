/** A document without a browser, for tests; it ships no types. */
declare module 'svgdom' {
  export function createSVGWindow(): { readonly document: unknown };
}
