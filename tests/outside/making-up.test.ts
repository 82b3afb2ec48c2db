import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../src/knit/garment/bodies.ts';
import { demoGarment } from '../../src/knit/garment/demo.ts';
import type { Body, Design } from '../../src/knit/garment/design.ts';
import { draft } from '../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { type Choices, startingDesign } from '../../src/knit/garment/start.ts';
import { makingUp } from '../../src/knit/making-up/making-up.ts';
import type { MakingUpStep } from '../../src/knit/making-up/step.ts';
import type { Garment } from '../../src/knit/piece/garment.ts';
import { told } from '../told.ts';

/** Rules of finishing as they are published, held against what a garment's list says. */

function steps(garment: Garment): readonly MakingUpStep[] {
  const made = makingUp(garment);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
}

function of<K extends MakingUpStep['kind']>(
  list: readonly MakingUpStep[],
  kind: K,
): Extract<MakingUpStep, { kind: K }> {
  const found = list.find((step) => step.kind === kind);
  if (!found) throw new Error(`no step ${kind}`);
  return found as Extract<MakingUpStep, { kind: K }>;
}

/** A woman's M at 22 × 30, drafted. */
function woman(choices: Partial<Choices>, change: Partial<Design> = {}): Garment {
  const all: Choices = { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard', ...choices };
  const body = bodyOfSize('women', 'M') as Body;
  const usual = startingDesign(all, body, 'stocking', { stitches: 22, rows: 30 });
  const made = draft({ ...usual, ...change });
  if (!made.ok) throw new Error(told(made.faults));
  return { name: 'M', pieces: made.value.recipes, joints: made.value.joints };
}

/** Rows of the back's sections of these names. */
const rowsOf = (garment: Garment, ...names: readonly string[]): number =>
  (garment.pieces[0]?.parts ?? [])
    .filter(({ from }) => !('part' in from) || from.edge === 'right')
    .flatMap(({ sections }) => sections)
    .reduce((sum, { name, rows }) => sum + (names.includes(name) ? rows : 0), 0);

describe('drop shoulders: the sleeve is sewn on between markers, and the side seam ends below it', () => {
  it('counted by hand on the plan of the Pebble jacket: 58 rows from its lower edge to the sleeve, not the panel’s 94', () => {
    const baby = demoGarment('baby');
    if (!baby.ok) throw new Error(told(baby.faults));
    expect(of(steps(baby.value), 'side seams').rows).toMatchObject({ first: 58, second: 58, difference: 0 });
    expect(rowsOf(baby.value, 'hem', 'body', 'armhole', 'shoulder')).toBe(94);
  });

  it('M. S. Huff, ‘Plotting a sleeve’: the sleeve’s top is as wide as both armholes are deep', () => {
    const { markerMm, topMm } = of(steps(woman({ armhole: 'drop' })), 'set in sleeves');
    expect(Math.abs(topMm - 2 * markerMm)).toBeLessThan(100 / 22 + 100 / 30);
  });
});

describe('raglans', () => {
  const kinds = steps(woman({ armhole: 'raglan' })).map(({ kind }) => kind);

  it('Estelle Yarns, knit-along, week 5 (2015): three raglan seams, then the collar back and forth, then the fourth', () => {
    const joined = kinds.filter((kind) => kind !== 'block');
    expect(joined).toEqual(['raglan', 'pick up', 'close', 'side seams', 'sleeve seams', 'ends']);
    const list = steps(woman({ armhole: 'raglan' }));
    expect(of(list, 'raglan')).toMatchObject({ seams: 3, rows: { difference: 0 } });
    expect(of(list, 'close').seam).toMatchObject({ of: 'raglan', both: { difference: 0 } });
  });

  it('an open front’s collar is knitted once all four are sewn (common practice, no published source)', () => {
    const list = steps(woman({ armhole: 'raglan', kind: 'cardigan' }));
    expect(of(list, 'raglan').seams).toBe(4);
    expect(list.some(({ kind }) => kind === 'close')).toBe(false);
  });
});

describe('set-in sleeves', () => {
  it('the side seam ends where the armhole begins, also where its first step is a single stitch, or the back is in short rows', () => {
    for (const change of [{}, { shoulder: 'short rows' as const }]) {
      for (const fit of ['very close', 'standard', 'oversized'] as const) {
        const garment = woman({ fit }, change);
        const list = steps(garment);
        expect(of(list, 'side seams').rows.first).toBe(rowsOf(garment, 'hem', 'body'));
        expect(of(list, 'set in sleeves').markerRows).toBe(rowsOf(garment, 'armhole'));
      }
    }
  });

  it('what is bound off at the underarm is sewn to the sleeve’s own, and cap and armhole meet within a row and a stitch of each, cuff up and top down (common practice, no published source)', () => {
    for (const direction of ['cuff up', 'top down'] as const) {
      const garment = woman({}, { sleeve: { shape: 'tapered', direction, capEase: 0 } });
      const { topMm, armholeMm, underarm } = of(steps(garment), 'set in sleeves');
      expect(underarm.rows).toBe(0);
      expect(underarm.stitches).toBeGreaterThan(0);
      expect(Math.abs(topMm - armholeMm)).toBeLessThan(2 * (100 / 22 + 100 / 30));
    }
  });
});

describe('indented armholes', () => {
  it('K. Buss, Big Book of Knitting (by its look), p. 180: the sleeve’s sides are sewn into the notch, so its seam ends below them: 130 rows of the sample’s 138', () => {
    const list = steps(sampleGarment);
    expect(of(list, 'sleeve seams').rows).toBe(130);
    expect(of(list, 'set in sleeves').underarm).toEqual({ stitches: 6, rows: 8 });
  });

  it('the notch is as deep in rows of the sleeve as it is wide in stitches of the body', () => {
    const { underarm } = of(steps(woman({ armhole: 'indented' })), 'set in sleeves');
    expect(Math.abs(underarm.rows / 30 - underarm.stitches / 22) * 100).toBeLessThan(200 / 30);
  });
});
