import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { buttonholePlaces, holeStitches } from '../../../src/knit/garment/buttonholes.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { type Draft, draft } from '../../../src/knit/garment/draft.ts';
import { gaugeOfSwatch } from '../../../src/knit/garment/gauges.ts';
import { type Choices, startingDesign } from '../../../src/knit/garment/start.ts';
import { groupsOf, sameParity } from '../../../src/knit/garment/whole-numbers.ts';
import { match } from '../../../src/knit/piece/match.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { workRow } from '../../../src/knit/row/work.ts';
import { loadFaults, saysFault } from '../../../src/words/fault.ts';
import { countingWork } from '../../counted-work.ts';
import { told } from '../../told.ts';
import { graded } from './graded.ts';

await loadFaults();

const woman = bodyOfSize('women', 'M');
if (!woman) throw new Error('women have a medium');

function design(choices: Partial<Choices> = {}, changes: Partial<Design> = {}): Design {
  const all: Choices = { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard', ...choices };
  return {
    ...startingDesign(all, woman as Design['body'], 'stocking', { stitches: 22, rows: 30 }),
    ...changes,
  };
}

function drafted(wish: Design): Draft {
  const made = draft(wish);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
}

const warned = (wish: Design): string[] => drafted(wish).warnings.map((w) => w.code);
function refused(wish: Design): readonly [code: string, field: string | undefined][] {
  const made = draft(wish);
  return made.ok ? [] : made.faults.map((f) => [f.code, f.at.field]);
}

describe('draft', () => {
  it('a garment begun from the table needs no warning, in every kind, armhole and neck', () => {
    for (const kind of ['pullover', 'cardigan', 'vest', 'buttoned vest'] as const) {
      for (const armhole of ['drop', 'indented', 'set-in', 'raglan'] as const) {
        for (const neck of ['V', 'round', 'square', 'boat'] as const) {
          const wish = design({ kind, armhole, neck });
          const isHalter = armhole === 'raglan' && kind.endsWith('vest');
          if (isHalter) expect(refused(wish)).toContainEqual(['raglan without sleeves', 'armhole']);
          else expect(warned(wish), `${kind} ${armhole} ${neck}`).toEqual([]);
        }
      }
    }
  }, 60_000);

  it('a pullover has a back, a front, two sleeves and a band; a cardigan two mirrored fronts and two bands more', () => {
    expect(drafted(design()).recipes.map((r) => [r.name, r.makes])).toEqual([
      ['Back', 1],
      ['Front', 1],
      ['Sleeve', 2],
      ['Neckband', 1],
    ]);
    const cardigan = drafted(design({ kind: 'cardigan' })).recipes;
    expect(cardigan.map((r) => r.name)).toEqual([
      'Back',
      'Front',
      'Sleeve',
      'Neckband',
      'Button band',
      'Buttonhole band',
    ]);
    expect(cardigan[1]).toMatchObject({ makes: 2, mirrored: true });
    expect(drafted(design({ kind: 'cardigan', neck: 'V' })).recipes.map((r) => r.name)).toContain(
      'Front band',
    );
    expect(drafted(design({ kind: 'vest' })).recipes.map((r) => r.name)).toContain('Armhole band');
  });

  it('states each rounding: what was asked, the count, and what it makes beside its seams', () => {
    const { roundings } = drafted(design({}, { lengthMm: 600 }));
    const width = roundings.find((r) => r.measure === 'width at the underarm');
    expect(width).toMatchObject({ askedMm: 508, count: 114, unit: 'stitches' });
    expect(width?.madeMm).toBeCloseTo((112 * 100) / 22, 9);
  });

  it('says which gauges were assumed, and none that was swatched', () => {
    expect(drafted(design()).assumed.map((a) => a.fabric)).toEqual(['rib 2x2']);
    const rib = { stitches: 26, rows: 31 };
    expect(
      drafted(design({}, { gauges: { stocking: { stitches: 22, rows: 30 }, 'rib 2x2': rib } })).assumed,
    ).toEqual([]);
  });

  it('a neck on which the V is mitred loses two stitches at its centre on every row or on every second', () => {
    for (const [mitre, times] of [
      ['every row', 8],
      ['every second row', 4],
    ] as const) {
      const wish = design({ neck: 'V' });
      const band = drafted({ ...wish, neckband: { ...wish.neckband, heightMm: 27, mitre } }).recipes.find(
        (r) => r.name === 'Neckband',
      );
      const planned = band ? plan(band) : undefined;
      if (!planned?.ok) throw new Error('a band plans');
      const rows = planned.value.parts[0]?.rows ?? [];
      expect(rows.filter((r) => r.shaping.some((m) => m.kind === 'middle' && m.by === -2))).toHaveLength(
        times,
      );
    }
  });

  it('a sleeve from the top down ends with the stitches with which it begins from the cuff up', () => {
    for (const armhole of ['drop', 'indented', 'set-in', 'raglan'] as const) {
      const up = design({ armhole });
      const down: Design = { ...up, sleeve: { ...up.sleeve, direction: 'top down' } };
      const [a, b] = [up, down].map((wish) => {
        const recipe = drafted(wish).recipes.find((r) => r.name === 'Sleeve');
        const planned = recipe ? plan(recipe) : undefined;
        if (!planned?.ok) throw new Error('a sleeve plans');
        return planned.value.parts[0];
      });
      expect(b?.rows[b.rows.length - 1]?.before).toBe(a?.start);
      expect(b?.start).toBe(a?.rows[a.rows.length - 1]?.before);
      expect(b?.rows.length).toBe(a?.rows.length);
    }
  });

  it('a sleeve increased after the cuff is increased in one row only', () => {
    const wish = design({ armhole: 'drop' });
    const sleeve = drafted({ ...wish, sleeve: { ...wish.sleeve, shape: 'after cuff' } }).recipes.find(
      (r) => r.name === 'Sleeve',
    );
    const shaping = sleeve?.parts[0]?.sections.flatMap((s) => s.shaping) ?? [];
    expect(shaping).toHaveLength(1);
    expect(shaping[0]).toMatchObject({ kind: 'across', row: 1 });
  });

  it('the cap’s height is solved to a hundredth of a millimetre, and the cap agrees with the armhole', () => {
    for (const capEase of [0, 2, 5]) {
      const wish = design();
      const seam = drafted({ ...wish, sleeve: { ...wish.sleeve, capEase } }).matches.find(
        (m) => m.seam === 'armhole',
      );
      expect(seam).toMatchObject({ unit: 'mm', agrees: true, ease: capEase });
    }
  });
});

describe('what cannot be is refused at its field', () => {
  const base = design();
  it.each([
    ['no chest', { body: { ...base.body, chest: 0 } }, 'bad length', 'body.chest'],
    ['a measure that is no number', { body: { ...base.body, head: Number.NaN } }, 'bad length', 'body.head'],
    ['ease that leaves nothing', { ease: { ...base.ease, wrist: -500 } }, 'ease below nothing', 'ease.wrist'],
    ['no gauge', { gauges: {} }, 'swatch incomplete', 'gauges.stocking'],
    ['a neck wider than the back', { neck: { ...base.neck, widthMm: 440 } }, 'neck too wide', 'neck.widthMm'],
    ['a neck into the hem', { neck: { ...base.neck, depthMm: 630 } }, 'neck too deep', 'neck.depthMm'],
    ['a garment shorter than its armhole', { lengthMm: 200 }, 'too short', 'lengthMm'],
    [
      'shoulders wider than the chest',
      { body: { ...base.body, crossBack: 600 } },
      'back wider than chest',
      'body.crossBack',
    ],
    [
      'a sleeve wider than its armhole',
      { ease: { ...base.ease, upperArm: 300 } },
      'cap does not fit',
      'ease.upperArm',
    ],
    [
      'a sleeve shorter than its cuff',
      { sleeve: { ...base.sleeve, lengthMm: 50 } },
      'sleeve too short',
      'sleeve.lengthMm',
    ],
    ['a waist below the hem', { silhouette: 'waist', lengthMm: 450 }, 'waist outside the side', 'lengthMm'],
  ] as const)('%s', (_, changes, code, field) => {
    expect(refused({ ...base, ...changes } as Design)).toContainEqual([code, field]);
  });

  it('more increases than there are rows', () => {
    const wish: Design = {
      ...base,
      sleeve: { ...base.sleeve, lengthMm: 80 },
      ease: { ...base.ease, upperArm: 100, wrist: -40 },
    };
    expect(refused(wish).map(([code]) => code)).toContain('more shapings than rows');
  });
});

describe('what is unusual is a warning that she can overrule', () => {
  const base = design();
  it.each([
    [
      'the head does not pass',
      { neck: { ...base.neck, widthMm: 90, depthMm: 20, backDepthMm: 0 } },
      'head does not pass',
    ],
    ['ease beyond what is usual', { ease: { ...base.ease, chest: 320 } }, 'unusual ease'],
    [
      'increases on wrong side rows too',
      { sleeve: { ...base.sleeve, lengthMm: 130 } },
      'more shapings than right side rows',
    ],
    ['a cap out of proportion', { ease: { ...base.ease, upperArm: 130 } }, 'cap out of proportion'],
    ['a cuff wider than the sleeve', { ease: { ...base.ease, wrist: 190 } }, 'cuff wider than sleeve'],
    [
      'a neck higher in front than behind',
      { neck: { ...base.neck, depthMm: 20, backDepthMm: 60 } },
      'front neck above back neck',
    ],
    [
      'a straight body over wider hips',
      { body: { ...base.body, hip: 1300 }, lengthMm: 700 },
      'narrow at the hip',
    ],
  ] as const)('%s', (_, changes, code) => {
    const wish = { ...base, ...changes } as Design;
    const found = drafted(wish).warnings.find((w) => w.code === code);
    expect(found).toMatchObject({ overruled: false });
    expect(found?.at.field).toBeDefined();
    expect(found && saysFault(found)).not.toMatch(/[{}]|NaN/);
    const overruled = drafted({ ...wish, overruled: [code] }).warnings.find((w) => w.code === code);
    expect(overruled).toMatchObject({ overruled: true });
  });

  it('a rib whose repeat the body’s count does not fit names the nearest counts that do', () => {
    // 113 stitches without any for seams: neither a multiple of 4 nor 2 more
    const wish: Design = {
      ...base,
      seamStitch: false,
      body: { ...base.body, chest: 2 * ((113 * 100) / 22) - base.ease.chest },
      neck: { ...base.neck, widthMm: (35 * 100) / 22 },
      hem: { ...base.hem, count: 'as body' },
    };
    expect(drafted(wish).warnings.find((w) => w.code === 'rib multiple')).toMatchObject({
      figures: { stitches: 113, belowStitches: 112, aboveStitches: 114 },
      at: { field: 'hem.count' },
    });
  });

  it('a drop shoulder narrower than the arm, and more buttons than the band has room for', () => {
    const narrow = design({ armhole: 'drop' });
    expect(warned({ ...narrow, body: { ...narrow.body, upperArm: 480 } })).toContain(
      'sleeve top narrower than the arm',
    );
    const cardigan = design({ kind: 'cardigan' });
    expect(warned({ ...cardigan, frontBand: { ...cardigan.frontBand, buttons: 40 } })).toContain(
      'too many buttons',
    );
  });
});

describe('button holes', () => {
  it('begin on knit columns that look alike, 10 to 15 mm from either end to a repeat of the rib, the stretches between them alike to a repeat', () => {
    for (const fabric of ['rib 1x1 matched', 'rib 2x2', 'garter'] as const) {
      const period = { 'rib 1x1 matched': 2, 'rib 2x2': 4, garter: 1 }[fabric];
      for (const perCm of [9, 14, 20, 26, 30]) {
        for (let over = 61; over <= 141; over += 20) {
          const gauge = { stitches: perCm, rows: 1.4 * perCm };
          const wish = {
            fabric,
            gauge,
            stitches: over,
            over,
            at: 'right',
            buttons: 5,
            buttonMm: 18,
          } as const;
          const places = buttonholePlaces(wish);
          if (!places) continue;
          const hole = holeStitches(wish);
          if (period === 2) expect(hole % 2, 'ends on a knit stitch').toBe(1);
          const face = { 1: 'k', 2: 'kp', 4: 'kkpp' }[period] ?? 'k';
          for (const place of places) {
            expect(face[place % period]).toBe('k');
            expect(place % period).toBe((places[0] ?? 0) % period);
          }
          const mm = (stitches: number) => (stitches * 100) / perCm;
          const off = mm(period / 2 + 0.5);
          for (const end of [places[0] ?? 0, over - (places.at(-1) ?? 0) - hole]) {
            expect(mm(end)).toBeGreaterThan(12.5 - off - 0.01);
            expect(mm(end)).toBeLessThan(12.5 + 2 * off);
          }
          const gaps = places.slice(1).map((at, i) => at - (places[i] ?? 0));
          expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(period);
          expect(Math.min(...gaps)).toBeGreaterThanOrEqual(hole + 3);
        }
      }
    }
  });

  it('are as wide as the button asks, in the front that lies on top', () => {
    const wide = (buttonMm: number | undefined, stitches: number) =>
      holeStitches({ fabric: 'garter', gauge: { stitches, rows: 30 }, buttonMm });
    expect(wide(undefined, 20)).toBe(2);
    expect([wide(18, 9), wide(18, 20), wide(18, 30), wide(25, 30)]).toEqual([2, 3, 4, 7]);
    const base = design({ kind: 'cardigan', neck: 'round' });
    for (const holesIn of ['right front', 'left front'] as const) {
      const { recipes } = drafted({ ...base, frontBand: { ...base.frontBand, holesIn } });
      const from = recipes.find((r) => r.name === 'Buttonhole band')?.parts[0]?.from;
      expect(from && 'pickUp' in from && from.pickUp[0]?.along).toBe(`${holesIn} edge`);
    }
  });

  it('are bound off on one row and cast on again on the next, as many as there are buttons (Begin to Knit, p. 12: net nothing)', () => {
    const band = drafted(design({ kind: 'cardigan' })).recipes.find((r) => r.name === 'Buttonhole band');
    const holes = band?.parts[0]?.sections.find((s) => s.name === 'button holes')?.words ?? [];
    const stitches = 6 * 3;
    const planned = band ? plan(band) : undefined;
    if (!planned?.ok) throw new Error('a band plans');
    const count = planned.value.parts[0]?.start ?? 0;
    const [first, second] = holes.map((steps, i) => workRow(steps, i === 0 ? count : count - stitches));
    expect(first?.ok && first.value.after).toBe(count - stitches);
    expect(second?.ok && second.value.after).toBe(count);
  });
});

describe('whole numbers', () => {
  it('counts that lie on one another are all even or all odd, none more than a stitch off', () => {
    expect(sameParity([112.2, 93.4, 34.6])).toEqual([112, 94, 34]);
    expect(sameParity([111.1, 92.8, 34.9])).toEqual([111, 93, 35]);
  });

  it('a shoulder is bound off in groups that differ by one at most', () => {
    expect(groupsOf(30, 4)).toEqual([8, 8, 7, 7]);
  });

  it('a swatch counted over any width gives stitches and rows to 100 mm', () => {
    expect(gaugeOfSwatch({ stitches: 33, widthMm: 150, rows: 45, heightMm: 150 })).toEqual({
      stitches: 22,
      rows: 30,
    });
  });
});

describe('match', () => {
  it('says how often to ease in where two edges do not agree', () => {
    const seam = match({
      seam: 'side',
      unit: 'rows',
      first: { piece: 'Front', measure: 124 },
      second: { piece: 'Back', measure: 120 },
      tolerance: 0,
    });
    expect(seam).toMatchObject({ agrees: false, difference: 4, easeInEvery: 31 });
  });

  it('finds the raglan of Begin to Knit whose body has 52 rows and whose sleeve 51', () => {
    const seam = match({
      seam: 'raglan',
      unit: 'rows',
      first: { piece: 'Sleeve', measure: 51 },
      second: { piece: 'Back', measure: 52 },
      tolerance: 0,
    });
    expect(seam).toMatchObject({ agrees: false, difference: -1 });
  });
});

describe('grade', () => {
  it('puts the same garment in several sizes side by side: cast-on, rows, widest and yarn grow with the size', () => {
    const sizes = (['S', 'M', 'L', 'XL'] as const).map((size) => ({
      size,
      body: bodyOfSize('women', size) ?? base.body,
    }));
    const sizesOf = graded(design(), sizes);
    expect(sizesOf.map((g) => g.faults)).toEqual([[], [], [], []]);
    const castOns = sizesOf.map((g) => g.pieces[0]?.castOn ?? 0);
    expect([...castOns].sort((a, b) => a - b)).toEqual(castOns);
    const metres = sizesOf.map((g) => g.metres);
    expect([...metres].sort((a, b) => a - b)).toEqual(metres);
    expect(sizesOf[1]?.pieces[0]).toMatchObject({ name: 'Back', castOn: 114, widest: 114 });
  });
  const base = design();
});

describe('what is done to draft and plan', () => {
  const countedWork = countingWork();

  it('is less than four times as much for four times the stitches', async () => {
    const inGauge = (stitches: number, rows: number) =>
      countedWork(() => {
        const all: Choices = { kind: 'pullover', armhole: 'set-in', neck: 'V', fit: 'standard' };
        const wish = startingDesign(all, woman as Design['body'], 'stocking', { stitches, rows });
        for (const recipe of drafted(wish).recipes) plan(recipe);
      });
    expect(await inGauge(32, 44)).toBeLessThan(4 * (await inGauge(16, 22)));
  });
});
