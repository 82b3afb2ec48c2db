import { describe, expect, it } from 'vitest';
import type { EdgeName, Laps, SewnBand } from '../../../src/knit/making-up/band-joints.ts';
import { stated } from '../../../src/knit/making-up/statement.ts';
import type { PieceRole } from '../../../src/knit/piece/recipe.ts';
import { jointSaid, panel, sleeve } from './sewn-by-name.ts';

/*
 * Shoulders that lie over each other instead of being sewn; common practice, no published source. The wearer's left is at the
 * right edge of a front that lies with its right side up, and at the left edge of a back.
 */
const band = (piece: string, role: PieceRole, ...along: readonly EdgeName[]): SewnBand => ({
  piece,
  part: piece,
  role,
  makes: 1,
  along: along.map((edge, i) => ({ edge, stitches: i + 1 })),
});

const sewn = (laps: Laps | undefined, ...bands: readonly SewnBand[]): readonly string[] =>
  stated({
    back: panel('back', 5),
    fronts: { left: panel('front', 5), right: panel('front', 5) },
    sleeves: { left: sleeve('left sleeve', 5), right: sleeve('right sleeve', 5) },
    bands,
    ...(laps && { laps }),
    isRaglan: false,
    isIndented: false,
    isOpen: false,
    isFlatFront: false,
    shoulders: 'mattress',
    capEase: 0,
  }).map(jointSaid);

const all = [
  'left front shoulder',
  'right front shoulder',
  'left back shoulder',
  'right back shoulder',
] as const;
const pickedUp = (laps: Laps | undefined) =>
  sewn(laps, band('Band', 'neckband', ...all)).filter((line) => line.startsWith('pick up'));
const shoulders = (laps: Laps | undefined) => sewn(laps).filter((line) => line.startsWith('shoulder'));

describe('edges of shoulders for a band', () => {
  it('are those that are not sewn: all four, the two of the left side, or none', () => {
    expect(pickedUp('both')).toEqual([
      'pick up Band 1: 1 front right shoulder | 2 front left shoulder turned | 3 back left shoulder turned | 4 back right shoulder',
    ]);
    expect(pickedUp('left')).toEqual([
      'pick up Band 1: 1 front right shoulder | 2  | 3 back left shoulder turned | 4 ',
    ]);
    expect(pickedUp(undefined)).toEqual(['pick up Band 1: 1  | 2  | 3  | 4 ']);
  });

  it('are left out of the seams, and are never an edge that is left free', () => {
    const [left, right] = [
      'shoulder: front right shoulder = back left shoulder',
      'shoulder: front left shoulder = back right shoulder',
    ];
    expect(shoulders(undefined)).toEqual([right, left]);
    expect(shoulders('left')).toEqual([right]);
    expect(shoulders('both')).toEqual([]);
    for (const laps of ['left', 'both', undefined] as const)
      expect(sewn(laps).filter((line) => /^free.*shoulder/.test(line))).toEqual([]);
  });
});

describe('one shoulder that is buttoned', () => {
  const neckband = band('Neckband', 'neckband', 'left front neck', 'right front neck', 'back neck');
  const flap = band('Flap', 'front band', 'left front shoulder');

  it('has its band knitted along the shoulder and the neckband, and laid on the back', () => {
    const lines = sewn('left', neckband, flap);
    expect(lines.slice(0, 4)).toEqual([
      'shoulder: front left shoulder = back right shoulder',
      'pick up Neckband 1: 1 front neck of right turned | 2 front neck of left | 3 back neck',
      'pick up Flap 1: 1 front right shoulder, Neckband',
      'lap: Flap = back left shoulder sewn',
    ]);
    expect(lines.filter((line) => line.startsWith('free')).slice(-4)).toEqual([
      'free neck: Neckband top',
      'free opening: Neckband left',
      'free opening: Flap top',
      'free opening: Flap left',
    ]);
  });
});
