import { describe, expect, it } from 'vitest';
import { begin, changed, undone } from '../../../../src/app/drafts/editor/history.ts';

describe('taking back', () => {
  it('keystrokes in one field are one step, those of the next field another', () => {
    let history = begin('');
    for (const text of ['1', '12']) history = changed(history, text, 'typed', 'castOn');
    history = changed(history, '12 6', 'typed', 'rows');
    expect(undone(history).now).toBe('12');
    expect(undone(undone(history)).now).toBe('');
    expect(undone(undone(undone(history))).now).toBe('');
  });

  it('typing after something was taken back is a step of its own', () => {
    let history = changed(changed(begin('a'), 'ab', 'typed', 'name'), 'abc', 'removed');
    history = changed(undone(history), 'abd', 'typed', 'name');
    expect(undone(history).now).toBe('ab');
  });

  it('what changes nothing is no step', () => {
    const history = begin('a');
    expect(changed(history, 'a', 'typed')).toBe(history);
  });

  it('keeps a hundred steps', () => {
    let history = begin(0);
    for (let i = 1; i <= 150; i += 1) history = changed(history, i, 'added');
    for (let i = 0; i < 150; i += 1) history = undone(history);
    expect(history.now).toBe(50);
  });
});
