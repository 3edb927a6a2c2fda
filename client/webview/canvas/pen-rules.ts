import { PENS } from '../../../language/drawing/index.ts';

/**
 * Style rules of all pens: weights and dashes in letters, inks and fills by the names that the theme
 * gives a color to (see theme.css).
 */
export function penRules(): string {
  return Object.entries(PENS)
    .map(([style, { weight, ink, fill, dash }]) => {
      const rules = [
        `stroke-width: calc(${weight} * var(--letter))`,
        `stroke: ${ink === 'none' ? 'none' : `var(--ink-${ink})`}`,
        `fill: ${fill === 'none' ? 'none' : `var(--fill-${fill})`}`,
      ];
      if (dash) rules.push(`stroke-dasharray: ${dash.map((n) => `calc(${n} * var(--letter))`).join(' ')}`);
      return `.pen-${style} { ${rules.join('; ')} }`;
    })
    .join('\n');
}
