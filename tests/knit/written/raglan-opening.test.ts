import { expect, it } from 'vitest';
import type { Joint } from '../../../src/knit/making-up/joint.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import { workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { readMakingUp } from '../../../src/knit/written/read-making-up.ts';
import { draftSize } from '../../../src/knit/written/work-size.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import { thirtyGarments } from '../../arbitraries/thirty-garments.ts';
import { told } from '../../told.ts';

/** A child's raglan that is buttoned along the upper end of its left back line. */
const design = thirtyGarments.find(({ design: { neck } }) => neck.opening === 'raglan seam')?.design;

/** Rows that are left open, with where they lie on their part, and the rows of the raglan's lines that are sewn. */
function raglan(joints: readonly Joint[], garment: StandingGarment) {
  const { worked, troubles } = workJoints(joints, garment);
  const rows = ({ kind }: { readonly kind: string }, of: string) =>
    worked.flatMap(({ joint, lines }) =>
      joint.kind === kind &&
      (joint.kind === 'seam' ? joint.of : joint.kind === 'left free' && joint.as) === of
        ? lines.map(({ laid, rows: count }) => {
            const bits = laid.flatMap((one) => one.bits).map(({ row }) => row);
            return `${laid[0]?.stretch.piece} ${count}: ${Math.min(...bits)} to ${Math.max(...bits)}`;
          })
        : [],
    );
  return {
    open: rows({ kind: 'left free' }, 'opening').sort(),
    sewn: rows({ kind: 'seam' }, 'raglan').sort(),
    troubles: troubles.length,
  };
}

it.each(['cuff up', 'top down'] as const)(
  'a raglan that opens above its left back line, its sleeves knitted %s, is read back with as many rows of it open',
  (direction) => {
    if (!design) throw new Error('no raglan of the thirty opens');
    const size = draftSize('8', { ...design, sleeve: { ...design.sleeve, direction } }, { name: 'Fen' });
    if (!size.ok) throw new Error(told(size.faults));
    const text = writeSizes([size.value]);
    if (!text.ok) throw new Error(told(text.faults));
    const found = readPattern(text.value);
    const planned = asPlanned({ name: 'read', pieces: found.pieces.map(({ recipe }) => recipe) });
    if (!planned.ok) throw new Error(told(planned.faults));
    const { told: facts } = readMakingUp(found);
    const drafted = raglan(size.value.made.joints, size.value.garment);
    expect(facts.opening?.of).toBe('raglan');
    // of the back's edge, of the sleeve's and both ends of the band: twelve rows of 10 cm / 24 are 5 cm
    expect(drafted.open).toHaveLength(4);
    expect(drafted.open).toContain('Back 12: 99 to 110');
    expect(facts.opening?.rows).toBe(12);
    expect(raglan(proposed(planned.value, facts), planned.value)).toEqual(drafted);
  },
);
