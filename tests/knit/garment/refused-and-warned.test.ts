import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../src/knit/fault.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { even } from './spelled.ts';

const { body, ease, neck, sleeve, frontBand, hem, cuff, neckband, armholeBand, gauges } = even;

const thin = { ...gauges, stocking: { stitches: 21, rows: 26 } };

const said = ({ code, figures, at }: Fault): string =>
  `${[code, ...Object.entries(figures).map(([name, value]) => `${name} ${value}`)].join(', ')} at ${at.field}`;

/* The figures of each fault, reckoned by hand from the even design of `spelled.ts`: 5 mm a stitch, 4 mm a row. */
describe('a design that cannot be is refused with its figures, at its field', () => {
  it.each<[string, Partial<Design>, readonly string[]]>([
    ['no chest', { body: { ...body, chest: 0 } }, ['bad length, mostMm 5000 at body.chest']],
    ['the chest of a tent', { body: { ...body, chest: 5001 } }, ['bad length, mostMm 5000 at body.chest']],
    [
      'ease that leaves nothing',
      { ease: { ...ease, wrist: -160 } },
      ['ease below nothing, bodyMm 160 at ease.wrist'],
    ],
    [
      'ease that is no number',
      { ease: { ...ease, wrist: Number.NaN } },
      ['bad length, mostMm 5000 at ease.wrist'],
    ],
    ['ease beyond measure', { ease: { ...ease, chest: 5001 } }, ['bad length, mostMm 5000 at ease.chest']],
    ['no length', { lengthMm: 0 }, ['bad length, mostMm 5000 at lengthMm']],
    ['a neck below nothing', { neck: { ...neck, depthMm: -1 } }, ['bad length, mostMm 5000 at neck.depthMm']],
    [
      'a back neck below nothing',
      { neck: { ...neck, backDepthMm: -1 } },
      ['bad length, mostMm 5000 at neck.backDepthMm'],
    ],
    ['a slope below nothing', { shoulderDropMm: -1 }, ['bad length, mostMm 5000 at shoulderDropMm']],
    ['an underarm below nothing', { underarmMm: -1 }, ['bad length, mostMm 5000 at underarmMm']],
    [
      'a sleeve of no length',
      { sleeve: { ...sleeve, lengthMm: 0 } },
      ['bad length, mostMm 5000 at sleeve.lengthMm'],
    ],
    [
      'a cap of too much ease',
      { sleeve: { ...sleeve, capEase: 51 } },
      ['bad cap ease, percent 51 at sleeve.capEase'],
    ],
    [
      'or too little',
      { sleeve: { ...sleeve, capEase: -21 } },
      ['bad cap ease, percent -21 at sleeve.capEase'],
    ],
    ['a hem below nothing', { hem: { ...hem, heightMm: -1 } }, ['bad length, mostMm 5000 at hem.heightMm']],
    [
      'a button of no width',
      { kind: 'cardigan', frontBand: { ...frontBand, buttonMm: 0 } },
      ['bad length, mostMm 5000 at frontBand.buttonMm'],
    ],
    [
      '61 buttons',
      { kind: 'cardigan', frontBand: { ...frontBand, buttons: 61 } },
      ['bad buttons, buttons 61 at frontBand.buttons'],
    ],
    [
      'a button and a half',
      { kind: 'cardigan', frontBand: { ...frontBand, buttons: 1.5 } },
      ['bad buttons, buttons 1.5 at frontBand.buttons'],
    ],
    [
      'fewer than none',
      { kind: 'cardigan', frontBand: { ...frontBand, buttons: -1 } },
      ['bad buttons, buttons -1 at frontBand.buttons'],
    ],
    [
      'needles that there are not',
      { needles: { panels: 0, borders: 51 } },
      ['bad needle at needles.panels', 'bad needle at needles.borders'],
    ],
    [
      'no gauge',
      { gauges: {} },
      [
        'swatch incomplete, fabric stocking at gauges.stocking',
        'swatch incomplete, fabric rib 2x2 at gauges.rib 2x2',
      ],
    ],
    [
      'a gauge of no yarn',
      { gauges: { ...gauges, stocking: { stitches: 201, rows: 25 } } },
      ['swatch incomplete, fabric stocking at gauges.stocking'],
    ],
    [
      'or of rows',
      { gauges: { ...gauges, stocking: { stitches: 20, rows: 0 } } },
      ['swatch incomplete, fabric stocking at gauges.stocking'],
    ],
    [
      'a neck as wide as the back',
      { neck: { ...neck, widthMm: 340 } },
      ['neck too wide, neckMm 340, acrossMm 340 at neck.widthMm'],
    ],
    ['a neck of no stitch', { neck: { ...neck, widthMm: 1 } }, ['no neck at neck.widthMm']],
    [
      'a neck into the hem: 140 rows but for a pair and the hem’s',
      { neck: { ...neck, depthMm: 520 } },
      ['neck too deep, mostMm 512 at neck.depthMm'],
    ],
    [
      'shorter than hem, armhole and slope',
      { lengthMm: 270 },
      ['too short, lengthMm 270, armholeMm 200 at lengthMm'],
    ],
    [
      'shoulders wider than the chest',
      { body: { ...body, crossBack: 410 } },
      ['back wider than chest, acrossMm 420, underarmMm 400 at body.crossBack'],
    ],
    [
      'a band as wide as the neck',
      { kind: 'cardigan', frontBand: { ...frontBand, heightMm: 158 } },
      ['band wider than neck, bandMm 158, neckMm 160 at frontBand.heightMm'],
    ],
    [
      'a sleeve too wide for its armhole',
      { ease: { ...ease, upperArm: 300 } },
      ['cap does not fit, widthMm 580 at ease.upperArm'],
    ],
    [
      'a sleeve that is hardly more than its cuff',
      { sleeve: { ...sleeve, lengthMm: 50 } },
      ['sleeve too short at sleeve.lengthMm'],
    ],
    [
      'a cuff that cannot be widened at once',
      { ease: { ...ease, wrist: -60 }, sleeve: { ...sleeve, shape: 'after cuff' } },
      ['cuff too narrow to widen, cuffStitches 22, sleeveStitches 60 at sleeve.shape'],
    ],
    [
      'a raglan whose lines meet',
      { armhole: 'raglan', neck: { ...neck, widthMm: 20 } },
      ['raglan neck too narrow, neckStitches 4, leastStitches 6 at neck.widthMm'],
    ],
    [
      'a raglan without lines',
      { armhole: 'raglan', neck: { ...neck, widthMm: 340 } },
      ['raglan neck too wide, neckStitches 68, underarmStitches 80 at neck.widthMm'],
    ],
    [
      'a raglan too shallow for its sleeve',
      { armhole: 'raglan', body: { ...body, armholeDepth: 60 }, ease: { ...ease, armholeDepth: 0 } },
      ['more shapings than rows, stitches 21, rows 20 at ease.upperArm'],
    ],
    [
      'a raglan’s sleeve without lines',
      { armhole: 'raglan', ease: { ...ease, upperArm: -200 } },
      ['sleeve too narrow, stitches 16 at ease.upperArm'],
    ],
    ['a raglan without sleeves', { armhole: 'raglan', kind: 'vest' }, ['raglan without sleeves at armhole']],
    [
      'a waist in the hem',
      { silhouette: 'waist', body: { ...body, napeToWaist: 520 } },
      ['waist outside the side, waistMm 40 at lengthMm'],
    ],
    [
      'a waist at the underarm',
      { silhouette: 'waist', body: { ...body, napeToWaist: 230 } },
      ['waist outside the side, waistMm 330 at lengthMm'],
    ],
    [
      'a wrist of nothing',
      { ease: { ...ease, wrist: -158 } },
      ['too few stitches, stitches 0 at body.wrist'],
    ],
    // parts of a millimetre are rounded; at 21 stitches to 100 mm a stitch is 4.76 mm
    [
      'a waist in the hem by parts of a millimetre',
      { silhouette: 'waist', body: { ...body, napeToWaist: 519.4 } },
      ['waist outside the side, waistMm 41 at lengthMm'],
    ],
    [
      'too short by some',
      { lengthMm: 269.6, body: { ...body, armholeDepth: 180.7 } },
      ['too short, lengthMm 270, armholeMm 201 at lengthMm'],
    ],
    [
      'shoulders of 88 stitches over 84',
      { gauges: thin, body: { ...body, crossBack: 410 } },
      ['back wider than chest, acrossMm 419, underarmMm 400 at body.crossBack'],
    ],
    [
      'a neck of all 72 stitches',
      { gauges: thin, neck: { ...neck, widthMm: 340 } },
      ['neck too wide, neckMm 343, acrossMm 343 at neck.widthMm'],
    ],
    [
      'a sleeve of 122 stitches',
      { gauges: thin, ease: { ...ease, upperArm: 300 } },
      ['cap does not fit, widthMm 581 at ease.upperArm'],
    ],
    // 73 pairs of rows but for five of the hem and one: 67 of 7.69 mm
    [
      'a neck that is as deep as it can be without its part of a millimetre',
      { gauges: thin, neck: { ...neck, depthMm: 520 } },
      ['neck too deep, mostMm 515 at neck.depthMm'],
    ],
    ['a neck of no width', { neck: { ...neck, widthMm: 0 } }, ['bad length, mostMm 5000 at neck.widthMm']],
    [
      'an opening below nothing',
      { neck: { ...neck, openingMm: -1 } },
      ['bad length, mostMm 5000 at neck.openingMm'],
    ],
    [
      'a cap with no top',
      { sleeve: { ...sleeve, capTopMm: 0 } },
      ['bad length, mostMm 5000 at sleeve.capTopMm'],
    ],
    [
      'borders that cannot be, each at its own field',
      {
        cuff: { ...cuff, heightMm: -1 },
        neckband: { ...neckband, heightMm: -1 },
        frontBand: { ...frontBand, heightMm: -1 },
        armholeBand: { ...armholeBand, heightMm: 5001 },
      },
      ['cuff', 'neckband', 'frontBand', 'armholeBand'].map(
        (border) => `bad length, mostMm 5000 at ${border}.heightMm`,
      ),
    ],
    [
      'an armhole of one pair of rows, said once',
      { kind: 'vest', body: { ...body, armholeDepth: 8 }, ease: { ...ease, armholeDepth: 0 } },
      ['armhole too shallow, rows 2 at body.armholeDepth'],
    ],
    // 80 − 66 are seven at each side, in two pairs of rows of three each
    [
      'an armhole that would lose more than three stitches a pair',
      {
        kind: 'vest',
        body: { ...body, armholeDepth: 16, crossBack: 320 },
        ease: { ...ease, armholeDepth: 0 },
      },
      ['armhole too shallow, rows 4 at body.armholeDepth'],
    ],
    [
      'a neck that leaves one stitch for each shoulder',
      { neck: { ...neck, widthMm: 330 } },
      ['neck too wide, neckMm 330, acrossMm 340 at neck.widthMm'],
    ],
    [
      'a side that is steeper than a stitch a row',
      { silhouette: 'waist', body: { ...body, hip: 2200, waist: 400, napeToWaist: 440 } },
      ['more shapings than rows, stitches 92, rows 20 at silhouette'],
    ],
    [
      'a sleeve that is',
      { sleeve: { ...sleeve, lengthMm: 76 }, ease: { ...ease, upperArm: 110, wrist: -10 } },
      ['more shapings than rows, stitches 24, rows 10 at sleeve.shape'],
    ],
  ])('%s', (_, changes, faults) => {
    const made = draft({ ...even, ...changes });
    expect(made.ok ? [] : made.faults.map(said)).toEqual(faults);
  });

  it('what cannot matter is not asked about', () => {
    const fine = [
      { frontBand: { ...frontBand, buttons: 1.5, buttonMm: -1 } },
      { sleeve: { ...sleeve, capEase: -20 } },
      { body: { ...body, head: 5000 } },
      { needles: { panels: 50, borders: 50 } },
      { hem: { ...hem, heightMm: 0 }, shoulderDropMm: 0, underarmMm: 0, neck: { ...neck, backDepthMm: 0 } },
      { sleeve: { ...sleeve, capEase: 50 } },
      { kind: 'cardigan' as const, frontBand: { ...frontBand, buttons: 60 } },
      { kind: 'cardigan' as const, frontBand: { ...frontBand, buttons: 0 } },
      { neck: { ...neck, widthMm: 320 } },
      { armhole: 'raglan' as const, neck: { ...neck, widthMm: 30 } },
      // six stitches at each side in two pairs of rows of three each
      { kind: 'vest' as const, body: { ...body, armholeDepth: 16 }, ease: { ...ease, armholeDepth: 0 } },
      { lengthMm: 280 },
    ];
    for (const changes of fine) expect(draft({ ...even, ...changes }).ok).toBe(true);
  });
});

