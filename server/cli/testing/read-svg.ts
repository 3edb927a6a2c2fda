/** An element of a drawing as a strict XML reader sees it. */
export interface Element {
  readonly name: string;
  readonly text: string;
  readonly attributes: ReadonlyMap<string, string>;
}

interface Node {
  readonly nodeName: string;
  readonly textContent: string;
  readonly childNodes: readonly Node[];
  readonly attrs?: Iterable<{ readonly name: string; readonly value: string }>;
  innerHTML: string;
}

/** All elements of an SVG text in their order; throws where it is no well-formed XML. */
export async function readSvg(svg: string): Promise<readonly Element[]> {
  // svgdom reads with a strict XML parser; it brings no types of its own.
  const { createSVGDocument } = (await import('svgdom' as string)) as {
    createSVGDocument: () => { documentElement: Node };
  };
  const root = createSVGDocument().documentElement;
  root.innerHTML = svg.replace(/^<\?xml[^>]*\?>\n/, '');
  const below = (node: Node): Node[] => [node, ...Array.from(node.childNodes ?? []).flatMap(below)];
  return below(root)
    .slice(1)
    .filter(({ nodeName }) => !nodeName.startsWith('#'))
    .map(({ nodeName, textContent, attrs }) => ({
      name: nodeName,
      text: textContent,
      attributes: new Map([...(attrs ?? [])].map(({ name, value }) => [name, value])),
    }));
}
