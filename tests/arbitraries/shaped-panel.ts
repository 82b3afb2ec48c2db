import fc from 'fast-check';
import { type FabricName, fits } from '../../src/knit/fabric.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../src/knit/piece/recipe.ts';
import { taper } from '../../src/knit/shape/taper.ts';

/**
 * A panel such as garments are made of: a rib, perhaps a spread row, a stretch shaped at one edge or both in an
 * even rhythm, perhaps bound-off steps and the decreases after them, a plain top.
 */
export const shapedPanel = (): fc.Arbitrary<Recipe> =>
  fc
    .record({
      fabric: fc.constantFrom<FabricName>('stocking', 'garter', 'moss', 'reverse stocking'),
      castOn: fc.integer({ min: 20, max: 60 }).map((half) => 2 * half),
      rib: fc.integer({ min: 0, max: 20 }),
      spread: fc.constantFrom(0, 0, 6, 8, 11, -7),
      rows: fc.integer({ min: 20, max: 90 }),
      times: fc.integer({ min: 2, max: 12 }),
      way: fc.constantFrom(1 as const, -1 as const),
      edge: fc.constantFrom('both' as const, 'both' as const, 'right' as const, 'left' as const),
      steps: fc.integer({ min: 0, max: 6 }),
      decreases: fc.integer({ min: 0, max: 5 }),
      top: fc.integer({ min: 0, max: 20 }),
    })
    .map(panelOf);

interface Figures {
  readonly fabric: FabricName;
  readonly castOn: number;
  readonly rib: number;
  readonly spread: number;
  readonly rows: number;
  readonly times: number;
  readonly way: 1 | -1;
  readonly edge: 'both' | 'right' | 'left';
  readonly steps: number;
  readonly decreases: number;
  readonly top: number;
}

/** Stitches that are always left: a decrease at both edges with two beside each needs eight. */
const LEAST = 8;

function panelOf(f: Figures): Recipe {
  const sections: Section[] = [];
  const add = (name: string, rows: number, fabric: FabricName, shaping: readonly Shaping[] = []) =>
    rows > 0 && sections.push({ name, rows, fabric, needle: 4, shaping });
  add('rib', fits('rib 2x2', f.castOn).fits ? f.rib : 0, 'rib 2x2');
  const spread = f.castOn + f.spread;
  const edges = f.edge === 'both' ? 2 : 1;
  const room = f.way === 1 ? f.times : Math.floor((spread - LEAST) / edges);
  const laid = taper({ rows: f.rows - 2, times: Math.min(f.times, room, Math.floor(f.rows / 4)) });
  const rows = laid.ok ? laid.value.rows.map((row) => row + 2) : [];
  const slope: Shaping = { kind: 'edge', edge: f.edge, by: f.way, rows, inset: 2, lean: 'mirrored' };
  add('body', f.rows, f.fabric, f.spread === 0 ? [slope] : [{ kind: 'across', row: 1, by: f.spread }, slope]);
  const startsRs = sections.reduce((sum, section) => sum + section.rows, 0) % 2 === 0;
  const wide = spread + f.way * edges * rows.length;
  const steps = Math.min(f.steps, Math.floor((wide - LEAST) / 2));
  const decreases = Math.min(f.decreases, Math.floor((wide - 2 * steps - LEAST) / 2));
  const dec = Array.from({ length: decreases }, (_, i) => 3 + 2 * i + (startsRs ? 0 : 1));
  if (steps > 1) {
    add('armholes', 30, f.fabric, [
      { kind: 'bind off', edge: 'right', groups: [{ row: startsRs ? 1 : 2, stitches: steps }] },
      { kind: 'bind off', edge: 'left', groups: [{ row: startsRs ? 2 : 3, stitches: steps }] },
      { kind: 'edge', edge: 'both', by: -1, rows: dec.map((row) => row + 2), inset: 1, lean: 'mirrored' },
    ]);
  }
  add('top', f.top, f.fabric);
  const part: PartRecipe = { name: 'panel', from: { castOn: f.castOn }, sections, end: 'hold' };
  return { name: 'Panel', makes: 1, gauge: { stitches: 21, rows: 28 }, parts: [part] };
}
