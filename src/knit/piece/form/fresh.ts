import type { FabricName } from '../../fabric.ts';
import { factsOf } from '../../fabric-facts.ts';
import type { PartForm, PieceForm, SectionForm, ShapingForm, Typed } from './form.ts';
import { freeName } from './list.ts';

/** What a new entry begins with: what was used last, and the commonest way of the trade. */

/** What sections begin in unless one goes on from another: what the tension was measured in. */
export interface MainFabric {
  readonly fabric: FabricName;
  /** mm */
  readonly needle: Typed;
}

/**
 * After a rib comes the main fabric on its own needle; after anything else, more of the same. It bears a name, or the
 * next one that is free in the part.
 */
export function freshSection(part: PartForm | undefined, main: MainFabric, wanted = ''): SectionForm {
  const last = part?.sections.at(-1);
  const goesOn = last !== undefined && !factsOf(last.fabric).drawsIn;
  return {
    name: wanted === '' ? '' : freeName(wanted, part?.sections.map(({ name }) => name) ?? []),
    rows: '',
    fabric: goesOn ? last.fabric : main.fabric,
    needle: goesOn ? last.needle : main.needle,
    shaping: [],
  };
}

export type ShapingKind = ShapingForm['kind'];

/** One stitch at each edge on every 4th row, two groups of three...: numbers to be typed over. */
const freshTable: Readonly<Record<ShapingKind, ShapingForm>> = {
  edge: {
    kind: 'edge',
    edge: 'both',
    change: 'decrease',
    by: '1',
    inset: '2',
    lean: 'mirrored',
    first: '1',
    rhythm: [{ every: '4', times: '' }],
  },
  across: { kind: 'across', change: 'increase', stitches: '', row: '1' },
  middle: { kind: 'middle', from: '', first: '2', rhythm: [{ every: '2', times: '' }] },
  'bind off': { kind: 'bind off', edge: 'both', first: '1', every: '2', groups: '' },
  'cast on': { kind: 'cast on', edge: 'both', first: '1', every: '2', groups: '' },
  turn: { kind: 'turn', edge: 'both', first: '1', every: '2', groups: '' },
};

export const freshShaping = (kind: ShapingKind): ShapingForm => freshTable[kind];

export const freshPart = (piece: PieceForm, wanted: string): PartForm => ({
  name: freeName(
    wanted,
    piece.parts.map((part) => part.name),
  ),
  start: { kind: 'cast on', stitches: '' },
  sections: [],
  end: 'bind off',
});

/** A piece of one part that bears the piece's name. */
export const freshPiece = (
  wanted: string,
  taken: readonly string[],
  main: MainFabric,
  section = '',
): PieceForm => {
  const name = freeName(wanted, taken);
  const part: PartForm = { name, start: { kind: 'cast on', stitches: '' }, sections: [], end: 'bind off' };
  return { name, makes: '1', parts: [{ ...part, sections: [freshSection(undefined, main, section)] }] };
};
