import { describe, expect, it } from 'vitest';
import { levelStitches, PanelLines } from '../../../../src/knit/garment/joints/panel-lines.ts';
import { SleeveLines } from '../../../../src/knit/garment/joints/sleeve-lines.ts';
import type { Shaping } from '../../../../src/knit/piece/recipe.ts';
import { off, part, piece, section } from '../../making-up/by-hand.ts';

/* What is bound off at the beginning of an armhole: four stitches at the right edge, five at the left. */
const uneven = section('armhole', 20, off('right', 1, 4, 2), off('left', 2, 5, 3));
const half = piece('Front', 'front', [part('Front', 40, [section('body', 20), uneven])], {
  makes: 2,
  mirrored: true,
});

describe('the underarm of a panel', () => {
  const stitches = (lines: PanelLines) =>
    (['right', 'left'] as const).map((edge) => lines.underarm(edge)?.stitches);

  it('is what its first two rows bind off at that edge', () => {
    const whole = piece('Back', 'back', [part('Back', 80, [section('body', 20), uneven])]);
    expect(stitches(new PanelLines(whole, 1, false, 0))).toEqual([4, 5]);
    expect(new PanelLines(whole, 1, false, 0).underarm('left')?.line).toEqual([
      { piece: 'Back', make: 1, part: 'Back', edge: 'left', sections: ['armhole'], level: 'only' },
    ]);
  });

  it('of a second copy that is a mirror image is what the recipe has at the other edge', () => {
    expect(stitches(new PanelLines(half, 1, true, 0))).toEqual([4, 5]);
    expect(stitches(new PanelLines(half, 2, true, 0))).toEqual([5, 4]);
    expect(stitches(new PanelLines({ ...half, mirrored: false }, 2, true, 0))).toEqual([4, 5]);
  });

  it('is none where nothing is bound off, or no armhole is there', () => {
    const plain = piece('Back', 'back', [part('Back', 80, [section('body', 20), section('armhole', 20)])]);
    expect(stitches(new PanelLines(plain, 1, false, 0))).toEqual([undefined, undefined]);
    const without = piece('Back', 'back', [part('Back', 80, [section('body', 20)])]);
    expect(stitches(new PanelLines(without, 1, false, 0))).toEqual([undefined, undefined]);
  });
});

describe('what lies level at the beginning of a section', () => {
  const at = (edge: 'right' | 'left', ...shaping: readonly Shaping[]) =>
    levelStitches(part('any', 40, [section('cap', 20, ...shaping)]), 'cap', edge);

  it('is bound off or cast on in its first two rows, at that edge', () => {
    expect([at('right', off('right', 1, 4, 2)), at('left', off('right', 1, 4))]).toEqual([4, 0]);
    expect([at('left', off('left', 2, 5)), at('left', off('left', 3, 5))]).toEqual([5, 0]);
    expect(at('left', { ...off('left', 2, 6), kind: 'cast on' } as Shaping)).toBe(6);
    expect(levelStitches(part('any', 40, []), 'cap', 'right')).toBe(0);
  });
});

describe('a sleeve', () => {
  const cuffUp = piece('Sleeve', 'sleeve', [
    part('Sleeve', 40, [
      section('cuff', 10),
      section('sleeve', 60),
      section('cap', 20, off('right', 1, 4), off('left', 2, 4)),
    ]),
  ]);
  const flat = piece('Sleeve', 'sleeve', [part('Sleeve', 40, [section('cuff', 10), section('sleeve', 60)])]);

  it('has its seam along cuff and sleeve, and its cap above them', () => {
    const lines = new SleeveLines(cuffUp, 1, false);
    const own = { piece: 'Sleeve', make: 1, part: 'Sleeve', edge: 'right' };
    expect(lines.seam('right')).toEqual([{ ...own, sections: ['cuff', 'sleeve'] }]);
    expect(lines.cap('right', true)).toEqual([{ ...own, sections: ['cap'] }]);
    expect(lines.cap('right', false)).toEqual([{ ...own, sections: ['cap'], level: 'without' }]);
    expect(lines.underarm('right')).toEqual({
      line: [{ ...own, sections: ['cap'], level: 'only' }],
      stitches: 4,
    });
  });

  it('that ends straight has neither cap nor underarm', () => {
    const lines = new SleeveLines(flat, 2, false);
    expect([lines.cap('left', true), lines.underarm('left')]).toEqual([[], undefined]);
    expect(lines.top()).toEqual([{ piece: 'Sleeve', make: 2, part: 'Sleeve', edge: 'top' }]);
    expect(lines.cuff()).toEqual([{ piece: 'Sleeve', make: 2, part: 'Sleeve', edge: 'start' }]);
    expect(new SleeveLines(flat, 2, true).cuff()).toEqual([
      { piece: 'Sleeve', make: 2, part: 'Sleeve', edge: 'top' },
    ]);
  });
});
