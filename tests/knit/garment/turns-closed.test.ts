import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draft } from '../../../src/knit/garment/draft.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { type TurnWay, turnWays } from '../../../src/knit/piece/turn-way.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { sayRow } from '../../../src/knit/row/print.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { alike, same } from '../../same.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=60 for the whole of it; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 8);

/**
 * Purl Soho, 'Short Rows: Wrap + Turn': wrap the next stitch, turn; the row over all stitches picks up each wrap.
 * Shibui Knits and Stolen Stitches, both 'German Short Rows': turn, make a double stitch of the first one; the row that
 * meets it works its two legs as one.
 */
const SAYS: Readonly<Record<TurnWay, { turn: RegExp; back: RegExp; closes: RegExp }>> = {
  wrapped: { turn: /wrap next st, turn$/, back: /^(?!ds)/, closes: /picking up each wrap/ },
  'double stitch': {
    turn: /(?<!wrap next st), turn$/, // a stitch that is decreased there cannot be pulled up
    back: /^(ds\b|k2tog|p2tog|ssk|ssp)/,
    closes: /working each ds as one st/,
  },
};

/** Every gap of a part is told to be closed in the row that first goes over it, and in no other. */
function gapsOf(part: PlannedPart, way: TurnWay, open: Set<string>): number {
  const says = SAYS[way];
  let turns = 0;
  for (const row of part.rows) {
    const words = sayRow(row.steps);
    // where the yarn hangs after a turn; that it does is proven of every plan
    const worked = expandRow(row.steps, row.before);
    const hangs = worked.findIndex((work) => work !== 'unworked');
    const isTurned = row.shaping.some(({ kind }) => kind === 'turn');
    const [first, last] = row.side === 'RS' ? ['right', 'left'] : ['left', 'right'];
    const back = worked.length - 1 - worked.findLastIndex((work) => work !== 'unworked');
    const met = [...open].filter((gap) => {
      const [edge, at] = gap.split(' ');
      return edge === first ? Number(at) > hangs : edge === last && Number(at) > back;
    });
    same(says.closes.test(words), met.length > 0, () => `${part.piece} ${part.name} ${row.n}: ${words}`);
    for (const gap of met) open.delete(gap);
    if (hangs > 0) expect(words).toMatch(says.back);
    if (isTurned) {
      turns += 1;
      expect(words).toMatch(says.turn);
      open.add(`${last} ${back}`);
    }
  }
  return turns;
}

describe('a turn of a short row', () => {
  it.each(turnWays)('is worked one way and its gap closed by the row that goes over it: %s', (way) => {
    let turned = 0;
    fc.assert(
      fc.property(someDesign(), (any) => {
        const made = draft({ ...any, shoulder: 'short rows', shoulderDropMm: 25, turns: way });
        if (!made.ok) return;
        for (const recipe of made.value.recipes) {
          const planned = plan(recipe);
          if (!planned.ok) throw new Error(told(planned.faults));
          for (const parts of [planned.value.parts, planned.value.mirrorParts ?? []]) {
            const open = new Map<string, Set<string>>();
            for (const part of parts) {
              const { from } = part;
              const mine = new Set(
                'part' in from && from.edge !== 'middle'
                  ? [...(open.get(from.part) ?? [])].filter((gap) => gap.startsWith(from.edge))
                  : [],
              );
              open.set(part.name, mine);
              turned += gapsOf(part, way, mine);
              if (part.end !== 'split') expect([...mine]).toEqual([]);
            }
          }
        }
      }),
      { numRuns: DRAFTS, endOnFailure: true },
    );
    expect(turned).toBeGreaterThan(1.5 * DRAFTS);
  });

  it('is written out and read back as it was planned, in both ways', () => {
    for (const way of turnWays) {
      fc.assert(
        fc.property(someDesign(), (any) => {
          const made = draft({ ...any, shoulder: 'short rows', shoulderDropMm: 25, turns: way });
          if (!made.ok) return;
          const text = writePattern({ name: 'Any', pieces: made.value.recipes });
          if (!text.ok) throw new Error(told(text.faults));
          const read = readPattern(text.value);
          expect(read.lines.flatMap((line) => line.faults.map((f) => `${line.text}: ${told([f])}`))).toEqual(
            [],
          );
          made.value.recipes.forEach((recipe, i) => {
            const [before, after] = [plan(recipe), read.pieces[i]?.plan];
            if (!before.ok || !after?.ok) throw new Error(text.value);
            const said = (parts: readonly PlannedPart[]) =>
              parts.flatMap((part) => part.rows.map(({ n, steps }) => ({ n, steps })));
            alike(said(after.value.parts), said(before.value.parts));
          });
        }),
        { numRuns: Math.ceil(DRAFTS / 3), endOnFailure: true },
      );
    }
  });

  it('says nothing of it in designs that never chose a way, as they were drafted once', () => {
    fc.assert(
      fc.property(someDesign(), (any) => {
        const { turns: _way, ...unsaid } = any;
        const made = draft({ ...unsaid, shoulder: 'short rows' });
        const all = made.ok ? made.value.recipes.map((recipe) => plan(recipe)) : [];
        const said = all.flatMap((p) => (p.ok ? p.value.parts : [])).flatMap((p) => p.rows);
        expect(said.map(({ steps }) => sayRow(steps)).filter((words) => /wrap|ds\b/.test(words))).toEqual([]);
      }),
      { numRuns: 20, endOnFailure: true },
    );
  });
});
