import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { asTold } from '../../../src/knit/written/as-told.ts';
import { joinedAsTold } from '../../../src/knit/written/joined-as-told.ts';
import { workSize } from '../../../src/knit/written/work-size.ts';

const panel = (name: string) => [
  name,
  'Cast on 20 sts.',
  'Row 1 (RS): Knit.',
  'Row 2 (WS): Purl.',
  'Bind off all sts.',
  '',
];
const made = [...panel('BACK'), ...panel('FRONT'), 'MAKING UP', 'Fold the hem. Sew side seams.'];

describe('what a text tells beside its rows', () => {
  it('is its seams, what was not understood of them, and its stripes', () => {
    const read = readPattern(['Stripes, Back: rows 1 to 2 in Sea.', '', ...made].join('\n'));
    const told = asTold(read);
    expect(told.joints?.filter((joint) => joint.kind === 'seam' && joint.of === 'side')).toHaveLength(2);
    expect(told.unread).toEqual(['Fold the hem']);
    expect(told.stripes).toMatchObject([
      { piece: 0, make: 1, part: 0, row: 1, stripes: [{ colour: 'Sea', rows: 1 }] },
    ]);
    expect(asTold(readPattern(made.join('\n'))).stripes).toEqual([]);
  });

  it('is sewn of the pieces that can be knitted, whatever else is told', () => {
    const read = readPattern(made.join('\n'));
    const [back, front] = read.pieces;
    if (!back || !front) throw new Error('back and front are read');
    const flap = { ...back, plan: { ok: false, faults: [] } } as unknown as typeof back;
    expect(joinedAsTold({ ...read, pieces: [back, front, flap] })).toEqual(joinedAsTold(read));
  });
});

it('a size whose pieces nobody can knit is refused with their faults', () => {
  const [back] = readPattern(panel('BACK').join('\n')).pieces;
  if (!back) throw new Error('a back is read');
  const [part] = back.recipe.parts;
  const none = { ...back.recipe, parts: [{ ...part, from: { castOn: 0 } }] } as unknown as typeof back.recipe;
  const worked = workSize('S', { name: 'Fen', pieces: [none] });
  expect(worked.ok || worked.faults.length > 0).toBe(true);
  expect(worked.ok).toBe(false);
});
