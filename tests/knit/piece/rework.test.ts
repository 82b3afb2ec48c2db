import { describe, expect, it } from 'vitest';
import { ok } from '../../../src/knit/fault.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { countAt } from '../../../src/knit/piece/count/count-at.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { provePart } from '../../../src/knit/piece/prove.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { asReallyKnitted, recipeOfMake } from '../../../src/knit/piece/rework/make-recipe.ts';
import { rework } from '../../../src/knit/piece/rework.ts';
import { told } from '../../told.ts';
import { reworkTrials } from '../../trials/other-trials.ts';

const recipeOf = (name: string): Recipe => {
  const found = sampleGarment.pieces.find((one) => one.name === name);
  if (!found) throw new Error(name);
  return found;
};
const partsOf = (recipe: Recipe): readonly PlannedPart[] => {
  const planned = plan(recipe);
  if (!planned.ok) throw new Error(told(planned.faults));
  return planned.value.parts;
};

const sleeve = recipeOf('Sleeve');
const sleevePart = partsOf(sleeve)[0] as PlannedPart;
const front = recipeOf('Front');
const body = partsOf(front)[0] as PlannedPart;

const mustRework = (...args: Parameters<typeof rework>) => {
  const made = rework(...args);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};
const first = (...args: Parameters<typeof rework>) => mustRework(...args).parts[0]?.part as PlannedPart;
const count = (part: PlannedPart, rows: number) => countAt(part, rows) ?? 0;
const shapingRows = (part: PlannedPart, from: number) =>
  part.rows
    .filter((row) => row.n > from && row.shaping.some((mark) => mark.kind === 'edge'))
    .map((row) => row.n);

describe('rework of any panel', () => {
  it('keeps worked rows as they are, can be knitted from the stitches really there, and ends as planned', () => {
    const { broken, met, trials } = reworkTrials(150, 80_000);
    expect(broken).toBe(0);
    expect(met).toBeGreaterThan(0.9 * trials);
  }, 60_000);
});

describe('rows not yet knitted in another way', () => {
  const at = (part: PlannedPart, row: number) => {
    const planned = part.rows[row - 1];
    return [part.sections[planned?.section ?? 0]?.fabric, planned?.needle];
  };
  const [, upper] = sleevePart.sections;
  const worked = (upper?.first ?? 0) + 19;
  const other = (change: object) =>
    first(sleeve, 0, sleevePart, worked, { kind: 'section', section: 1, ...change });

  it('another needle or fabric holds from the needle on, and no row that is worked changes', () => {
    const part = other({ fabric: 'moss', needle: 3.25 });
    expect(part.rows.slice(0, worked)).toEqual(sleevePart.rows.slice(0, worked));
    expect([at(part, worked), at(part, worked + 1), at(part, upper?.last ?? 0)]).toEqual([
      ['stocking', 4],
      ['moss', 3.25],
      ['moss', 3.25],
    ]);
    expect(provePart(part)).toEqual(ok(part));
    expect(part.rows.at(-1)?.before).toBe(106);
  });

  it('another rhythm: as many shapings, each so many rows after the last', () => {
    const planned = shapingRows(sleevePart, worked).filter((row) => row <= (upper?.last ?? 0));
    const part = other({ every: 2 });
    const rows = shapingRows(part, worked).filter((row) => row <= (upper?.last ?? 0));
    expect(rows).toHaveLength(planned.length);
    expect(rows[0]).toBe(planned[0]);
    expect(rows.every((row, i) => i === 0 || row - (rows[i - 1] ?? 0) === 2)).toBe(true);
    expect(shapingRows(part, 0).filter((row) => row <= worked)).toEqual(
      shapingRows(sleevePart, 0).filter((row) => row <= worked),
    );
  });

  it('a rhythm that has no room, or a section that is knitted, is refused', () => {
    const refusal = (section: number, change: object) => {
      const made = rework(sleeve, 0, sleevePart, worked, { kind: 'section', section, ...change });
      return made.ok ? [] : made.faults.map(({ code }) => code);
    };
    expect(refusal(1, { every: 40 })).toContain('shaping to come does not fit');
    expect(refusal(0, { needle: 3 })).toEqual(['fewer rows than knitted']);
  });
});

