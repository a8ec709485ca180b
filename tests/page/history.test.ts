import { describe, expect, test } from 'vitest';
import { begin, type Change, changed, type History } from '../../src/page/job/history.ts';

function historyOf(...changes: readonly Change[]): History {
  return changes.reduce(changed, begin('start'));
}

const typed = (text: string, touched: string): Change => ({ kind: 'write', text, touched });
const UNDO: Change = { kind: 'undo' };
const REDO: Change = { kind: 'redo' };

describe('undo', () => {
  test('takes back a word that was typed letter by letter as a whole', () => {
    expect(historyOf(typed('3', 'od'), typed('38', 'od'), UNDO).present).toBe('start');
  });

  test('goes from field to field', () => {
    const two = historyOf(typed('38', 'od'), typed('38 2', 'wall'), UNDO);
    expect(two.present).toBe('38');
    expect(changed(two, UNDO).present).toBe('start');
  });

  test('takes the same field in two steps where it was left between', () => {
    expect(historyOf(typed('3', 'od'), { kind: 'settle' }, typed('38', 'od'), UNDO).present).toBe('3');
  });

  test('does nothing where nothing was changed, and typing the same again is no change', () => {
    expect(historyOf(UNDO)).toEqual(begin('start'));
    expect(historyOf({ kind: 'write', text: 'start' })).toEqual(begin('start'));
  });
});

describe('redo', () => {
  test('brings back what was undone', () => {
    expect(historyOf(typed('38', 'od'), UNDO, REDO).present).toBe('38');
  });

  test('has nothing to bring back after another change', () => {
    expect(historyOf(typed('38', 'od'), UNDO, typed('40', 'od'), REDO).present).toBe('40');
  });
});
