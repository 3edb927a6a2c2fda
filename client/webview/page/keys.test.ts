import { expect, it } from 'vitest';
import { keyGesture } from './keys.ts';

const key = (name: string, held: { ctrlKey?: boolean; altKey?: boolean } = {}) =>
  keyGesture({ key: name, ctrlKey: false, metaKey: false, altKey: false, ...held });

it('zooms with plus and minus, with Control or without', () => {
  for (const held of [{}, { ctrlKey: true }]) {
    expect(key('+', held)).toEqual({ kind: 'zoom', factor: 1.25 });
    expect(key('=', held)).toEqual({ kind: 'zoom', factor: 1.25 });
    expect(key('-', held)).toEqual({ kind: 'zoom', factor: 0.8 });
  }
});

it('shows other views with their numbers', () => {
  expect(key('1')).toEqual({ kind: 'show', show: 'front' });
  expect(key('5')).toEqual({ kind: 'show', show: 'eye' });
  expect(key('6')).toEqual({ kind: 'show', show: 'all' });
  expect(key('7')).toBeUndefined();
  expect(key('1', { ctrlKey: true })).toBeUndefined();
});

it('leaves to the editor what is the editor’s', () => {
  for (const name of ['f', 'ArrowLeft', 'p', 's']) expect(key(name, { ctrlKey: true })).toBeUndefined();
  for (const name of ['f', '+', 'ArrowUp']) expect(key(name, { altKey: true })).toBeUndefined();
  for (const name of ['a', 'Tab', 'Enter', 'F1']) expect(key(name)).toBeUndefined();
});
