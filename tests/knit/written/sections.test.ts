import { describe, expect, it } from 'vitest';
import type { MakingUpStep } from '../../../src/knit/making-up/step.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { care, finishedMeasures, materials, sizeAndFit } from '../../../src/knit/written/sections.ts';
import { type WorkedSize, workSize } from '../../../src/knit/written/work-size.ts';
import { given } from '../../store/scenario.ts';

/* What stands before the rows of a pattern, with figures reckoned by hand. */

const scarf: Recipe = {
  name: 'Scarf',
  makes: 1,
  gauge: { stitches: 20, rows: 28 },
  parts: [
    {
      name: 'scarf',
      from: { castOn: 40 },
      end: 'bind off',
      sections: [
        { name: 'rib', rows: 8, fabric: 'rib 2x2', needle: 3.5, shaping: [] },
        { name: 'scarf', rows: 40, fabric: 'stocking', needle: 4, shaping: [] },
      ],
    },
  ],
};

const words = englishWritten('US');
const plain = given(workSize('', { name: 'Fen', pieces: [scarf] }));
type Yarn = NonNullable<WorkedSize['garment']['yarns']>[number];

const sized = (more: Partial<WorkedSize> = {}, yarn?: Yarn): WorkedSize => ({
  ...plain,
  ...more,
  garment: { ...plain.garment, ...(yarn && { yarns: [yarn] }) },
});
const need = (metresToBuy: number, balls?: number): Pick<WorkedSize, 'yarn'> => {
  const { balls: _, ...rest } = plain.yarn;
  return { yarn: { ...rest, metresToBuy, ...(balls !== undefined && { balls }) } };
};
const lines = (size: WorkedSize, text: readonly string[] = []) => materials(size, text, words).lines;

describe('the yarn of a pattern', () => {
  const hollin: Yarn = { name: 'Hollin', fibre: 'wool', grams: 50, metres: 120 };

  it('is told to the next ten metres, yards and grams', () => {
    // 437 m are 440; 481.2 yd are 490; of 2.4 m to the gram 183.3 g are 190
    const told = lines(sized(need(437, 4), hollin));
    expect(told).toContain('Amount, reserve included: 440 m / 490 yd; 190 g; 4 balls');
    // just so many stay so many
    expect(lines(sized(need(480), hollin))).toContain('Amount, reserve included: 480 m / 530 yd; 200 g');
  });

  it('is told without grams where nothing is known of its ball', () => {
    for (const yarn of [{ name: 'Hollin' }, { name: 'Hollin', grams: 50 }, { name: 'Hollin', metres: 120 }])
      expect(lines(sized(need(437), yarn as Yarn))).toContain('Amount, reserve included: 440 m / 490 yd');
  });

  it('has its name, what it is of, its ball and the weight that the tension tells of', () => {
    expect(lines(sized({}, hollin))[0]).toMatch(/^Yarn: Hollin, wool, 50 g = 120 m, weight \d/);
    expect(lines(sized({}, { name: 'Hollin', grams: 50 } as Yarn))[0]).toMatch(/^Yarn: Hollin, weight \d/);
    // a tension over moss tells of no weight
    const moss = given(
      workSize('', {
        name: 'Fen',
        pieces: [{ ...scarf, gauge: { stitches: 20, rows: 28, fabric: 'moss' } }],
      }),
    );
    expect(lines(moss)[0]).toBe('Yarn: to suit the gauge');
    expect(materials(moss, [], englishWritten('UK')).lines[0]).toBe('Yarn: to suit the tension');
  });

  it('is held double where it is', () => {
    expect(lines(sized({}, { ...hollin, strands: 2 }))).toContain('Held together: 2 strands');
    expect(lines(sized({}, { ...hollin, strands: 1 })).join()).not.toContain('Held together');
  });
});

