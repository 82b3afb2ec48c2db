import type { Design } from '../../../src/knit/garment/design.ts';
import { even } from './spelled.ts';

const { neck, sleeve, hem, cuff, neckband, frontBand } = even;

/** Designs in whole figures, one for each way of working. */
export const designs = {
  'set in': {},
  drop: { armhole: 'drop', shoulderDropMm: 0, neck: { ...neck, shape: 'square' } },
  indented: {
    armhole: 'indented',
    neck: { ...neck, shape: 'boat' },
    tapers: 'together',
    silhouette: 'tapered',
  },
  raglan: { armhole: 'raglan', silhouette: 'waist' },
  'raglan with a V': {
    armhole: 'raglan',
    tapers: 'together',
    neck: { ...neck, shape: 'V', depthMm: 160 },
  },
  cardigan: { kind: 'cardigan' },
  'cardigan with a V': { kind: 'cardigan', neck: { ...neck, shape: 'V', depthMm: 160 } },
  'square raglan cardigan': {
    kind: 'cardigan',
    armhole: 'raglan',
    neck: { ...neck, shape: 'square' },
    frontBand: { ...frontBand, holesIn: 'left front', buttonMm: 20 },
  },
  vest: {
    kind: 'vest',
    shoulder: 'short rows',
    shoulderEnd: 'grafted',
    neck: { ...neck, backDepthMm: 0, depthMm: 0 },
  },
  'from the top down': {
    sleeve: { ...sleeve, direction: 'top down', shape: 'after cuff' },
    shoulder: 'short rows',
  },
  'without borders': {
    hem: { ...hem, heightMm: 0 },
    cuff: { ...cuff, heightMm: 0 },
    neckband: { ...neckband, heightMm: 0 },
    sleeve: { ...sleeve, shape: 'straight', lengthMm: 400 },
  },
} as const satisfies Record<string, Partial<Design>>;
export type DesignName = keyof typeof designs;
