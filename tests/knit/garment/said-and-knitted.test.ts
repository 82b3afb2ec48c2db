import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { usualEase } from '../../../src/knit/garment/ease.ts';
import { armholeKinds } from '../../../src/knit/garment/kinds/armholes.ts';
import { type GarmentKind, garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { neckShapes } from '../../../src/knit/garment/kinds/necks.ts';
import { silhouettes } from '../../../src/knit/garment/kinds/silhouettes.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { told } from '../../told.ts';

/** What a draft says of a garment, held against the rows that it makes: counted on the pieces, not reckoned again. */

const body = bodyOfSize('women', 'M');
if (body === undefined) throw new Error('no such size');
const gauge = { stitches: 22, rows: 30 };
const kinds = Object.keys(garmentKinds) as GarmentKind[];

const designOf = (kind: GarmentKind, over: Partial<Design> = {}): Design => ({
  ...startingDesign({ kind, armhole: 'set-in', neck: 'round', fit: 'standard' }, body, 'stocking', gauge),
  ...over,
});

const draftOf = (design: Design) => {
  const drafted = draft(design);
  if (!drafted.ok) throw new Error(told(drafted.faults));
  return drafted.value;
};

const designs = kinds.flatMap((kind) =>
  armholeKinds
    .filter((armhole) => armhole !== 'raglan' || garmentKinds[kind].sleeves)
    .flatMap((armhole, i) =>
      silhouettes.map((silhouette, j) => {
        const shape = neckShapes[(i + j) % neckShapes.length] ?? 'round';
        const design = startingDesign(
          { kind, armhole, neck: shape, fit: 'standard' },
          body,
          'stocking',
          gauge,
        );
        return {
          name: `${kind}, ${armhole}, ${silhouette}, ${shape} neck`,
          // seam stitches are counted in the laws
          design: { ...design, silhouette, seamStitch: false },
        };
      }),
    ),
);

const rowsIn = (parts: readonly PlannedPart[], section?: string) =>
  parts.flatMap(({ rows, sections }) =>
    rows.filter((row) => row.after > 0 && (section === undefined || sections[row.section]?.name === section)),
  );

describe.each(designs)('a $name', ({ design }) => {
  const drafted = draft(design);
  const said = (piece: string, measure: string) =>
    drafted.ok
      ? drafted.value.roundings.find((one) => one.piece === piece && one.measure === measure)
      : undefined;
  const partsOf = (name: string): readonly PlannedPart[] => {
    const recipe = drafted.ok ? drafted.value.recipes.find((one) => one.name === name) : undefined;
    const planned = recipe && plan(recipe);
    return planned?.ok ? planned.value.parts : [];
  };

  it('has each figure of its back as it is counted there', () => {
    if (!drafted.ok) throw new Error(told(drafted.faults));
    const parts = partsOf('Back');
    const [lower] = parts;
    if (lower === undefined) throw new Error('no back');
    const hem = rowsIn([lower], 'hem');
    const above = lower.rows[hem.length];
    expect(said('Back', 'hem height')?.count).toBe(hem.length);
    // what is on the needle where the armhole begins
    const armhole = lower.rows.findIndex(({ section }) =>
      /armhole|raglan/.test(lower.sections[section]?.name ?? ''),
    );
    const underarm =
      armhole > 0 ? lower.rows[armhole]?.before : Math.max(...lower.rows.map(({ after }) => after));
    expect(said('Back', 'width at the underarm')?.count).toBe(underarm);
    if (design.silhouette === 'straight') expect(said('Back', 'width above the hem')).toBeUndefined();
    else expect(said('Back', 'width above the hem')?.count).toBe(above?.after);
    const body_ = rowsIn([lower], 'body').map(({ after }) => after);
    if (design.silhouette === 'waist')
      expect(said('Back', 'width at the waist')?.count).toBe(Math.min(...body_));
    else expect(said('Back', 'width at the waist')).toBeUndefined();
    const across = said('Back', 'width across the shoulders');
    if (design.armhole === 'set-in' || design.armhole === 'indented') {
      expect(across?.count).toBeLessThan(underarm ?? 0);
      expect(lower.rows.map(({ after }) => after)).toContain(across?.count);
    } else expect(across).toBeUndefined();
  });

  it('measures what was asked for to the nearest stitch or pair of rows, and says what that makes', () => {
    if (!drafted.ok) throw new Error(told(drafted.faults));
    expect(drafted.value.roundings.length).toBeGreaterThan(5);
    for (const { measure, askedMm, madeMm, count, unit, unitMm } of drafted.value.roundings) {
      if (!/length/.test(measure)) expect(madeMm, measure).toBeCloseTo(count * unitMm, 6);
      if (unit === 'rows') expect(count % 2, measure).toBe(0);
      // a border has a gauge of its own, ribs and mirror images ask for their multiples
      expect(Math.abs(madeMm - askedMm), measure).toBeLessThan(unit === 'rows' ? 4 * unitMm : 5 * unitMm);
    }
  });

  it('has a sleeve as long and as wide as is said, where it has sleeves at all', () => {
    const sleeve = partsOf('Sleeve');
    if (!garmentKinds[design.kind].sleeves) {
      expect(sleeve).toEqual([]);
      expect(said('Sleeve', 'sleeve width')).toBeUndefined();
      return;
    }
    const [lower] = sleeve;
    if (lower === undefined) throw new Error('no sleeve');
    const widest = Math.max(...lower.rows.map(({ after }) => after));
    expect(said('Sleeve', 'sleeve width')?.count).toBe(widest);
    expect(said('Sleeve', 'cuff height')?.count).toBe(rowsIn([lower], 'cuff').length);
    const long = [...rowsIn([lower], 'cuff'), ...rowsIn([lower], 'sleeve')].length;
    expect(said('Sleeve', 'sleeve length')?.count).toBe(long);
  });

  it('has bands where edges are left, and no others', () => {
    if (!drafted.ok) throw new Error(told(drafted.faults));
    const names = drafted.value.recipes.map(({ name }) => name);
    const { open, sleeves } = garmentKinds[design.kind];
    const bands = names.filter(
      (name) => !['Back', 'Front', 'Right front', 'Left front', 'Sleeve'].includes(name),
    );
    expect(bands.includes('Armhole band')).toBe(!sleeves);
    // a garment that opens has a band down each front besides, or one all the way around with the neck's
    const fronts = bands.filter((name) => name !== 'Armhole band' && name !== 'Neckband');
    expect(fronts.length > 0, fronts.join()).toBe(open);
    expect(names.filter((name) => /front$/i.test(name)).length).toBe(names.includes('Front') ? 1 : 2);
  });
});

describe('a draft asks whether it is meant', () => {
  const warned = (design: Design) => draftOf(design).warnings.map(({ code, at }) => `${code}: ${at.field}`);
  const eased = (name: keyof typeof usualEase, mm: number, over: Partial<Design> = {}) => {
    // a sleeve of a drop shoulder has no cap that would not fit
    const design = designOf('pullover', { armhole: 'drop', ...over });
    return warned({ ...design, ease: { ...design.ease, [name]: mm } }).filter((one) =>
      one.startsWith('unusual'),
    );
  };

  it.each(['chest', 'upperArm', 'wrist'] as const)(
    'when the ease of the %s is unusual, and not at its ends',
    (name) => {
      const [least, most] = usualEase[name];
      expect(eased(name, most)).toEqual([]);
      expect(eased(name, most + 1)).toEqual([`unusual ease: ease.${name}`]);
      expect(eased(name, Math.ceil(least))).toEqual([]);
    },
  );

  it('of the hip only where it is shaped for it', () => {
    const [, most] = usualEase.hip;
    expect(eased('hip', most + 1)).toEqual([]);
    expect(eased('hip', most + 1, { silhouette: 'tapered' })).toEqual(['unusual ease: ease.hip']);
    expect(eased('hip', most, { silhouette: 'tapered' })).toEqual([]);
  });

  it('and never about the arms of a vest', () => {
    const design = designOf('vest');
    expect(warned({ ...design, ease: { ...design.ease, wrist: 900, upperArm: 900 } })).toEqual(
      warned(design),
    );
  });

  it('when the front of the neck is higher than its back', () => {
    const neck = (depthMm: number) => {
      const design = designOf('pullover');
      return warned({ ...design, neck: { ...design.neck, depthMm, backDepthMm: 30 } });
    };
    expect(neck(30)).not.toContain('front neck above back neck: neck.depthMm');
    expect(neck(20)).toContain('front neck above back neck: neck.depthMm');
  });

  it('and remembers what she has overruled, by its name alone', () => {
    const design = { ...designOf('pullover'), ease: { ...designOf('pullover').ease, wrist: 300 } };
    expect(draftOf(design).warnings.find(({ code }) => code === 'unusual ease')?.overruled).toBe(false);
    const overruled = draftOf({ ...design, overruled: ['unusual ease'] });
    expect(overruled.warnings.find(({ code }) => code === 'unusual ease')?.overruled).toBe(true);
    const other = draftOf({ ...design, overruled: ['narrow shoulder'] });
    expect(other.warnings.find(({ code }) => code === 'unusual ease')?.overruled).toBe(false);
  });
});
