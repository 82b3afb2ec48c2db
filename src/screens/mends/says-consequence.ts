import type { Consequence } from '../../knit/making-up/break.ts';
import type { Edit, PickUpEdit } from '../../knit/making-up/edit.ts';
import type { Answer } from '../../knit/making-up/mends.ts';
import { easeOf } from '../../knit/making-up/step.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

type Pieces = Pick<StandingGarment, 'pieces'>;

/** What a change breaks, at its edge. */
export function saysConsequence(one: Consequence, { pieces }: Pieces): string {
  switch (one.kind) {
    case 'seam':
      return saysSeam(one);
    case 'level': {
      const { piece, to, was, now, other, longerMm } = one;
      const length = saysLength(Math.abs(longerMm));
      return say(offLevel[one.of], { piece, to, was, now, other, length });
    }
    case 'pair': {
      const { piece, was, now, other } = one;
      return say('mends.offPair', { piece, was, now, other });
    }
    case 'pick up': {
      const { band, along, stitches, fit, longerMm } = one;
      // the edge in the words that the band itself has for it
      const from = pieces.find(({ recipe }) => recipe.name === band)?.recipe.parts[0]?.from;
      const edge = (from && 'pickUp' in from && from.pickUp[along]?.along) || band;
      const change = { band, edge, stitches, fit, length: saysLength(Math.abs(longerMm)) };
      return say(longerMm > 0 ? 'mends.offEdgeLonger' : 'mends.offEdgeShorter', change);
    }
    case 'unjoined':
      return say('mends.unjoined', { piece: one.piece, make: one.make });
  }
}

const offLevel = { 'above the underarm': 'mends.offAbove', bands: 'mends.offBands' } as const;

function saysSeam(one: Extract<Consequence, { kind: 'seam' }>): string {
  const { unit, piece, to, was, now, other, longerMm } = one;
  const length = saysLength(Math.abs(longerMm));
  switch (unit) {
    case 'rows':
      return say('mends.offRows', { piece, to, was, now, other, length });
    case 'stitches':
      return say('mends.offStitches', { piece, to, was, now, other });
    case 'mm':
      return say('mends.offLength', { piece, to, now: saysLength(now), other: saysLength(other), length });
  }
}

/** What to do where no piece can be knitted otherwise; nothing where a mend is offered. */
export function saysNoMend({ what: all, mends, other }: Answer<unknown>): string | undefined {
  const [what] = all;
  if (mends.length > 0 || what.kind === 'unjoined') return undefined;
  if (what.kind === 'pick up') return say(other === 'not begun' ? 'mends.noMend' : 'mends.bandDone');
  const { oneMoreEvery } = easeOf(what.now, what.other);
  const eased =
    oneMoreEvery >= LEAST_EVERY ? say('mends.ease', { every: oneMoreEvery }) : say('mends.tooFar');
  if (what.kind === 'seam' && what.unit === 'mm') return say('mends.noMend');
  return other === 'done' ? `${say('mends.done')} ${eased}` : eased;
}

/** One more after every second or third stitch is no easing any more; common practice, no published source. */
const LEAST_EVERY = 3;

/** The button of a mend: all its changes. @param garment in which they are made */
export const saysMend = (edits: readonly Edit[], garment: Pieces): string =>
  [...new Set(edits.flatMap((edit) => saysEdit(edit, garment)))].reduce((first, second) =>
    say('mends.and', { first, second }),
  );

function saysEdit(edit: Edit, { pieces }: Pieces): readonly string[] {
  const count = edit.kind === 'pick up' ? 0 : Math.abs(edit.by);
  switch (edit.kind) {
    case 'rows': {
      const makes = pieces.find(({ recipe }) => recipe.name === edit.piece)?.makes.length ?? 0;
      const list = saysList(edit.makes.map(String));
      const piece = edit.makes.length < makes ? say('mends.makeNo', { piece: edit.piece, list }) : edit.piece;
      return [
        say(edit.by > 0 ? 'mends.rowsMore' : 'mends.rowsFewer', { piece, count, section: edit.called }),
      ];
    }
    case 'shoulder': {
      const [more, fewer] = shoulders[edit.from];
      return [say(edit.by > 0 ? more : fewer, { piece: edit.piece, count })];
    }
    case 'width':
      return [say(edit.by > 0 ? 'mends.wider' : 'mends.narrower', { piece: edit.piece, count })];
    case 'pick up':
      return alikeEdges(edit.edges).map((edges) => {
        const [{ now, was }] = edges;
        const figures = { band: edit.piece, now, was, edges: saysList(edges.map(({ along }) => along)) };
        return say(edges.length > 1 ? 'mends.pickUpEach' : 'mends.pickUp', figures);
      });
  }
}

const shoulders = {
  neck: ['mends.shoulderWider', 'mends.shoulderNarrower'],
  'cast-on': ['mends.castOnMore', 'mends.castOnFewer'],
} as const;

/** Both sides of a neck in one. */
function alikeEdges(edges: readonly PickUpEdit[]): readonly (readonly [PickUpEdit, ...PickUpEdit[]])[] {
  const groups = new Map<string, [PickUpEdit, ...PickUpEdit[]]>();
  for (const edge of edges) {
    const key = `${edge.was} ${edge.now}`;
    const known = groups.get(key);
    if (known) known.push(edge);
    else groups.set(key, [edge]);
  }
  return [...groups.values()];
}
