import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { garmentRecord, logEntry, photoText, planRecord } from '../../../src/store/shapes/record-shapes.ts';
import { step, whole } from './whole-values.ts';

/**
 * What may stand in a stored garment, plan, entry and photo: the last number and the longest text that are taken, the
 * first that are not, and every word of each choice. Spelled out: what is narrowed keeps an old backup from opening.
 */

const shapes = { garment: garmentRecord, plan: planRecord, entry: logEntry, photo: photoText };

function withAt(value: unknown, [key, ...rest]: readonly string[], other: unknown): unknown {
  if (key === undefined) return other;
  const inner = withAt((value as Record<string, unknown>)[key], rest, other);
  return Array.isArray(value) ? value.with(Number(key), inner) : { ...(value as object), [key]: inner };
}

const isTaken = (path: string, value: unknown): boolean => {
  const [kind, ...fields] = path.split('.') as [keyof typeof shapes, ...string[]];
  return v.is(shapes[kind], withAt(whole[kind], fields, value));
};

const PIECE = 'garment.pieces.0.recipe';
const SECTION = `${PIECE}.parts.0.sections.0`;
const SEAM = 'garment.joints.0';

/** kinds of numbers: what is taken at the ends, and what lies just beyond */
const numbers = {
  count: [
    [0, 100_000],
    [-1, 100_001, 1.5, Number.NaN],
  ],
  signed: [
    [-100_000, 100_000],
    [-100_001, 100_001, 0.5],
  ],
  measure: [
    [0.001, 1_000_000],
    [0, 1_000_001, -1, Number.POSITIVE_INFINITY],
  ],
  height: [
    [0, 1_000_000],
    [-0.1, 1_000_001],
  ],
  length: [
    [-1_000_000, 1_000_000],
    [-1_000_001, 1_000_001],
  ],
  percent: [
    [0, 1000],
    [-1, 1001],
  ],
  ease: [
    [-100, 100],
    [-101, 101],
  ],
  time: [
    [0, 1e14],
    [-1, 1e14 + 1],
  ],
  running: [
    [0, 1e15],
    [-1, 1e15 + 1, 0.5],
  ],
  seq: [
    [1, 1e15],
    [0, 1e15 + 1],
  ],
} as const;
const ofNumbers: Readonly<Record<keyof typeof numbers, readonly string[]>> = {
  count: [
    `${PIECE}.makes`,
    `${PIECE}.parts.0.from.castOn`,
    `${PIECE}.parts.1.from.stitches`,
    `${PIECE}.parts.2.from.pickUp.0.stitches`,
    ...['rows', 'onNeedle', 'shaping.0.rows.0', 'shaping.0.inset', 'shaping.1.row', 'shaping.2.rows.0'].map(
      (f) => `${SECTION}.${f}`,
    ),
    ...['shaping.2.from', 'shaping.3.groups.0.row', 'shaping.3.groups.0.stitches', 'words.0.0.times'].map(
      (f) => `${SECTION}.${f}`,
    ),
    ...['make', 'rows.first', 'rows.last', 'stitches.from', 'stitches.to'].map((f) => `${SEAM}.a.0.${f}`),
    ...[
      'yarns.0.balls',
      'yarns.0.strands',
      'taken.0.make',
      'stripes.0.rows',
      'striped.long.first',
      'striped.long.last',
      ...['make', 'part', 'row', 'at', 'stripes.0.rows'].map((f) => `restriped.0.${f}`),
    ].map((f) => `garment.${f}`),
    ...['joints.1.make', 'joints.1.along.0.stitches'].map((f) => `garment.${f}`),
    ...[
      'part',
      'plan.start',
      'plan.left',
      'plan.rows.0.n',
      'plan.rows.0.section',
      'plan.rows.0.before',
      'plan.rows.0.after',
    ].map((f) => `plan.${f}`),
    'plan.plan.sections.0.onNeedle',
    'entry.row',
    'entry.count',
  ],
  signed: [
    `${SECTION}.shaping.0.by`,
    `${SECTION}.shaping.1.by`,
    'garment.striped.long.at',
    'plan.plan.rows.0.shaping.0.by',
    'plan.plan.sections.0.first',
    'plan.plan.sections.0.last',
  ],
  measure: [
    ...['needle', 'measured.rowMm'].map((f) => `${SECTION}.${f}`),
    ...['gauge.stitches', 'gauge.rows', 'gauge.needle', 'gauges.garter.stitches', 'gauges.garter.rows'].map(
      (f) => `${PIECE}.${f}`,
    ),
    ...[
      'stitches',
      'widthMm',
      'rows',
      'heightMm',
      'needle',
      'before.stitches',
      'before.heightMm',
      'weighed.grams',
    ].map((f) => `garment.swatches.0.${f}`),
    ...['grams', 'metres'].map((f) => `garment.yarns.0.${f}`),
    ...['rows.0.needle', 'sections.0.needle', 'cells.0.width', 'cells.0.height'].map((f) => `plan.plan.${f}`),
  ],
  height: [`${SECTION}.length.mm`, `${SECTION}.measured.atMm`],
  length: ['garment.taken.0.grams', 'plan.plan.base', 'plan.plan.offset', 'plan.plan.rows.0.height'],
  percent: ['garment.joints.1.along.0.percent'],
  ease: [`${SEAM}.ease`],
  time: ['garment.createdAt', 'garment.changedAt', 'entry.at', 'photo.at'],
  running: ['plan.version'],
  seq: ['entry.seq'],
};