describe('what is unusual is said with its figures', () => {
  it.each<[string, Partial<Design>, readonly string[]]>([
    ['nothing of an even design', {}, []],
    [
      'a head that does not pass: 230 mm of neck, stretched by two fifths',
      { neck: { ...neck, widthMm: 100, depthMm: 20, backDepthMm: 0 } },
      ['head does not pass, neckMm 230, opensMm 323, headMm 560 at neck.widthMm'],
    ],
    [
      // at 21 stitches to 100 mm 34 are 161.9 mm: in front with 80 mm at either side, and behind; by two fifths 677.3
      'a square neck of parts of a millimetre',
      {
        neck: { ...neck, shape: 'square', depthMm: 80, backDepthMm: 0 },
        gauges: { ...gauges, stocking: { stitches: 21, rows: 25 } },
        body: { ...body, head: 700.4 },
      },
      ['head does not pass, neckMm 484, opensMm 677, headMm 700 at neck.widthMm'],
    ],
    [
      'ease at the hip, where the hem follows it',
      { ease: { ...ease, hip: -51 }, silhouette: 'tapered' },
      ['unusual ease, easeMm -51, leastMm -50.8, mostMm 304.79999999999995 at ease.hip'],
    ],
    ['not where the hem is straight', { ease: { ...ease, hip: -51 } }, []],
    [
      'shapings on WS rows too',
      { sleeve: { ...sleeve, lengthMm: 110 } },
      ['more shapings than right side rows, stitches 10, rows 18 at sleeve.shape'],
    ],
    [
      // 100 stitches and two for seams at the hem, 80 at the underarm, in ten pairs of rows but the last
      'or on those of the side',
      { silhouette: 'tapered', lengthMm: 340, body: { ...body, hip: 1000 } },
      ['more shapings than right side rows, stitches 12, rows 20 at silhouette'],
    ],
    [
      'a cap that is too flat',
      { ease: { ...ease, upperArm: 110 } },
      ['cap out of proportion, capMm 55, depthMm 200, widthMm 390 at ease.upperArm'],
    ],
    [
      'an arm tighter than an inch',
      { ease: { ...ease, upperArm: -80 } },
      ['unusual ease, easeMm -80, leastMm -25.4, mostMm 203.2 at ease.upperArm'],
    ],
    [
      'a cuff wider than the arm',
      { ease: { ...ease, wrist: 150 } },
      ['cuff wider than sleeve, cuffMm 310, topMm 300 at ease.wrist'],
    ],
    [
      'hips wider than a long straight hem',
      { body: { ...body, hip: 900 }, lengthMm: 600 },
      ['narrow at the hip, hipMm 900, hemMm 800 at silhouette'],
    ],
    ['not of a short one', { body: { ...body, hip: 900 }, lengthMm: 580 }, []],
    [
      'of one that ends a millimetre below where hips are fullest',
      { body: { ...body, hip: 900 }, lengthMm: 581 },
      ['narrow at the hip, hipMm 900, hemMm 800 at silhouette'],
    ],
    [
      'a straight sleeve narrower than the arm',
      { armhole: 'drop', body: { ...body, upperArm: 420 } },
      ['sleeve top narrower than the arm, widthMm 400, armMm 420 at body.armholeDepth'],
    ],
    [
      'more buttons than there is room for',
      { kind: 'cardigan', frontBand: { ...frontBand, buttons: 30 } },
      ['too many buttons, buttons 30, stitches 101 at frontBand.buttons'],
    ],
    [
      'a shoulder of three stitches',
      { neck: { ...neck, widthMm: 310 } },
      ['narrow shoulder, stitches 3 at neck.widthMm'],
    ],
    [
      'ease of the arm where there is no sleeve',
      { kind: 'vest', ease: { ...ease, upperArm: 500, wrist: 500 } },
      [],
    ],
    ['a cuff as wide as the arm', { ease: { ...ease, wrist: 140 } }, []],
    ['a straight sleeve as wide as the arm', { armhole: 'drop', body: { ...body, upperArm: 400 } }, []],
    [
      'a straight sleeve a millimetre narrower than the arm',
      { armhole: 'drop', body: { ...body, upperArm: 401 } },
      ['sleeve top narrower than the arm, widthMm 400, armMm 401 at body.armholeDepth'],
    ],
    [
      'a straight sleeve narrower by parts of one',
      { armhole: 'drop', body: { ...body, upperArm: 420.6 } },
      ['sleeve top narrower than the arm, widthMm 400, armMm 421 at body.armholeDepth'],
    ],
    [
      'a cuff wider than the arm by parts of one',
      { ease: { ...ease, wrist: 150.6, upperArm: 20.6 } },
      ['cuff wider than sleeve, cuffMm 311, topMm 301 at ease.wrist'],
    ],
    [
      'hips wider by parts of one',
      { body: { ...body, hip: 900.6, chest: 760.6 }, lengthMm: 600 },
      ['narrow at the hip, hipMm 901, hemMm 801 at silhouette'],
    ],
    [
      'a cap of 82 stitches that is too flat',
      { gauges: thin, ease: { ...ease, upperArm: 110 } },
      ['cap out of proportion, capMm 53, depthMm 200, widthMm 390 at ease.upperArm'],
    ],
    ['hips as wide as a long straight hem', { body: { ...body, hip: 800 }, lengthMm: 600 }, []],
    [
      'hips a millimetre wider',
      { body: { ...body, hip: 801 }, lengthMm: 600 },
      ['narrow at the hip, hipMm 801, hemMm 800 at silhouette'],
    ],
    [
      'a shoulder of two stitches',
      { neck: { ...neck, widthMm: 320 } },
      ['narrow shoulder, stitches 2 at neck.widthMm'],
    ],
    [
      'a neck higher in front than behind',
      { neck: { ...neck, depthMm: 15.6, backDepthMm: 39.6 } },
      [
        'head does not pass, neckMm 399, opensMm 558, headMm 560 at neck.widthMm',
        'front neck above back neck, frontMm 16, backMm 40 at neck.depthMm',
      ],
    ],
  ])('%s', (_, changes, warnings) => {
    const made = draft({ ...even, ...changes });
    expect(made.ok ? made.value.warnings.map(said) : made.faults.map(said)).toEqual(warnings);
  });
});
