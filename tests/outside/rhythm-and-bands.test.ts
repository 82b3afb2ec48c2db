import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../src/knit/garment/bodies.ts';
import type { Design } from '../../src/knit/garment/design.ts';
import { type Draft, draft } from '../../src/knit/garment/draft.ts';
import { type Choices, startingDesign } from '../../src/knit/garment/start.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart, PlannedRow } from '../../src/knit/piece/planned.ts';
import { runsOf } from '../../src/knit/shape/taper.ts';
import { told } from '../told.ts';

const body = (size: string) => bodyOfSize('women', size) ?? ({} as Design['body']);

function drafted(choices: Partial<Choices>, changes: Partial<Design> = {}, size = 'M', perCm = 22): Draft {
  const all: Choices = { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard', ...choices };
  const gauge = { stitches: perCm, rows: perCm * 1.4 };
  const made = draft({ ...startingDesign(all, body(size), 'stocking', gauge), ...changes });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
}

function partsOf(made: Draft, name: string): readonly PlannedPart[] {
  const recipe = made.recipes.find((one) => one.name === name);
  const planned = recipe && plan(recipe);
  if (!planned?.ok) throw new Error(planned ? told(planned.faults) : name);
  return planned.value.parts;
}

const rowsIn = (part: PlannedPart | undefined, section: string): readonly PlannedRow[] =>
  part?.rows.filter((row) => part.sections[row.section]?.name === section) ?? [];

const singles = (rows: readonly PlannedRow[]): readonly PlannedRow[] =>
  rows.filter((row) => row.shaping.some((mark) => mark.kind === 'edge'));

const sizes = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X'] as const;

describe('what a starting design is shaped by', () => {
  /** Written as leaflets write it: 'every 4th row 26 times, then every 2nd row 7 times' (Patons & Baldwins 45632 and its kin) */
  it('sleeves and raglan lines, of body and sleeve, are two regular stretches; none of a raglan’s rows is on the wrong side but the first', () => {
    for (const size of sizes) {
      for (const armhole of ['set-in', 'raglan', 'drop'] as const) {
        const made = drafted({ armhole }, {}, size);
        const [sleeve] = partsOf(made, 'Sleeve');
        const lines = [rowsIn(sleeve, 'sleeve')];
        if (armhole === 'raglan')
          lines.push(rowsIn(sleeve, 'raglan'), rowsIn(partsOf(made, 'Back')[0], 'raglan'));
        for (const line of lines) {
          const shaped = singles(line).map((row) => row.n);
          expect(
            runsOf(shaped).length,
            `${size} ${armhole} ${JSON.stringify(runsOf(shaped))}`,
          ).toBeLessThanOrEqual(3);
          const wrong = singles(line)
            .filter((row) => row.side === 'WS')
            .map((row) => row.n);
          for (const [i, n] of wrong.entries()) expect(n).toBe((wrong[0] ?? 0) + 2 * i);
        }
      }
    }
  });

  /** J. Wolcott, 'Sleeve length adjustments': an inch at least between the last increase and the underarm */
  it('the last increase of a sleeve lies an inch below the underarm', () => {
    for (const size of sizes) {
      const [sleeve] = partsOf(drafted({}, {}, size), 'Sleeve');
      const rows = rowsIn(sleeve, 'sleeve');
      const last = rows.findLastIndex((row) => row.shaping.some((mark) => mark.by > 0));
      expect(((rows.length - 1 - last) * 100) / 30.8, size).toBeGreaterThanOrEqual(25.4 - 100 / 30.8);
    }
  });

  it('a shoulder has four steps at the most (three or four: common practice; printed leaflets have two)', () => {
    for (const size of sizes) {
      const parts = partsOf(drafted({}, {}, size, 30), 'Back');
      const right = parts.find((part) => part.name === 'right shoulder');
      const groups = [parts[0], right]
        .flatMap((part) => rowsIn(part, 'shoulder'))
        .filter((row) => row.shaping.some((mark) => mark.kind === 'bind off' && mark.edge === 'right'));
      // the last step is bound off by itself
      expect(groups.length).toBeLessThanOrEqual(3);
    }
  });
});

describe('ribs', () => {
  /** B. Schwan, TKGA, 'K2P2 Ribbing', 2022: worked flat, a multiple of four and two; H. Briscoe, 'full-stitch seaming' */
  it('of two and two begin and end with two knit stitches in every piece that is sewn at its edges', () => {
    for (const size of sizes) {
      for (const direction of ['cuff up', 'top down'] as const) {
        const base = startingDesign(
          { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' },
          body(size),
          'stocking',
          { stitches: 22, rows: 30 },
        );
        const made = drafted({}, { sleeve: { ...base.sleeve, direction } }, size);
        for (const [piece, section] of [
          ['Back', 'hem'],
          ['Front', 'hem'],
          ['Sleeve', 'cuff'],
          ['Neckband', 'band'],
        ] as const) {
          const [part] = partsOf(made, piece);
          for (const row of rowsIn(part, section)) {
            expect(row.before % 4, `${piece} ${size} ${direction}`).toBe(2);
            expect(
              row.shaping.some((mark) => mark.kind === 'across'),
              `${piece}: no rib row is broken`,
            ).toBe(false);
          }
        }
      }
    }
  });
});

describe('the band of a square neck', () => {
  /** a right angle takes two stitches off on every second row: S. Robicheau, 'Pointe On', Berroco; D. Jones, 2013 */
  it('loses two stitches at each corner on every right side row, around a stitch that is knit', () => {
    for (const armhole of ['set-in', 'raglan'] as const) {
      for (const fabric of ['rib 2x2', 'rib 1x1 matched', 'garter'] as const) {
        const made = drafted(
          { neck: 'square', armhole },
          { neckband: { fabric, heightMm: 25, mitre: 'every second row' } },
        );
        const [band] = partsOf(made, 'Neckband');
        const shaped = band?.rows.filter((row) => row.shaping.length > 0 && row.after > 0) ?? [];
        expect(shaped.length).toBeGreaterThan(2);
        for (const row of shaped) {
          expect(row.side).toBe('RS');
          expect(row.shaping.map((mark) => mark.by)).toEqual([-2, -2]);
          expect(JSON.stringify(row.steps).match(/s2kp/g)).toHaveLength(2);
        }
      }
    }
  });

  it('in every row keeps the middle stitch on top from the wrong side too (Purl Soho, Slip Slip Purl Pass)', () => {
    const made = drafted(
      { neck: 'V' },
      { neckband: { fabric: 'rib 1x1 matched', heightMm: 25, mitre: 'every row' } },
    );
    const said =
      partsOf(made, 'Neckband')[0]
        ?.rows.filter((row) => row.after > 0)
        .map((row) => JSON.stringify(row.steps)) ?? [];
    expect(said.some((steps) => steps.includes('s2pp'))).toBe(true);
    for (const steps of said) expect(steps).not.toContain('p3tog');
  });
});
