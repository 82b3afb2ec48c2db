import { afterEach, expect, it } from 'vitest';
import { inHand, isFelt, rowNow, type Saving, saving } from '../../src/app/state.ts';
import { plainPart } from '../store/scenario.ts';

afterEach(() => {
  saving.value = 'saved';
  inHand.value = undefined;
});

it('a tap is felt while it takes longer than she notices, and in no other state', () => {
  const states: readonly Saving[] = ['saved', 'saving', 'felt', 'slow', 'held', 'failed'];
  const felt = states.filter((state) => {
    saving.value = state;
    return isFelt.value;
  });
  expect(felt).toEqual(['felt', 'slow']);
});

it('the row now is the one after those worked, none at the end or while nothing is in hand', () => {
  const part = plainPart(3);
  const at = (rows: number) => {
    inHand.value = { part, place: { rows } } as NonNullable<typeof inHand.value>;
    return rowNow.value?.n;
  };
  expect([0, 1, 2, 3].map(at)).toEqual([1, 2, 3, undefined]);
  inHand.value = null;
  expect(rowNow.value).toBeUndefined();
});
