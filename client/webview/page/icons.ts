const SHAPES = {
  plus: 'M8 3.5V12.5M3.5 8H12.5',
  minus: 'M3.5 8H12.5',
  fit: 'M2.5 6V2.5H6M10 2.5H13.5V6M13.5 10V13.5H10M6 13.5H2.5V10',
};

/** A small drawing for a button, of one stroke's weight, 16 by 16. */
export function icon(name: keyof typeof SHAPES): SVGElement {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('viewBox', '0 0 16 16');
  svg.setAttribute('aria-hidden', 'true');
  const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  path.setAttribute('d', SHAPES[name]);
  svg.append(path);
  return svg;
}
