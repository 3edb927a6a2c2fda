import { SHOWN, type Shown } from '../../preview-protocol.ts';

export type KeyGesture =
  | { readonly kind: 'show'; readonly show: Shown }
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'pan'; readonly dx: number; readonly dy: number }
  | { readonly kind: 'fit' | 'clear' };

type Key = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>;

const STEP = 60;
const ZOOM = 1.25;

/** What a key asks for while the drawing has the focus; undefined for keys that are not the drawing's. */
export function keyGesture({ key, ctrlKey, metaKey, altKey }: Key): KeyGesture | undefined {
  if (altKey) return undefined;
  switch (key) {
    case '+':
    case '=':
      return { kind: 'zoom', factor: ZOOM };
    case '-':
    case '_':
      return { kind: 'zoom', factor: 1 / ZOOM };
    case '0':
      return { kind: 'fit' };
  }
  if (ctrlKey || metaKey) return undefined;
  const show = /^[1-9]$/.test(key) ? SHOWN[Number(key) - 1] : undefined;
  if (show) return { kind: 'show', show };
  switch (key) {
    case 'f':
    case 'F':
      return { kind: 'fit' };
    case 'Escape':
      return { kind: 'clear' };
    case 'ArrowLeft':
      return { kind: 'pan', dx: STEP, dy: 0 };
    case 'ArrowRight':
      return { kind: 'pan', dx: -STEP, dy: 0 };
    case 'ArrowUp':
      return { kind: 'pan', dx: 0, dy: STEP };
    case 'ArrowDown':
      return { kind: 'pan', dx: 0, dy: -STEP };
  }
  return undefined;
}
