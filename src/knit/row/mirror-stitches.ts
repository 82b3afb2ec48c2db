import type { StitchName } from '../stitch.ts';

const OTHER_FACE: Partial<Record<StitchName, StitchName>> = {
  k: 'p',
  p: 'k',
  k2tog: 'p2tog',
  p2tog: 'k2tog',
  ssk: 'ssp',
  ssp: 'ssk',
  skp: 'ssp',
  k3tog: 'p3tog',
  p3tog: 'k3tog',
  sssk: 'sssp',
  sssp: 'sssk',
  sk2p: 'sssp',
  s2kp: 's2pp',
  s2pp: 's2kp',
  'k2tog tbl': 'p2tog tbl',
  'p2tog tbl': 'k2tog tbl',
  'k3tog tbl': 'p3tog tbl',
  'p3tog tbl': 'k3tog tbl',
  'k tbl': 'p tbl',
  'p tbl': 'k tbl',
  kfb: 'pfb',
  pfb: 'kfb',
  m1: 'm1p',
  m1p: 'm1',
};

const SWAPPED: Partial<Record<StitchName, StitchName>> = {
  k2tog: 'ssk',
  ssk: 'k2tog',
  skp: 'k2tog',
  'k2tog tbl': 'k2tog',
  p2tog: 'ssp',
  ssp: 'p2tog',
  'p2tog tbl': 'p2tog',
  m1l: 'm1r',
  m1r: 'm1l',
  k3tog: 'sssk',
  sssk: 'k3tog',
  sk2p: 'k3tog',
  'k3tog tbl': 'k3tog',
  p3tog: 'sssp',
  sssp: 'p3tog',
  'p3tog tbl': 'p3tog',
  rt: 'lt',
  lt: 'rt',
};

/** Stitches in the order worked, as they look from the other side of the work, worked in the same order. */
export const otherFaces = (works: readonly StitchName[]): readonly StitchName[] =>
  works.map((work) => OTHER_FACE[work] ?? work);

/** A row read from its other end, decreases leaning the other way. */
export const mirrorStitches = (works: readonly StitchName[]): readonly StitchName[] =>
  works.map((work) => SWAPPED[work] ?? work).reverse();