/** longest texts, and whether they may be empty */
const ofTexts: readonly (readonly [longest: number, mayBeEmpty: boolean, paths: readonly string[]])[] = [
  [200, false, ['garment.name', `${PIECE}.name`, `${PIECE}.parts.0.name`, `${PIECE}.parts.1.from.part`]],
  [
    200,
    true,
    [`${SECTION}.name`, `${SECTION}.length.id`, 'garment.licence', 'garment.yarns.0.name', `${SEAM}.byHand`],
  ],
  [
    200,
    true,
    [
      'garment.ticked.0',
      'garment.stripes.0.colour',
      'garment.byHand.0.id',
      'plan.plan.piece',
      'plan.plan.name',
    ],
  ],
  [
    20_000,
    true,
    ['garment.credits', 'garment.texts.long', `${SECTION}.own.1`, 'entry.text', 'photo.caption'],
  ],
  [100_000, true, ['garment.notes']],
];

/** every word of a choice */
const ofWords: readonly (readonly [words: readonly unknown[], paths: readonly string[]])[] = [
  [['right', 'left', 'both'], [`${SECTION}.shaping.0.edge`]],
  [['mirrored', 'plain'], [`${SECTION}.shaping.0.lean`]],
  [['right', 'left'], [`${SECTION}.shaping.3.edge`]],
  [['bind off', 'cast on', 'turn'], [`${SECTION}.shaping.3.kind`]],
  [
    ['RS', 'WS'],
    [`${SECTION}.length.endSide`, `${PIECE}.parts.0.firstSide`, 'plan.plan.rows.0.side'],
  ],
  [['plain', 'slipped'], [`${PIECE}.parts.0.selvedge`]],
  [
    ['bind off', 'hold', 'split'],
    [`${PIECE}.parts.0.end`, 'plan.plan.end'],
  ],
  [['right', 'left', 'middle'], [`${PIECE}.parts.1.from.edge`]],
  [['start', 'top', 'right', 'left'], [`${SEAM}.a.0.edge`]],
  [['only', 'without'], [`${SEAM}.a.0.level`]],
  [['before', 'after'], [`${SEAM}.a.0.shaped`]],
  [[true], [`${SEAM}.a.0.reversed`, 'garment.striped.long.back']],
  [
    [true, false],
    [`${PIECE}.mirrored`, `${SECTION}.length.open`, `${PIECE}.parts.2.from.pickUp.0.held`, 'plan.mirror'],
  ],
  [['edge', 'across', 'middle', 'bind off', 'cast on', 'turn'], ['plan.plan.rows.0.shaping.0.kind']],
  [['right', 'left', 'across', 'middle'], ['plan.plan.rows.0.shaping.0.edge']],
];
const allWords = [...new Set(ofWords.flatMap(([words]) => words)), 'riht', '', 1, null];

/** lists: how long each may be */
const ofLists: readonly (readonly [most: number, paths: readonly string[]])[] = [
  [40, ['garment.pieces', `${PIECE}.parts`]],
  [
    200,
    [
      `${PIECE}.parts.0.sections`,
      'garment.swatches',
      'garment.yarns',
      'garment.joints',
      'garment.byHand',
      `${SEAM}.a`,
    ],
  ],
  [
    200,
    [
      `${PIECE}.parts.2.from.pickUp`,
      'garment.joints.1.along',
      'plan.plan.sections',
      'plan.plan.cells',
      'entry.settles',
    ],
  ],
  [
    5000,
    ['garment.ticked', 'garment.taken', 'garment.stripes', `${SECTION}.shaping.0.rows`, 'garment.marks.seen'],
  ],
  [500, [`${SECTION}.words.0`, 'plan.plan.setUp', 'plan.plan.rows.0.steps']],
  [80, ['garment.pieces.0.plans']],
];

const at = (path: string): unknown => {
  const [kind, ...fields] = path.split('.') as [keyof typeof shapes, ...string[]];
  return fields.reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], whole[kind]);
};

