import { expect, it } from 'vitest';
import { type Figure, isMet, printTable } from './figure.ts';

const tap: Figure = { what: 'tap', against: 'bare page', unit: 'ms', ours: 60, theirs: 48, times: 1.5 };
const bound = { value: 60, most: 56 };

it('an absolute limit counts where the bare page of the same run meets it, and there only', () => {
  expect(isMet(tap)).toBe(true);
  expect(isMet({ ...tap, bound })).toBe(false);
  expect(isMet({ ...tap, theirs: 56, bound })).toBe(false);
  const slow = { ...tap, theirs: 57, bound };
  expect(isMet(slow)).toBe(true);
  expect(printTable([slow])).toContain('not here: the yardstick misses it');
  expect(printTable([tap])).not.toContain('not here');
  // a limit without a yardstick always counts
  expect(isMet({ what: 'size', against: '', unit: 'KB', ours: 60, bound })).toBe(false);
});

it('the ratio counts whatever the machine does', () => {
  expect(isMet({ ...tap, ours: 90, theirs: 57, bound: { value: 90, most: 56 } })).toBe(false);
});
