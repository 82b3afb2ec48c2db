import { garmentInHand } from '../../app/state.ts';
import type { Consequence } from '../../knit/making-up/consequences.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';

/** What a change breaks, and what mends it. */
export interface Said {
  readonly what: string;
  readonly mend: string;
}

export function saysConsequence(one: Consequence): Said {
  switch (one.kind) {
    case 'seam':
      return saysSeam(one);
    case 'pair': {
      const { piece, was, now, other } = one;
      return { what: say('count.offPair', { piece, was, now, other }), mend: saysRows(piece, now - other) };
    }
    case 'pick up': {
      const { band, along, stitches, fit, longerMm } = one;
      const edge = edgeOf(band, along);
      const change = { band, edge, length: saysLength(Math.abs(longerMm)) };
      return {
        what: say(longerMm > 0 ? 'count.offEdgeLonger' : 'count.offEdgeShorter', change),
        mend: say('count.mendPickUp', { fit, stitches }),
      };
    }
  }
}

function saysSeam({
  unit,
  piece,
  to,
  was,
  now,
  other,
  longerMm,
}: Extract<Consequence, { kind: 'seam' }>): Said {
  const length = saysLength(Math.abs(longerMm));
  switch (unit) {
    case 'rows':
      return {
        what: say('count.offRows', { piece, to, was, now, other, length }),
        mend: saysRows(to, now - other),
      };
    case 'stitches':
      return {
        what: say('count.offStitches', { piece, to, was, now, other }),
        mend: say('count.mendStitches', { piece: to, count: now }),
      };
    case 'mm':
      return {
        what: say('count.offLength', { piece, to, now: saysLength(now), other: saysLength(other) }),
        mend: say(longerMm > 0 ? 'count.mendLonger' : 'count.mendShorter', { piece: to, length }),
      };
  }
}

const saysRows = (piece: string, more: number): string =>
  say(more > 0 ? 'count.mendRowsMore' : 'count.mendRowsFewer', { piece, count: Math.abs(more) });

/** The edge in the words that the band itself has for it. */
function edgeOf(band: string, along: number): string {
  const piece = garmentInHand.value?.garment.pieces.find(({ recipe }) => recipe.name === band);
  const from = piece?.recipe.parts[0]?.from;
  return (from && 'pickUp' in from && from.pickUp[along]?.along) || band;
}