describe('what is stored', () => {
  it('is taken with everything that it may have', () => {
    for (const kind of Object.keys(shapes) as (keyof typeof shapes)[])
      expect(v.safeParse(shapes[kind], whole[kind]).issues?.map((i) => v.getDotPath(i))).toBeUndefined();
  });

  const numberCases = (Object.keys(numbers) as (keyof typeof numbers)[]).flatMap((kind) =>
    ofNumbers[kind].map((path) => [path, kind] as const),
  );
  it.each(numberCases)('%s is a %s', (path, kind) => {
    const [taken, beyond] = numbers[kind];
    for (const n of taken) expect(isTaken(path, n), String(n)).toBe(true);
    for (const n of [...beyond, '1', null]) expect(isTaken(path, n), String(n)).toBe(false);
  });

  const textCases = ofTexts.flatMap(([longest, mayBeEmpty, paths]) =>
    paths.map((path) => [path, longest, mayBeEmpty] as const),
  );
  it.each(textCases)('%s is a text of %i characters at the most', (path, longest, mayBeEmpty) => {
    expect(isTaken(path, 'x'.repeat(longest))).toBe(true);
    expect(isTaken(path, 'x'.repeat(longest + 1))).toBe(false);
    expect(isTaken(path, '')).toBe(mayBeEmpty);
    expect(isTaken(path, 5)).toBe(false);
  });

  it.each(ofWords.flatMap(([words, paths]) => paths.map((path) => [path, words] as const)))(
    '%s is one of its words',
    (path, words) => {
      expect(allWords.filter((word) => isTaken(path, word))).toEqual(
        allWords.filter((word) => words.includes(word)),
      );
    },
  );

  it.each(ofLists.flatMap(([most, paths]) => paths.map((path) => [path, most] as const)))(
    '%s has %i entries at the most',
    (path, most) => {
      const [one] = at(path) as readonly unknown[];
      expect(isTaken(path, new Array(most).fill(one))).toBe(true);
      expect(isTaken(path, new Array(most + 1).fill(one))).toBe(false);
    },
  );

  it('has repeats in repeats six deep, and no deeper', () => {
    const nested = (depth: number): object =>
      depth === 0 ? step : { repeat: [nested(depth - 1)], times: 1 };
    expect(isTaken(`${SECTION}.words.0`, [nested(6)])).toBe(true);
    expect(isTaken(`${SECTION}.words.0`, [nested(7)])).toBe(false);
    const open = { repeat: [step], until: { left: 2 } };
    expect(isTaken(`${SECTION}.words.0`, [open])).toBe(true);
    expect(isTaken(`${SECTION}.words.0`, [{ work: 'k', until: { left: 0 } }])).toBe(true);
    expect(isTaken(`${SECTION}.words.0`, [{ ...open, times: 2 }])).toBe(false);
  });

  it('has ids of letters, digits, dash and underline, and names rows by their numbers', () => {
    for (const path of [
      'garment.id',
      'garment.pieces.0.id',
      'plan.garment',
      'plan.piece',
      'photo.id',
      'photo.garment',
    ]) {
      expect(
        ['a', 'A-b_9', 'x'.repeat(64)].every((id) => isTaken(path, id)),
        path,
      ).toBe(true);
      expect(
        ['', 'a/b', 'a b', 'x'.repeat(65), ' a', 'a\n'].some((id) => isTaken(path, id)),
        path,
      ).toBe(false);
    }
    for (const path of ['plan.id', 'entry.id', 'entry.make', 'entry.plan', 'entry.follows', 'entry.undoes']) {
      expect(
        ['a/b.c-d_9', 'x'.repeat(200)].every((id) => isTaken(path, id)),
        path,
      ).toBe(true);
      expect(
        ['', 'a b', 'x'.repeat(201), 'a:b', 'a\n'].some((id) => isTaken(path, id)),
        path,
      ).toBe(false);
    }
    expect(isTaken(`${SECTION}.own`, { 1: 'a', 99999: 'b' })).toBe(true);
    for (const row of ['0', '01', '100000', 'x', '1x', 'x1'])
      expect(isTaken(`${SECTION}.own`, { [row]: 'a' }), row).toBe(false);
  });

  it('has pictures of pixels as base64, and nothing else', () => {
    const image = (text: string) => isTaken('photo.image', text);
    for (const kind of ['png', 'jpeg', 'webp', 'gif', 'avif'])
      expect(image(`data:image/${kind};base64,AA+/`)).toBe(true);
    expect(image('data:image/png;base64,AAA=')).toBe(true);
    expect(image('data:image/png;base64,AA==')).toBe(true);
    for (const bad of [
      'svg+xml;base64,AAAA',
      'png;base64,AAA',
      'png;base64,AA*A',
      'png;base64,A===',
      'png,AAAA',
      'png;base64,=AAA',
    ])
      expect(image(`data:image/${bad}`), bad).toBe(false);
    expect(image(' data:image/png;base64,AAAA')).toBe(false);
    expect(image('data:image/png;base64,AAAA\n')).toBe(false);
  });
});
