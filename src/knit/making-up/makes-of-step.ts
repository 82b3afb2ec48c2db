import type { StandingGarment } from '../piece/standing.ts';
import type { MakingUp } from './making-up.ts';
import type { MakingUpStep } from './step.ts';

/** One knitted copy of a piece, by name; `make` from 1. */
interface MakeOf {
  readonly piece: string;
  readonly make: number;
}

/** The makes that a step is done with: they have to be knitted first. A band is not among those that it is picked up along. */
export function makesOfStep(
  step: MakingUpStep,
  { joined }: Pick<MakingUp, 'joined'>,
  { pieces }: Pick<StandingGarment, 'pieces'>,
): readonly MakeOf[] {
  const all = pieces.flatMap(({ recipe, makes }) => makes.map(({ make }) => ({ piece: recipe.name, make })));
  return all.filter(isWanted(step, joined));
}

function isWanted(step: MakingUpStep, joined: MakingUp['joined']): (one: MakeOf) => boolean {
  switch (step.kind) {
    case 'block':
      return ({ piece, make }) => piece === step.piece && (step.nos?.includes(make) ?? true);
    case 'ends':
      return () => true;
    case 'buttons':
      return ({ piece }) => piece === step.band || piece === step.on;
    default: {
      const along = (joined.get(step.id) ?? []).flatMap(({ lines }) => lines.flatMap(({ laid }) => laid));
      return ({ piece, make }) =>
        along.some(({ stretch }) => stretch.piece === piece && stretch.make === make);
    }
  }
}
