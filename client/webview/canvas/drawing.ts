import { G, Path, SVG, type Svg } from '@svgdotjs/svg.js';
import { hitsOf } from '../../../language/drawing/index.ts';
import type { Camera } from '../../preview-protocol.ts';
import { letterAt, type Picked, type PictureState } from '../picture/index.ts';
import { litPath } from './lit-path.ts';
import { ViewFigure } from './view-figure.ts';

/** Letters are placed anew when their size has changed by more than this share. */
const LETTER_STEP = 0.04;

/** The drawing as a whole: every view on one sheet, looked at through a camera, with lit pieces on top. */
export class Drawing {
  readonly svg: Svg;
  private readonly sheet = new G().addClass('sheet');
  private readonly lit = new Path().addClass('lit');
  private readonly hovered = new Path().addClass('hovered');
  private readonly views = new G();
  private readonly figures = new Map<string, ViewFigure>();
  private state: PictureState | undefined;
  private camera: Camera = { x: 0, y: 0, scale: 1 };
  private letter = 0;
  private pieces: ReadonlySet<string> = new Set();

  constructor() {
    this.svg = SVG();
    this.sheet.add(this.views).add(this.lit).add(this.hovered).addTo(this.svg);
  }

  /** Shows a state of the picture; elements it leaves alone are not touched. */
  show(state: PictureState): void {
    this.state = state;
    const letter = this.fitLetter();
    const known = new Map(state.views.map((view) => [view.key, view]));
    for (const [key, figure] of this.figures) {
      if (known.has(key)) continue;
      figure.group.remove();
      this.figures.delete(key);
    }
    let next = this.views.node.firstChild;
    for (const place of state.sheet.places) {
      const view = known.get(place.key);
      if (!view) continue;
      const figure = this.figureOf(place.key);
      figure.show(view, Math.min(letter, view.letter));
      figure.moveTo(place);
      const { node } = figure.group;
      if (node === next) next = next.nextSibling;
      else this.views.node.insertBefore(node, next);
    }
    this.light(this.pieces);
  }

  /** Looks at the sheet from somewhere else. */
  look(camera: Camera): void {
    this.camera = camera;
    this.sheet.attr('transform', `matrix(${camera.scale} 0 0 ${camera.scale} ${camera.x} ${camera.y})`);
    const before = this.letter;
    const letter = this.fitLetter();
    if (letter === before || !this.state) return;
    for (const view of this.state.views)
      this.figures.get(view.key)?.show(view, Math.min(letter, view.letter));
  }

  /** Lights all places of these pieces, and no others. */
  light(pieces: ReadonlySet<string>): void {
    this.pieces = pieces;
    const { state } = this;
    const path = state?.sheet.places
      .map((place) => {
        const view = pieces.size > 0 && state.views.find(({ key }) => key === place.key);
        return view ? litPath(hitsOf(view, pieces), place) : '';
      })
      .join('');
    this.lit.attr('d', path || null);
  }

  /** Outlines a piece under the pointer. */
  hover(picked: Picked | undefined): void {
    const place = this.state?.sheet.places.find(({ key }) => key === picked?.view);
    this.hovered.attr('d', picked && place ? litPath(picked.hits, place) : null);
  }

  private figureOf(key: string): ViewFigure {
    let figure = this.figures.get(key);
    if (!figure) {
      figure = new ViewFigure();
      figure.group.node.setAttribute('data-key', key);
      this.figures.set(key, figure);
    }
    return figure;
  }

  /** Letters for the camera, and with them the weight of every line. Changes in steps, not with every pixel. */
  private fitLetter(): number {
    const laidOut = Math.max(0, ...(this.state?.views ?? []).map(({ letter }) => letter));
    const letter = letterAt(this.camera, laidOut);
    if (Math.abs(letter - this.letter) <= LETTER_STEP * this.letter) return this.letter;
    this.letter = letter;
    this.sheet.css('--letter', `${letter}px`);
    return letter;
  }
}
