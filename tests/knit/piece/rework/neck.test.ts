import { expect, it } from 'vitest';
import { plan } from '../../../../src/knit/piece/plan.ts';
import type { Recipe, Section } from '../../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../../src/knit/piece/regauge/regauge.ts';
import { rework } from '../../../../src/knit/piece/rework.ts';
import { told } from '../../../told.ts';

const section = (name: string, rows: number): Section => ({
  name,
  rows,
  fabric: 'stocking',
  needle: 4,
  shaping: [],
});

/** A back of so many sections below its neck. */
const back = (...sections: readonly Section[]): Recipe => ({
  name: 'Back',
  makes: 1,
  gauge: { stitches: 20, rows: 28 },
  parts: [
    { name: 'body', from: { castOn: 20 }, sections, end: 'split' },
    {
      name: 'right',
      from: { part: 'body', stitches: 10, edge: 'right' },
      sections: [section('r', 6)],
      end: 'bind off',
    },
    {
      name: 'left',
      from: { part: 'body', stitches: 10, edge: 'left' },
      sections: [section('l', 6)],
      end: 'bind off',
    },
  ],
});

it.each([
  ['in the last of three sections, with all of the one between still to come', [4, 10, 12], 2, [4, 10, 8]],
  ['in the only section', [20], 6, [20 - 4]],
  ['in the last of two, which is begun', [4, 12], 8, [4, 8]],
] as const)('a neck that begins four rows sooner is so %s', (_, lengths, worked, wanted) => {
  const recipe = back(...lengths.map((rows, i) => section(`s${i}`, rows)));
  const planned = plan(recipe);
  const body = planned.ok ? planned.value.parts[0] : undefined;
  if (!body) throw new Error('no body');
  const made = rework(recipe, 0, body, worked, { kind: 'neck', rows: 4 });
  if (!made.ok) throw new Error(told(made.faults));
  const rows = (index: number) => made.value.parts.find((one) => one.index === index)?.part.rows.length;
  expect(rows(0)).toBe(wanted.reduce((sum, n) => sum + n, 0));
  // six of each shoulder and its bind-off, and the four that are above the parting now
  expect([rows(1), rows(2)]).toEqual([11, 11]);
});

it('a gauge is another’s twentieth or twenty times it at the most: beyond, it was mistyped', () => {
  const scarf: Recipe = {
    name: 'Scarf',
    makes: 1,
    gauge: { stitches: 10, rows: 10 },
    parts: [{ name: 'scarf', from: { castOn: 40 }, sections: [section('scarf', 40)], end: 'bind off' }],
  };
  const codes = (stitches: number, rows: number) => {
    const made = regauge(scarf, { stitches, rows });
    return made.ok ? [] : made.faults.map(({ code }) => code);
  };
  for (const [stitches, rows] of [
    [200, 10],
    [10, 200],
    [0.5, 10],
    [10, 0.5],
  ] as const)
    expect(codes(stitches, rows), `${stitches} ${rows}`).toEqual(['bad gauge']);
  expect(codes(199, 10)).toEqual([]);
  expect(codes(10, 199)).toEqual([]);
  expect(codes(0.6, 0.6)).toEqual([]);
});

it.each([
  ['no rows at all', 0, 'no neck ahead'],
  ['an odd number of rows, which would turn its sides', 3, 'no neck ahead'],
  ['more rows sooner than are left', 8, 'too few rows before the neck'],
] as const)('a neck is not moved by %s', (_, rows, code) => {
  const recipe = back(section('a', 10));
  const planned = plan(recipe);
  const [body, side] = planned.ok ? planned.value.parts : [];
  if (!body || !side) throw new Error('no body');
  const made = rework(recipe, 0, body, 4, { kind: 'neck', rows });
  expect(made.ok ? [] : made.faults.map((one) => one.code)).toEqual([code]);
  // nor from where it is knitted already
  const later = rework(recipe, 1, side, 2, { kind: 'neck', rows: 2 });
  expect(later.ok ? [] : later.faults.map((one) => one.code)).toEqual(['no neck ahead']);
});

it('a neck that begins later leaves its sides so much shorter', () => {
  const recipe = back(section('a', 10));
  const planned = plan(recipe);
  const body = planned.ok ? planned.value.parts[0] : undefined;
  if (!body) throw new Error('no body');
  const made = rework(recipe, 0, body, 4, { kind: 'neck', rows: -2 });
  // twelve rows and then four, and one in which all are bound off
  expect(made.ok && made.value.parts.map(({ index, rows }) => [index, rows])).toEqual([
    [0, { was: 10, now: 12 }],
    [1, { was: 7, now: 5 }],
    [2, { was: 7, now: 5 }],
  ]);
});
