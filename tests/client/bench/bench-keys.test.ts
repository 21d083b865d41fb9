import { describe, expect, test } from 'vitest';
import { keyOrder, type Key } from '../../../client/screens/bench/bench-keys.ts';

const key = (name: string, more: Partial<Key> = {}): Key => ({
  key: name,
  code: '',
  shift: false,
  command: false,
  alt: false,
  ...more,
});
const inPicture = (name: string, more: Partial<Key> = {}) => keyOrder(key(name, more), false);
const inField = (name: string, more: Partial<Key> = {}) => keyOrder(key(name, more), true);

describe('keys at the picture', () => {
  test.each([
    ['1', { do: 'stage', stage: 'cut' }],
    ['5', { do: 'stage', stage: 'plastered' }],
    ['P', { do: 'tool', tool: 'polygon' }],
    ['r', { do: 'box-in-middle' }],
    ['ArrowUp', { do: 'nudge', by: [0, -0.01] }],
    ['Delete', { do: 'remove' }],
    ['PageDown', { do: 'turn', to: 'next' }],
    ['0', { do: 'zoom', by: 'all' }],
  ])('%s', (name, order) => expect(inPicture(name)).toEqual(order));
  test('Shift with an arrow changes the size', () =>
    expect(inPicture('ArrowRight', { shift: true })).toEqual({ do: 'grow', by: [0.01, 0] }));
  test('undo and redo, on every keyboard', () => {
    expect(inPicture('z', { command: true })).toEqual({ do: 'undo' });
    expect(inPicture('Z', { command: true, shift: true })).toEqual({ do: 'redo' });
    expect(inPicture('y', { command: true })).toEqual({ do: 'redo' });
  });
  test.each(['6', '9', 'q', 'Tab', 'F5'])('%s is left to the browser', (name) =>
    expect(inPicture(name)).toBeNull(),
  );
  test('so are its own shortcuts', () => {
    expect(inPicture('p', { command: true })).toBeNull();
    expect(inPicture('r', { command: true })).toBeNull();
    expect(inPicture('ArrowLeft', { alt: true })).toBeNull();
  });
});

describe('keys in a text field', () => {
  test.each(['1', 'p', 'r', 'ArrowLeft', 'Delete', 'Backspace', 'Enter', 'PageDown'])('%s is text', (name) =>
    expect(inField(name)).toBeNull(),
  );
  test('undo is that of the text', () => expect(inField('z', { command: true })).toBeNull());
  test('Alt with a digit is the stage, whatever sign the keyboard writes then', () =>
    expect(inField('¡', { alt: true, code: 'Digit1' })).toEqual({ do: 'stage', stage: 'cut' }));
  test('Escape cancels', () => expect(inField('Escape')).toEqual({ do: 'escape' }));
});
