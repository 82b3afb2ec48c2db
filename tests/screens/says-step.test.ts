import { beforeAll, describe, expect, it } from 'vitest';
import { easeOf } from '../../src/knit/making-up/step.ts';
import { saysStep } from '../../src/screens/making-up/says-step.ts';
import { loadWords } from '../../src/words/say.ts';

beforeAll(() => loadWords('makingUp', 'craft'));

const side = (back: number, front: number) =>
  saysStep({ id: 'side seams', kind: 'side seams', back: 'Back', front: 'Front', rows: easeOf(back, front) })
    .lines[0];

const shoulders = (back: number, front: number) =>
  saysStep({
    id: 'shoulders',
    kind: 'shoulders',
    back: 'Back',
    front: 'Front',
    stitches: easeOf(back, front),
    seams: 2,
    how: 'sewn',
  }).lines[0];

describe('edges of different length', () => {
  it('are eased where one more now and then does it', () => {
    expect(side(104, 100)).toBe(
      '104 rows on the Back, 100 on the Front: take one more of the longer edge after every 25.',
    );
    expect(side(100, 100)).toContain('row to row');
  });

  it('are said not to match where it would be every stitch or every second one', () => {
    expect(side(100, 164)).toContain('100 on the one, 164 on the other: these do not match.');
    expect(shoulders(20, 42)).toContain('20 on the one, 42 on the other: these do not match.');
    expect(shoulders(30, 40)).toContain('take one more of the longer edge after every 3');
  });
});

describe('what is said of a step', () => {
  const setIn = (stitches: number) =>
    saysStep({
      id: 'set in sleeves',
      kind: 'set in sleeves',
      sleeve: 'Sleeve',
      topMm: 400,
      armholeMm: 400,
      markerRows: 60,
      markerMm: 200,
      on: 'Back',
      marksMm: [],
      quarters: [15, 30, 45],
      underarm: { stitches, rows: 0 },
    }).lines.join(' ');

  it('a marker is put where no corner shows the underarm, and nowhere else', () => {
    expect(setIn(0)).toContain('Put a marker on each side seam edge 60 rows');
    expect(setIn(6)).not.toContain('Put a marker');
    expect(setIn(6)).toContain('Quarter points');
    // common practice, no published source: the top is pinned at the shoulder before anything is eased
    expect(setIn(6)).toContain('the middle of the sleeve’s top to the shoulder seam');
    expect(setIn(6).indexOf('shoulder seam')).toBeLessThan(setIn(6).indexOf('Quarter points'));
  });

  it('two sleeves are set in, not one; a sleeve that differs is named', () => {
    const step = {
      id: 'set in sleeves',
      kind: 'set in sleeves',
      sleeve: 'Sleeve',
      topMm: 400,
      armholeMm: 400,
      markerRows: 60,
      markerMm: 200,
      on: 'Back',
      marksMm: [],
      quarters: [15, 30, 45],
      underarm: { stitches: 6, rows: 0 },
    } as const;
    expect(saysStep(step).title).toBe('Set in both sleeves');
    expect(saysStep({ ...step, nos: [2] }).title).toBe('Set in the Sleeve, no.\u00a02');
    const raglan = {
      id: 'raglan',
      kind: 'raglan',
      sleeve: 'Sleeve',
      seams: 3,
      rows: easeOf(40, 40),
      underarm: { stitches: 6, rows: 0 },
    } as const;
    expect(saysStep(raglan).title).toBe('Sew in both sleeves: raglan lines');
    expect(saysStep({ ...raglan, nos: [1] }).title).toBe('Sew in the Sleeve: raglan lines, no.\u00a01');
  });

  it('a raglan line with an opening is sewn only up to it, live shoulders never as cast-off ones', () => {
    const opened = saysStep({
      id: 'raglan',
      kind: 'raglan',
      sleeve: 'Sleeve',
      seams: 4,
      rows: easeOf(56, 56),
      asFarAsOpening: easeOf(36, 36),
      underarm: { stitches: 0, rows: 0 },
    }).lines.join(' ');
    expect(opened).not.toContain('four');
    expect(opened).toMatch(/Three lines.*56 rows.*only from the underarm up to its opening.*36 rows/);
    const close = (how: 'sewn' | 'three-needle' | 'grafted') =>
      saysStep({
        id: 'close Neckband',
        kind: 'close',
        band: 'Neckband',
        rows: 6,
        seam: { of: 'shoulder', line: 'left back', both: easeOf(33, 33), how },
      }).lines;
    expect(close('three-needle').join(' ')).toContain('third needle');
    expect(close('grafted').join(' ')).toContain('Graft');
    expect(close('sewn').join(' ')).not.toMatch(/needle|[Gg]raft/);
  });

  it('a seam in mattress stitch says which stitch it takes', () => {
    const seam = {
      id: 's',
      kind: 'side seams',
      back: 'Back',
      front: 'Front',
      rows: easeOf(100, 100),
    } as const;
    expect(saysStep(seam).lines.join(' ')).toContain('one whole stitch in from each edge');
    expect(saysStep({ id: 'l', kind: 'sleeve seams', sleeve: 'Sleeve', rows: 90 }).lines.join(' ')).toContain(
      'one whole stitch in from each edge',
    );
  });

  it('half a front is called as it is worn, and a width by where it is measured', () => {
    const block = { id: 'b', kind: 'block', piece: 'Front', makes: 1, widthMm: 300, heightMm: 500 } as const;
    expect(saysStep({ ...block, nos: [2], worn: 'right' }).title).toBe('Block Front, right front as worn');
    expect(saysStep({ ...block, nos: [2] }).title).toBe('Block Front, no.\u00a02');
    expect(saysStep(block).lines[0]).toContain('at its widest');
  });
});
