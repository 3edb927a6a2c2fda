import { type Camera, isShown, type Shown, type ToPage } from '../preview-protocol.ts';
import { Drawing, penRules } from './canvas/index.ts';
import type { Host } from './host.ts';
import { listenToGestures, makePage } from './page/index.ts';
import {
  firstLook,
  fitted,
  isCamera,
  NO_PICTURE,
  type Pane,
  type PictureState,
  panned,
  pickAt,
  pieceName,
  receive,
  toSheet,
  zoomed,
} from './picture/index.ts';

/** Name of the measure, in the page's performance timeline, of the script time one picture takes. */
export const PICTURE_MEASURE = 'slatwright.picture';
const MEASURES_KEPT = 2000;

export interface App {
  /** Takes a message as the host would send it. */
  receive(message: ToPage): void;
}

/** Makes the page in `body` and begins to talk to the host. The body's `data-uri` names the document. */
export function startApp(host: Host, body: HTMLElement): App {
  const saved = host.load();
  let uri = body.dataset.uri ?? saved?.uri ?? '';
  let state: PictureState = NO_PICTURE;
  const kept = saved?.uri === uri ? saved : undefined;
  /** What is asked for, and what the picture shows: the same again as soon as it has come. */
  let show: Shown = isShown(kept?.show) ? kept.show : 'front';
  let shown = show;
  const cameras: Partial<Record<Shown, Camera>> = { ...kept?.cameras };
  let camera = cameraOf(shown);
  /** How the camera was set, while it has not been moved since: it is set again when the pane changes its size. */
  let fits: 'first' | 'whole' | undefined;
  let measured = 0;

  usePens();
  const drawing = new Drawing();
  const svg = drawing.svg.node;
  svg.classList.add('drawing');
  svg.setAttribute('role', 'img');
  svg.setAttribute('tabindex', '0');
  const zoomMiddle = (factor: number) => {
    const { width, height } = paneSize();
    zoom(factor, width / 2, height / 2);
  };
  const page = makePage(body, svg, {
    zoomIn: () => zoomMiddle(1.25),
    zoomOut: () => zoomMiddle(0.8),
    fit: fitPicture,
    show: showViews,
  });
  page.shows(show);

  listenToGestures(svg, {
    zoom,
    zoomMiddle,
    pan: (dx, dy) => camera && look(panned(camera, dx, dy, state.sheet.box, paneSize())),
    fit: fitPicture,
    click: (x, y) => {
      const picked = pickedAt(x, y);
      drawing.light(new Set(picked ? [picked.piece] : []));
      if (picked) host.send({ type: 'pick', piece: picked.piece });
    },
    show: showViews,
    hover: inFrame(hover),
    clear: () => drawing.light(new Set()),
  });
  new ResizeObserver(() => {
    if (!camera || fits === 'whole') fitPicture();
    else if (fits === 'first') lookAgain();
  }).observe(page.pane);

  function cameraOf(views: Shown): Camera | undefined {
    const known = cameras[views];
    return isCamera(known) ? known : undefined;
  }

  function showViews(views: Shown): void {
    if (views === show && views === shown) return;
    show = views;
    page.shows(show);
    save();
    host.send({ type: 'show', show });
  }

  function paneSize(): Pane {
    return { width: page.pane.clientWidth, height: page.pane.clientHeight };
  }

  function pickedAt(x: number, y: number) {
    return camera ? pickAt(state, ...toSheet(camera, x, y)) : undefined;
  }

  function hover(x: number | undefined, y: number): void {
    const picked = x === undefined ? undefined : pickedAt(x, y);
    drawing.hover(picked);
    svg.classList.toggle('over-piece', picked !== undefined);
    page.tip(picked && pieceName(picked.piece), x ?? 0, y);
  }

  function look(next: Camera): void {
    camera = next;
    fits = undefined;
    repaint();
    save();
  }

  function fitPicture(): void {
    const whole = fitted(state.sheet.box, paneSize());
    if (!whole) return;
    look(whole);
    fits = 'whole';
  }

  function lookFirst(): Camera | undefined {
    const letter = Math.max(0, ...state.views.map((view) => view.letter));
    return firstLook(state.sheet.box, paneSize(), letter);
  }

  function lookAgain(): void {
    camera = lookFirst() ?? camera;
    repaint();
    save();
  }

  function zoom(factor: number, x: number, y: number): void {
    if (camera) look(zoomed(camera, factor, [x, y], state.sheet.box, paneSize()));
  }

  const repaint = inFrame(() => camera && drawing.look(camera));
  /** At once: a window may be loaded again the moment after. */
  function save(): void {
    if (camera) cameras[shown] = camera;
    host.save({ uri, show, cameras: { ...cameras } });
  }

  function showPicture({ delta, show: views }: Extract<ToPage, { type: 'picture' }>): void {
    const next = receive(state, delta);
    if (!next) {
      host.send({ type: 'askPicture', version: state.version });
      return;
    }
    const started = performance.now();
    state = next;
    if (views !== shown) {
      shown = views;
      camera = cameraOf(shown);
      fits = undefined;
    }
    page.notice(state.views.length > 0 ? 'none' : shown === 'eye' ? 'nobody-looks' : 'empty');
    if (!camera) {
      camera = lookFirst();
      fits = camera ? 'first' : undefined;
    }
    if (camera) drawing.look(camera);
    drawing.show(state);
    hover(undefined, 0);
    const titles = state.views.map(({ title }) => title);
    svg.setAttribute('aria-label', titles.join('. '));
    // As many are kept as a look back needs.
    if (++measured % MEASURES_KEPT === 0) performance.clearMeasures(PICTURE_MEASURE);
    performance.measure(PICTURE_MEASURE, { start: started });
  }

  function take(message: ToPage): void {
    switch (message.type) {
      case 'picture':
        showPicture(message);
        break;
      case 'document':
        uri = message.uri;
        save();
        break;
      case 'highlight':
        drawing.light(new Set(message.pieces));
        break;
      case 'show':
        show = message.show;
        page.shows(show);
        save();
        host.send({ type: 'show', show });
        break;
      case 'fit':
        fitPicture();
        break;
      case 'trouble':
        page.notice({ trouble: message.text });
        break;
    }
  }

  save();
  host.listen(take);
  host.send({ type: 'ready', show, version: state.version });
  return { receive: take };
}

/** Puts the rules of the pens into the document: a sheet made by script needs no inline style. */
function usePens(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(penRules());
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}

/** Runs at most once a frame, with what was asked for last. */
function inFrame<A extends unknown[]>(act: (...args: A) => void): (...args: A) => void {
  let waiting: A | undefined;
  return (...args) => {
    if (!waiting)
      requestAnimationFrame(() => {
        const last = waiting as A;
        waiting = undefined;
        act(...last);
      });
    waiting = args;
  };
}