describe('what is needed beside it', () => {
  const step = (kind: string, more: object = {}) => ({ id: kind, kind, ...more }) as unknown as MakingUpStep;

  it('is needles, the thicker ones first, each once', () => {
    expect(lines(sized())).toContain('Needles: 4 mm and 3.5 mm');
    expect(materials(sized(), [], words, (mm) => (mm === 4 ? 'US 6' : undefined)).lines).toContain(
      'Needles: 4 mm (US 6) and 3.5 mm',
    );
  });

  it('is holders where stitches rest, markers for a sleeve that is set in, and a needle to sew with', () => {
    expect(lines(sized({ steps: [] }))).toContain('Notions: tapestry needle');
    expect(lines(sized({ steps: [] }), ['Leave 20 sts on a holder.'])).toContain(
      'Notions: stitch holders, tapestry needle',
    );
    expect(lines(sized({ steps: [step('set in sleeves')] }))).toContain('Notions: markers, tapestry needle');
  });

  it('is a button for each hole, one for an opening, and those of a lap', () => {
    const buttons = (...steps: readonly MakingUpStep[]) =>
      lines(sized({ steps })).filter((line) => line.startsWith('Buttons'));
    expect(buttons(step('buttons', { stitches: [4, 20, 36] }))).toEqual(['Buttons: 3']);
    expect(buttons(step('opening'))).toEqual(['Buttons: 1']);
    expect(buttons(step('lap', { buttons: 2 }), step('opening'))).toEqual(['Buttons: 3']);
    expect(buttons(step('lap'))).toEqual([]);
    expect(buttons()).toEqual([]);
  });
});

describe('a circular needle for a long band', () => {
  const band = (role: Recipe['role'], stitches: number, rows: readonly number[] = [6]): Recipe => ({
    name: 'Edge band',
    makes: 1,
    ...(role && { role }),
    gauge: { stitches: 20, rows: 28 },
    parts: [
      {
        name: 'Edge band',
        from: { pickUp: [{ along: 'edge', stitches }] },
        end: 'bind off',
        sections: rows.map((n, i) => ({
          name: `band ${i}`,
          rows: n,
          fabric: 'stocking',
          needle: 3.5 + i,
          shaping: [],
        })),
      },
    ],
  });
  const circular = (...pieces: readonly Recipe[]) =>
    lines(given(workSize('', { name: 'Fen', pieces }))).filter((line) => line.startsWith('Circular'));

  it('is that on which it is picked up, be it for one row', () => {
    expect(circular(band('front band', 120, [1, 5]))).toEqual([
      'Circular needle for the edge band: 3.5 mm, 60 cm long',
    ]);
    expect(circular(band('front band', 120, [1]))).toHaveLength(1);
  });

  it('is for what lies over half a metre and is a band', () => {
    // 5 mm a stitch
    expect(circular(band('neckband', 100))).toEqual([]);
    expect(circular(band('neckband', 101))).toHaveLength(1);
    expect(circular(band('armhole band', 101))).toHaveLength(1);
    expect(circular(band('other', 101))).toEqual([]);
    expect(circular(band(undefined, 101))).toEqual([]);
  });

  it('is the shortest that holds three quarters of it, and 150 cm where none does', () => {
    const long = [160, 161, 213, 214, 266, 267, 320, 321, 400, 401].map(
      (stitches) => /(\d+) cm long/.exec(circular(band('front band', stitches))[0] ?? '')?.[1],
    );
    // 80, 106.7, 133.3, 160 and 200 cm crowded to 60, 80, 100, 120 and 150
    expect(long).toEqual(['60', '80', '80', '100', '100', '120', '120', '150', '150', '150']);
  });
});

describe('what it is, and how to treat it', () => {
  const length = (mm: number) => `${mm} mm`;

  it('of a garment that was not drafted is only how it is knitted', () => {
    expect(sizeAndFit(plain, words, length).lines).toEqual([
      'It is knitted flat in pieces and sewn together.',
    ]);
  });

  it('has the measures that are known, made up, and no others', () => {
    const finished = { chest: 1000, length: 600, neck: 500, neckWithBand: 440 } as WorkedSize['finished'];
    expect(finishedMeasures(sized({ finished }), words, length).lines).toEqual([
      'Chest: 1000 mm',
      'Length: 600 mm',
      'Neck, round its edge: 440 mm',
    ]);
    const bare = { neck: 500, wrist: 200, upperArm: 320, napeToCuff: 750 } as WorkedSize['finished'];
    expect(finishedMeasures(sized({ finished: bare }), words, length).lines).toEqual([
      'Nape to cuff: 750 mm',
      'Upper arm: 320 mm',
      'Wrist: 200 mm',
      'Neck, round its edge: 500 mm',
    ]);
  });

  it('cautions for a child where nobody knows whom it is for, of buttons only where it has some', () => {
    const last = (steps: readonly MakingUpStep[]) => care(sized({ steps }), words).lines.at(-1);
    expect(last([])).toBe(
      'For a child: no cords or ribbons at the neck; a neck that goes over the head with ease. Follow your local rules.',
    );
    for (const kind of ['buttons', 'opening', 'lap'])
      expect(last([{ id: kind, kind } as unknown as MakingUpStep])).toBe(
        'For a child: no cords or ribbons at the neck; buttons sewn so that they hold; a neck that goes over the head with ease. Follow your local rules.',
      );
  });
});
