import { createContext } from 'preact';
import type { PartForm } from '../../knit/piece/form/form.ts';
import type { Edge } from '../../knit/piece/recipe.ts';

/** At which edge the part that is typed has the neck; of a shoulder the other edge is the armhole's. */
export const NeckSide = createContext<Edge | undefined>(undefined);

/** A side that takes its stitches from the right has the neck at its left. */
export const neckSideOf = ({ start }: PartForm): Edge | undefined =>
  start.kind !== 'split' || start.edge === 'middle' ? undefined : start.edge === 'right' ? 'left' : 'right';
