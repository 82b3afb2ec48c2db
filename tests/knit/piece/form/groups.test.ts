import { describe, expect, it } from 'vitest';
import type { GroupShaping } from '../../../../src/knit/piece/form/form.ts';
import { writePair } from '../../../../src/knit/piece/form/groups.ts';

const off = (edge: 'right' | 'left', ...groups: readonly (readonly [number, number])[]): GroupShaping => ({
  kind: 'bind off',
  edge,
  groups: groups.map(([row, stitches]) => ({ row, stitches })),
});

/* An RS row starts at the right edge: of two edges bound off alike the left one comes a row later. */
describe('groups at both edges', () => {
  it('that are alike, a row apart, are one entry', () => {
    expect(writePair(off('right', [1, 5], [3, 4]), off('left', [2, 5], [4, 4]), 'RS')).toEqual({
      kind: 'bind off',
      edge: 'both',
      first: '1',
      every: '2',
      groups: '5, 4',
    });
  });

  it.each<[string, GroupShaping, GroupShaping]>([
    ['one has a group more', off('right', [1, 5]), off('left', [2, 5], [4, 4])],
    ['one has a group less', off('right', [1, 5], [3, 4]), off('left', [2, 5])],
    ['one casts on', off('right', [1, 5]), { ...off('left', [2, 5]), kind: 'cast on' }],
    ['the left one comes first', off('left', [1, 5]), off('right', [2, 5])],
    ['both lie at one edge', off('right', [1, 5]), off('right', [2, 5])],
    ['they lie two rows apart', off('right', [1, 5]), off('left', [3, 5])],
    ['another count is bound off', off('right', [1, 5]), off('left', [2, 4])],
    ['there are none', off('right'), off('left')],
  ])('are two where %s', (_, one, other) => {
    expect(writePair(one, other, 'RS')).toBeUndefined();
  });
});
