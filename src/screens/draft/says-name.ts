import { sayIfKnown } from '../../words/say.ts';

/** A name of the draft (a choice, a piece, a part, a section, an edge, a measure) in the knitter's language. */
export const saysName = (name: string): string => sayIfKnown('draft', name) ?? name;