describe('a count that is accepted', () => {
  it('two stitches short: one increase row more than planned over the rows that are left', () => {
    const part = first(sleeve, 0, sleevePart, 60, { kind: 'accept', stitches: count(sleevePart, 60) - 2 });
    expect(part.rows.slice(0, 60)).toEqual(sleevePart.rows.slice(0, 60));
    expect(part.rows).toHaveLength(sleevePart.rows.length);
    expect(shapingRows(part, 60)).toHaveLength(shapingRows(sleevePart, 60).length + 1);
    expect(shapingRows(part, 60).every((row) => part.rows[row - 1]?.side === 'RS')).toBe(true);
    expect(part.rows.at(-1)?.before).toBe(106);
    expect(provePart(part)).toEqual(ok(part));
    expect(countAt(part, 60)).toBe(count(sleevePart, 60) - 2);
  });

  it('one stitch short at a known edge: that edge alone gets one increase more, first of all', () => {
    const part = first(sleeve, 0, sleevePart, 60, {
      kind: 'accept',
      stitches: count(sleevePart, 60) - 1,
      missingAt: 'left',
    });
    const alone = part.rows.filter((row) => row.n > 60 && row.shaping.length === 1);
    expect(alone.map((row) => row.shaping[0]?.edge)).toEqual(['left', 'across']);
    expect(part.rows.at(-1)?.before).toBe(106);
  });

  it('before the spread row after the rib, that row takes it up and everything after it is as planned', () => {
    const made = mustRework(sleeve, 0, sleevePart, 10, { kind: 'accept', stitches: 51 });
    expect(made.how.code).toBe('spread row');
    const part = made.parts[0]?.part as PlannedPart;
    expect(part.rows[18]?.shaping).toEqual([{ kind: 'across', edge: 'across', by: 7 }]);
    expect(part.rows.slice(19).map((row) => row.after)).toEqual(
      sleevePart.rows.slice(19).map((row) => row.after),
    );
  });

  it('where no shaping is left, one row of its own puts it right', () => {
    const made = mustRework(sleeve, 0, sleevePart, 132, { kind: 'accept', stitches: 105 });
    expect(made.how).toMatchObject({ code: 'one row', figures: { off: 1 } });
  });

  it('what cannot be taken up is refused, saying why', () => {
    const made = rework(sleeve, 0, sleevePart, 137, { kind: 'accept', stitches: 3 });
    const faults = made.ok ? [] : made.faults;
    expect(faults.map(({ code }) => code)).toEqual(['cannot be taken up', 'too many for one row']);
    expect(faults.every(({ at }) => at.piece === 'Sleeve')).toBe(true);
  });

  it('can be reworked once more', () => {
    const once = first(sleeve, 0, sleevePart, 40, { kind: 'accept', stitches: count(sleevePart, 40) - 2 });
    const twice = first(sleeve, 0, once, 70, { kind: 'accept', stitches: count(once, 70) + 1 });
    expect(twice.rows.slice(0, 70)).toEqual(once.rows.slice(0, 70));
    expect(twice.rows.at(-1)?.before).toBe(106);
    expect(provePart(twice)).toEqual(ok(twice));
  });

  it('a mitred band keeps its decreases over the centre stitch', () => {
    const band = recipeOf('Neckband');
    const part = partsOf(band)[0] as PlannedPart;
    const made = first(band, 0, part, 3, { kind: 'rows', section: 0, rows: 10 });
    const middle = (rows: PlannedPart['rows']) =>
      rows.filter((row) => row.shaping[0]?.kind === 'middle').map((row) => row.steps);
    expect(middle(made.rows)).toHaveLength(3);
    expect(made.rows.at(-1)?.before).toBe(part.rows.at(-1)?.before);
    expect(JSON.stringify(made.rows[3]?.steps)).toBe(JSON.stringify(part.rows[3]?.steps));
  });
});

