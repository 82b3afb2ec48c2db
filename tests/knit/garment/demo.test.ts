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

/* The figures of the scenario: our own numbers, which pictures and texts show. */
it.each([
  [
    'cardigan',
    {
      chest: 940,
      waist: 800,
      hip: 1000,
      crossBack: 370,
      napeToWrist: 760,
      napeToWaist: 425,
      arm: 440,
      upperArm: 300,
      wrist: 165,
      armholeDepth: 190,
      head: 560,
    },
    {
      kind: 'cardigan',
      armhole: 'set-in',
      neck: 'V',
      lengthMm: 600,
      buttons: 7,
      hemMm: 57,
      cuffMm: 57,
      panels: 4,
      borders: 3.5,
    },
    { fabric: 'stocking', gauges: { stocking: { stitches: 24, rows: 33 } } },
    ['Orchard cardigan', 'Brackenfold Light', 'lambswool', 'quince', '21', 50, 150, 12],
  ],
  [
    'baby',
    {
      chest: 440,
      waist: 440,
      hip: 450,
      crossBack: 190,
      napeToWrist: 290,
      napeToWaist: 175,
      arm: 165,
      upperArm: 150,
      wrist: 115,
      armholeDepth: 92,
      head: 430,
    },
    {
      kind: 'cardigan',
      armhole: 'drop',
      neck: 'round',
      lengthMm: 260,
      buttons: 5,
      hemMm: 25,
      cuffMm: 25,
      panels: 3.25,
      borders: 2.75,
    },
    { fabric: 'stocking', gauges: { stocking: { stitches: 26, rows: 36 } } },
    ['Pebble jacket', 'Millrace Fine', 'merino wool', 'pebble', '8', 50, 180, 3],
  ],
] as const)('the demo %s is the one that is told of', (name, body, shape, swatch, texts) => {
  const made = demoGarment(name);
  if (!made.ok) throw new Error(told(made.faults));
  const { design, yarns, name: title, credits, licence, notes } = made.value;
  const { kind, armhole, neck, lengthMm, frontBand, hem, cuff, needles } = design;
  expect(design.body).toEqual(body);
  expect({
    kind,
    armhole,
    neck: neck.shape,
    lengthMm,
    buttons: frontBand.buttons,
    hemMm: hem.heightMm,
    cuffMm: cuff.heightMm,
    ...needles,
  }).toEqual(shape);
  expect(design).toMatchObject(swatch);
  const [yarn] = yarns ?? [];
  expect([
    title,
    yarn?.name,
    yarn?.fibre,
    yarn?.colour,
    yarn?.dyeLot,
    yarn?.grams,
    yarn?.metres,
    yarn?.balls,
  ]).toEqual(texts);
  expect(credits).toMatch(/numbers of our own/);
  expect(licence).toBe('CC0-1.0');
  expect(notes).toMatch(name === 'cardigan' ? /mirror image.*right band only/ : /no cords/);
});
