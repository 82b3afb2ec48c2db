import { describe, expect, it } from 'vitest';
import { demoGarment, demoNames } from '../../../src/knit/garment/demo.ts';
import { makingUp } from '../../../src/knit/making-up/making-up.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { yarnFor } from '../../../src/knit/yarn/need.ts';
import { told } from '../../told.ts';

describe.each(demoNames)('the demo %s', (name) => {
  const made = demoGarment(name);
  if (!made.ok) throw new Error(told(made.faults));
  const garment = made.value;

  it('can be knitted, piece by piece', () => {
    for (const piece of garment.pieces) {
      const planned = plan(piece);
      expect(planned.ok ? [] : planned.faults).toEqual([]);
    }
  });

  it('has enough yarn on its list', () => {
    const need = yarnFor(garment);
    if (!need.ok) throw new Error(told(need.faults));
    expect(need.value.short).toBe(0);
    expect(garment.yarns?.[0]?.balls).toBeLessThanOrEqual((need.value.balls ?? 0) + 3);
  });

  it('has sleeves whose cap or top meets the armhole within five in the hundred', () => {
    const steps = makingUp(garment);
    const sleeve = steps.ok ? steps.value.find((s) => s.kind === 'set in sleeves') : undefined;
    if (sleeve?.kind !== 'set in sleeves') throw new Error('no sleeves');
    expect(Math.abs(sleeve.topMm / sleeve.armholeMm - 1)).toBeLessThan(0.05);
  });

  it('can be made up: its shoulders and side seams match', () => {
    const steps = makingUp(garment);
    if (!steps.ok) throw new Error(told(steps.faults));
    const shoulders = steps.value.find((s) => s.kind === 'shoulders');
    expect(shoulders?.kind === 'shoulders' ? shoulders.stitches.difference : 'none').toBe(0);
    const side = steps.value.find((s) => s.kind === 'side seams');
    expect(side?.kind === 'side seams' ? side.rows.difference : 'none').toBe(0);
  });
});

it('the baby’s garment carries the caution on cords and buttons', () => {
  const baby = demoGarment('baby');
  expect(baby.ok && baby.value.notes).toMatch(/no cords.*buttons.*local rules/i);
});
