import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { countAt } from '../../../src/knit/piece/count/count-at.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { rework } from '../../../src/knit/piece/rework.ts';
import { ripBack } from '../../../src/knit/piece/rip-back.ts';
import { told } from '../../told.ts';
import { ripTrials } from '../../trials/other-trials.ts';

const recipe = (name: string) => {
  const found = sampleGarment.pieces.find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
};
const partOf = (piece: string): PlannedPart => {
  const planned = plan(recipe(piece));
  if (!planned.ok) throw new Error(`${piece} cannot be planned`);
  return planned.value.parts[0] as PlannedPart;
};

const sleeve = partOf('Sleeve');
const back = partOf('Back');

describe('rip back', () => {
  it('and knit forward again: every count is as before', () => {
    expect(ripTrials(150, 60_000)).toEqual({ trials: 150, differing: 0 });
  }, 60_000);

  it('says how many rows to pull, the count after them, and which shaping has to be worked again', () => {
    const ripped = ripBack(sleeve, 60, { to: 50 });
    expect(ripped).toMatchObject({
      ok: true,
      value: { rows: 10, count: 72, shaping: [51, 55, 59], nextSide: 'RS', uncertain: 0 },
    });
    if (ripped.ok) expect(ripped.value.counts.at(-1)).toBe(72);
  });

  it('stitches bound off in the rows pulled come back to the needle', () => {
    const ripped = ripBack(back, 120, { to: 116 });
    expect(ripped).toMatchObject({
      ok: true,
      value: {
        count: 118,
        groups: [
          { row: 117, stitches: 6 },
          { row: 118, stitches: 6 },
        ],
      },
    });
  });

  it('goes to the nearest lifeline below, or to the last row where the count was right', () => {
    expect(ripBack(sleeve, 60, { lifelines: [20, 48, 60] })).toMatchObject({
      ok: true,
      value: {
        to: 48,
        stops: [
          { row: 48, why: 'lifeline' },
          { row: 48, why: 'plain row' },
        ],
      },
    });
    expect(ripBack(sleeve, 60, { firmGround: 40 })).toMatchObject({ ok: true, value: { to: 40 } });
  });

  it.each([
    [{ lifelines: [60, 70] }, 'no lifeline'],
    [{ firmGround: undefined }, 'no firm ground'],
    [{ to: 60 }, 'nothing to rip'],
    [{ to: -1 }, 'row outside'],
  ])('refuses %j with the reason', (target, code) => {
    expect(ripBack(sleeve, 60, target)).toMatchObject({ ok: false, faults: [{ code }] });
  });

  it('below a count that was accepted, says by how many stitches it may be off', () => {
    const made = rework(recipe('Sleeve'), 0, sleeve, 60, {
      kind: 'accept',
      stitches: (countAt(sleeve, 60) ?? 0) - 2,
    });
    if (!made.ok) throw new Error(told(made.faults));
    const part = made.value.parts[0]?.part as PlannedPart;
    expect(ripBack(part, 66, { to: 55 })).toMatchObject({ ok: true, value: { uncertain: 2 } });
    expect(ripBack(part, 66, { to: 60 })).toMatchObject({
      ok: true,
      value: { uncertain: 0, count: (countAt(sleeve, 60) ?? 0) - 2 },
    });
  });
});