describe('a piece that measures other than planned', () => {
  it('the row gauge of this piece follows, and its end comes where it was planned within one row', () => {
    // 42 rows of the sleeve were planned at 150 mm and measure 160
    const part = first(sleeve, 0, sleevePart, 60, { kind: 'measured', heightMm: 160, above: 18 });
    const rowMm = 160 / 42;
    const planned = sleevePart.rows[129]?.height ?? 0;
    const end = part.rows[(part.sections[2]?.last as number) - 1]?.height ?? 0;
    expect(part.cells[2]?.height).toBeCloseTo(rowMm);
    expect(Math.abs(end - planned)).toBeLessThan(rowMm + 0.001);
    expect(part.rows.at(-1)?.before).toBe(106);
    expect(part.rows.length % 2).toBe(sleevePart.rows.length % 2);
    expect(part.rows.slice(0, 60)).toEqual(sleevePart.rows.slice(0, 60));
  });

  it('a figure that can hardly be is asked for again', () => {
    const made = rework(sleeve, 0, sleevePart, 60, { kind: 'measured', heightMm: 16, above: 18 });
    expect(made).toMatchObject({
      ok: false,
      faults: [{ code: 'measure again', figures: { measuredMm: 16, plannedMm: 150 } }],
    });
  });
});

describe('a changed wish', () => {
  it('a longer sleeve: increases spread over the rows there are now, the same number of them', () => {
    const part = first(sleeve, 0, sleevePart, 60, { kind: 'height', section: 1, heightMm: 500 });
    expect(shapingRows(part, 60)).toHaveLength(shapingRows(sleevePart, 60).length);
    expect(part.rows[(part.sections[2]?.last as number) - 1]?.height).toBeCloseTo(500, -1);
    expect(part.rows.at(-1)?.before).toBe(106);
  });

  it('a section cannot have fewer rows than are knitted of it, nor too few for its shaping', () => {
    expect(rework(sleeve, 0, sleevePart, 60, { kind: 'rows', section: 1, rows: 40 })).toMatchObject({
      ok: false,
      faults: [{ code: 'fewer rows than knitted' }],
    });
    expect(rework(sleeve, 0, sleevePart, 60, { kind: 'rows', section: 1, rows: 60 })).toMatchObject({
      ok: false,
      faults: [{ code: 'shaping to come does not fit' }],
    });
  });

  it('a shallower neck: the body goes on longer, the shoulders are shorter and as wide, the whole as high', () => {
    const made = mustRework(front, 0, body, 100, { kind: 'neck', rows: -4 });
    const parts = partsOf(front);
    expect(made.parts.map(({ rows }) => rows.now - rows.was)).toEqual([4, -4, -4]);
    for (const { index, part } of made.parts.slice(1))
      expect(part.rows.at(-1)?.before).toBe(parts[index]?.rows.at(-1)?.before);
    expect(shapingRows(made.parts[0]?.part as PlannedPart, 0)).toEqual(shapingRows(body, 0));
  });

  it('a piece that is all knitted is not planned anew', () => {
    expect(rework(sleeve, 0, sleevePart, 138, { kind: 'rows', section: 1, rows: 120 })).toMatchObject({
      ok: false,
      faults: [{ code: 'nothing left' }],
    });
  });
});

describe('the second make', () => {
  it('is knitted as the first really was: an increase row left out, and made up for later', () => {
    const really = first(sleeve, 0, sleevePart, 60, { kind: 'accept', stitches: count(sleevePart, 60) - 2 });
    const recipe = asReallyKnitted(really);
    if (!recipe) throw new Error('no recipe');
    const second = partsOf({ ...sleeve, parts: [recipe] })[0] as PlannedPart;
    expect(count(second, 60)).toBe(count(sleevePart, 60) - 2);
    expect(second.rows.slice(60).map((row) => row.after)).toEqual(
      really.rows.slice(60).map((row) => row.after),
    );
    expect(second.rows.every((row) => row.before === count(second, row.n - 1))).toBe(true);
  });

  it('has no other plan where the first was knitted as planned', () => {
    expect(asReallyKnitted(sleevePart)).toBeUndefined();
  });

  it('of a mirrored piece is the mirror image, and can be reworked like the first', () => {
    const pair: Recipe = { ...front, makes: 2, mirrored: true };
    const own = recipeOfMake(pair, 2);
    const part = partsOf(own)[0] as PlannedPart;
    const made = first(own, 0, part, 50, { kind: 'accept', stitches: count(part, 50) + 1 });
    expect(made.rows.slice(0, 50)).toEqual(part.rows.slice(0, 50));
    expect(recipeOfMake(pair, 2, [made]).parts[0]).toEqual(made.recipe);
  });
});
