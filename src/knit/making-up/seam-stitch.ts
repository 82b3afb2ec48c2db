/**
 * Mattress stitch takes one stitch of each edge that is sewn; what a band takes that is picked up along it is its own; common
 * practice, no published source for how much it draws in. A published schematic leaves it out (knittingmagic.biz, couture
 * knitting: selvages are added to the count and are not in the drawing).
 */
export const SEAM_STITCH = 1;

/**
 * How wide a piece is when it is sewn, mm: drawing, finished measures and blocking have it from here.
 * @param edges of it that a seam takes a stitch of; 0: as it lies before it is sewn, and is pinned out
 * @param stitchMm how wide one stitch is, mm
 */
export const sewnMm = (stitches: number, edges: number, stitchMm: number): number =>
  (stitches - edges * SEAM_STITCH) * stitchMm;
