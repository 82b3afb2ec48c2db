import { describe, expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import { rowOutOfReach } from '../../../src/knit/piece/rework/shoulder-anew.ts';
import { rework } from '../../../src/knit/piece/rework.ts';
import { YarnEnd } from '../../../src/knit/piece/yarn-end.ts';
import { stitchesNamed } from '../../../src/knit/row/stitches-of-steps.ts';
import { told } from '../../told.ts';
import { oldShoulder as oldPlan, turnedShoulder as recipe } from './old-shoulder.ts';

describe('a shoulder that cannot be finished as it was planned', () => {
  it('is known by the row that begins where the yarn does not hang, as long as that is still to come', () => {
    const old = oldPlan();
    expect(rowOutOfReach(old, 4)?.n).toBe(14);
    expect(rowOutOfReach(old, 13)?.n).toBe(14);
    expect(rowOutOfReach(old, 14)).toBeUndefined();
  });

  it('one that is planned today is not', () => {
    const made = plan(recipe);
    const [part] = made.ok ? made.value.parts : [];
    expect(part && rowOutOfReach(part, 0)).toBeUndefined();
  });

  it('is behind her once that row is worked, whatever turns still come', () => {
    const old = oldPlan();
    const [turned, last] = [old.rows[12], old.rows[13]];
    if (!turned || !last) throw new Error('no rows');
    const later = { ...turned, n: 15, before: 0, after: 0, steps: [] };
    expect(rowOutOfReach({ ...old, rows: [...old.rows, later] }, 13)?.n).toBe(14);
    expect(rowOutOfReach({ ...old, rows: [...old.rows, later] }, 14)).toBeUndefined();
  });

  it('is none where the last turn was gone over, or where no row turns', () => {
    const old = oldPlan();
    const plain = (n: number, side: 'RS' | 'WS') => ({ ...old.rows[0], n, side, shaping: [] });
    // the last turn in row 11 with its way back; rows 13 and 14 both on the right side
    const rows = [...old.rows.slice(0, 12), plain(13, 'RS'), plain(14, 'RS')] as typeof old.rows;
    expect(rowOutOfReach({ ...old, rows }, 11)?.n).toBe(14);
    expect(rowOutOfReach({ ...old, rows }, 12)).toBeUndefined();
    const straight = [plain(1, 'RS'), plain(2, 'RS')] as typeof old.rows;
    expect(rowOutOfReach({ ...old, rows: straight }, 0)).toBeUndefined();
  });

  for (const worked of [0, 8, 10, 12]) {
    it(`is closed by a way back and a row over all stitches; ${worked} rows stay as they were knitted`, () => {
      const old = oldPlan();
      const made = rework({ ...recipe, parts: old.recipe ? [old.recipe] : [] }, 0, old, worked, {
        kind: 'shoulder',
      });
      if (!made.ok) throw new Error(told(made.faults));
      const part = made.value.parts[0]?.part;
      if (!part) throw new Error('no part');
      expect(part.rows.slice(0, worked)).toEqual(old.rows.slice(0, worked));
      expect(part.rows).toHaveLength(old.rows.length + 2);
      expect(part.rows.at(-1)).toMatchObject({ before: 24, after: 0 });
      const yarn = new YarnEnd();
      for (const row of part.rows) expect(yarn.goesOn(row), String(row.n)).toBe(true);
      expect(part.rows.some(({ steps }) => stitchesNamed(steps).includes('join yarn'))).toBe(false);
      // the row before the bind-off goes over all stitches
      expect(stitchesNamed(part.rows.at(-2)?.steps ?? [])).not.toContain('unworked');
      expect(rowOutOfReach(part, worked)).toBeUndefined();
    });
  }
});
