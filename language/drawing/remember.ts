import type { RunLayout } from '../layout/index.ts';
import type { Measure } from '../units/index.ts';
import type { View } from './view.ts';

const views = new WeakMap<RunLayout, Map<string, View>>();

/** The view drawn before from the very same laid-out run, or a new one. Forgotten with the run. */
export function remembered(
  run: RunLayout,
  name: string,
  measure: Measure,
  letter: number,
  drawn: () => View,
): View {
  const key = `${measure.unit} ${measure.step} ${letter} ${name}`;
  let own = views.get(run);
  if (!own) {
    own = new Map();
    views.set(run, own);
  }
  let view = own.get(key);
  if (!view) {
    view = drawn();
    own.set(key, view);
  }
  return view;
}
