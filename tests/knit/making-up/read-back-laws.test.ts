import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import type { Joint, Line } from '../../../src/knit/making-up/joint.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=1000 for a whole sweep; a part of it in every run. */
const DRAFTS = Math.min(Number(process.env.RIDGELINE_DRAFTS ?? 5), 5000);

/** Which pieces are joined and how, wherever on their edges: bands with what they take up, seams, laps, what opens. */
function joinsOf(garment: StandingGarment): readonly string[] {
  return makingUpOf(garment)
    .joints.map(joinSaid)
    .filter((said) => !said.startsWith('underarm'))
    .sort();
}

const piecesOf = (line: Line) =>
  [...new Set(line.map(({ piece, make }) => `${piece} ${make}`))].sort().join('+');

function joinSaid(joint: Joint): string {
  if (joint.kind === 'seam')
    return `${joint.of}: ${[piecesOf(joint.a), piecesOf(joint.b)].sort().join(' = ')}`;
  if (joint.kind === 'left free') return `${joint.as}: ${piecesOf(joint.line)}`;
  return `${joint.piece} ${joint.make}: ${joint.along.map(({ line }) => piecesOf(line)).join(', ')}`;
}

/** Of half a front without a group at its side, at an armhole or a shoulder, the rows do not tell which edge is the neck, nor do turns in words. */
const hasPlainSide = ({ recipe, makes }: StandingGarment['pieces'][number]): boolean => {
  const marks = (makes[0]?.parts ?? []).flatMap(({ rows }) => rows.flatMap(({ shaping }) => shaping));
  return recipe.mirrored === true && !marks.some(({ kind, edge }) => kind === 'bind off' && edge === 'right');
};

/**
 * The rows alone do not tell of a raglan's opening, where a side without a band is
 * open, and where a neck begins that is bound off with its shoulders.
 */
const isTold = ({ kind, armhole, armholeBand, neck }: Design): boolean =>
  armhole !== 'raglan' && neck.shape !== 'boat' && (garmentKinds[kind].sleeves || armholeBand.heightMm > 0);

it(`a garment written down and read back is joined as it was (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  let read = 0;
  const off: string[] = [];
  for (const design of fc.sample(someDesign(), { numRuns: 3 * DRAFTS })) {
    if (!isTold(design)) continue;
    const made = draft(design);
    if (!made.ok) continue;
    const { recipes, joints } = made.value;
    const before = asPlanned({ name: 'any', pieces: recipes, joints });
    if (!before.ok) throw new Error(told(before.faults));
    if (before.value.pieces.some(hasPlainSide)) continue;
    const text = writePattern({ name: 'Any', pieces: recipes }, { terms: 'US' });
    if (!text.ok) throw new Error(told(text.faults));
    const after = asPlanned({
      name: 'any',
      pieces: readPattern(text.value).pieces.map(({ recipe }) => recipe),
    });
    if (!after.ok) continue;
    read += 1;
    const { kind, armhole, neck } = design;
    const said = `${kind} ${armhole} ${neck.shape} ${neck.opening ?? ''} ${neck.middle ?? ''}`;
    const [was, is] = [joinsOf(before.value), joinsOf(after.value)];
    const lost = was.filter((one) => !is.includes(one));
    const more = is.filter((one) => !was.includes(one));
    if (lost.length + more.length > 0)
      off.push(`${said}\n  - ${lost.join('\n  - ')}\n  + ${more.join('\n  + ')}`);
  }
  expect(read).toBeGreaterThan(DRAFTS / 3);
  expect(`${off.length} of ${read}\n${off.join('\n')}`).toBe(`0 of ${read}\n`);
}, 600_000);
