import type { FabricName } from '../../src/knit/fabric.ts';
import { type BodyTable, bodyOfSize } from '../../src/knit/garment/bodies.ts';
import type { Design } from '../../src/knit/garment/design.ts';
import type { Fit } from '../../src/knit/garment/ease.ts';
import type { ArmholeKind } from '../../src/knit/garment/kinds/armholes.ts';
import type { GarmentKind } from '../../src/knit/garment/kinds/garments.ts';
import type { NeckShape } from '../../src/knit/garment/kinds/necks.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';

type Row = readonly [
  kind: GarmentKind,
  armhole: ArmholeKind,
  neck: NeckShape,
  fit: Fit,
  table: BodyTable,
  size: string,
  stitches: number,
  rows: number,
  /** what is chosen otherwise than a design begins with */
  otherwise?: ((begun: Design) => Partial<Design>) | undefined,
  fabric?: FabricName,
];

const slept =
  (more: Partial<Design['sleeve']>) =>
  ({ sleeve }: Design): Partial<Design> => ({ sleeve: { ...sleeve, ...more } });
const necked =
  (more: Partial<Design['neck']>) =>
  ({ neck }: Design): Partial<Design> => ({ neck: { ...neck, ...more } });

/**
 * Garments over the whole range: babies of 3 months to women's 5X, 9 to 30 stitches to 100 mm, each kind, armhole, neck
 * and silhouette, and each way of working that is chosen now and then.
 */
const rows: readonly Row[] = [
  ['pullover', 'drop', 'round', 'standard', 'babies', '3 months', 28, 36],
  ['cardigan', 'raglan', 'round', 'standard', 'babies', '6 months', 26, 36],
  ['cardigan', 'set-in', 'V', 'standard', 'babies', '12 months', 28, 38],
  ['pullover', 'drop', 'boat', 'loose', 'babies', '18 months', 22, 30],
  ['pullover', 'indented', 'round', 'standard', 'babies', '24 months', 24, 32],
  ['pullover', 'drop', 'square', 'loose', 'children', '2', 22, 44, undefined, 'garter'],
  ['pullover', 'set-in', 'square', 'standard', 'children', '4', 24, 32],
  ['pullover', 'raglan', 'round', 'standard', 'children', '8', 18, 24, necked({ opening: 'raglan seam' })],
  ['pullover', 'set-in', 'round', 'close', 'women', 'XS', 26, 36, () => ({ silhouette: 'waist' })],
  ['cardigan', 'indented', 'round', 'loose', 'children', '10', 20, 28],
  ['pullover', 'set-in', 'round', 'standard', 'women', 'S', 22, 30, necked({ middle: 'hold' })],
  ['pullover', 'raglan', 'boat', 'standard', 'women', 'M', 20, 28],
  ['pullover', 'drop', 'V', 'oversized', 'women', 'M', 17, 23],
  ['cardigan', 'set-in', 'round', 'loose', 'women', 'L', 13, 18],
  ['pullover', 'indented', 'boat', 'loose', 'men', 'M', 18, 25],
  ['vest', 'set-in', 'V', 'standard', 'men', 'M', 22, 30],
  ['pullover', 'set-in', 'V', 'standard', 'women', 'XL', 21, 29, () => ({ silhouette: 'tapered' })],
  ['buttoned vest', 'set-in', 'V', 'standard', 'women', 'L', 24, 32],
  ['pullover', 'raglan', 'V', 'standard', 'women', '2X', 20, 28],
  ['pullover', 'drop', 'boat', 'oversized', 'women', '3X', 15, 21],
  ['cardigan', 'raglan', 'V', 'standard', 'women', '3X', 22, 30],
  ['pullover', 'set-in', 'round', 'loose', 'women', '4X', 18, 26, slept({ shape: 'after cuff' })],
  ['pullover', 'raglan', 'square', 'standard', 'women', 'L', 12, 17],
  ['pullover', 'set-in', 'round', 'standard', 'women', '5X', 20, 28, slept({ capEase: 4 })],
  ['cardigan', 'set-in', 'V', 'standard', 'men', 'L', 20, 28],
  ['pullover', 'drop', 'round', 'loose', 'women', 'L', 9, 13],
  ['cardigan', 'raglan', 'round', 'loose', 'men', 'XL', 16, 22],
  ['cardigan', 'drop', 'square', 'loose', 'women', 'S', 14, 19],
  [
    'pullover',
    'set-in',
    'round',
    'very close',
    'women',
    'S',
    30,
    42,
    () => ({ shoulder: 'short rows', shoulderEnd: 'three-needle' }),
  ],
  ['pullover', 'set-in', 'round', 'standard', 'women', 'M', 21, 36, slept({ direction: 'top down' }), 'moss'],
];

export interface OneOfThirty {
  readonly name: string;
  readonly design: Design;
}

export const thirtyGarments: readonly OneOfThirty[] = rows.map((row, i) => {
  const [kind, armhole, neck, fit, table, size, stitches, perRow, otherwise, fabric = 'stocking'] = row;
  const body = bodyOfSize(table, size);
  if (!body) throw new Error(`no size ${size} of ${table}`);
  const begun = startingDesign({ kind, armhole, neck, fit }, body, fabric, { stitches, rows: perRow });
  return {
    name: `${String(i + 1).padStart(2, '0')} ${table} ${size} ${armhole} ${kind}, ${neck}, ${stitches} × ${perRow}`,
    design: { ...begun, ...otherwise?.(begun) },
  };
});
