import type { Fault, FaultCode, FaultFigures } from '../knit/fault.ts';
import type { Unit, Units } from '../knit/faults/units.ts';
import { saysEdge, saysFabric, saysSide } from './craft.ts';
import type { words as courseDe } from './de/course-faults.ts';
import type { words as draftDe } from './de/draft-faults.ts';
import type { words as patternDe } from './de/pattern-faults.ts';
import type { words as recipeDe } from './de/recipe-faults.ts';
import type { words as storeDe } from './de/store-faults.ts';
import type { words as course } from './en/course-faults.ts';
import type { words as draft } from './en/draft-faults.ts';
import type { words as pattern } from './en/pattern-faults.ts';
import type { words as recipe } from './en/recipe-faults.ts';
import type { words as store } from './en/store-faults.ts';
import { faultCatalogues } from './fault-catalogues.ts';
import { saysGrams, saysLength } from './measures.ts';
import type { Message, NamesOf } from './message.ts';
import { say, sayIfKnown } from './say.ts';

/**
 * A fault in the knitter's language, her terms and units, from its code and figures; with its row where only the place
 * says it; undefined until the catalogues are there.
 */
export function sentenceOf({ code, at, figures }: Fault): string | undefined {
  const said = saysFigures(figures);
  for (const name of faultCatalogues) {
    const what = sayIfKnown(name, code, said);
    if (what !== undefined)
      return at.row === undefined || 'row' in figures ? what : say('craft.onRow', { row: at.row, what });
  }
  return undefined;
}

/** Units that are not said as the plain number or word that they are. */
const says: { readonly [U in Unit]?: (value: Units[U]) => string } = {
  Mm: saysLength,
  Grams: saysGrams,
  Fabric: saysFabric,
  Side: (side) => saysSide(side, true),
  Edge: saysEdge,
};

const saysFigures = (figures: Fault['figures']): Record<string, string | number> =>
  Object.fromEntries(
    Object.entries(figures).map(([name, value]: [string, string | number]) => [
      name,
      (says[unitOf(name)] as ((value: string | number) => string) | undefined)?.(value) ?? value,
    ]),
  );

/** `neckMm` is in 'Mm', `rows` in 'Rows'. */
function unitOf(name: string): Unit {
  const last = /[A-Z]?[a-z]+$/.exec(name)?.[0] ?? name;
  return (last.charAt(0).toUpperCase() + last.slice(1)) as Unit;
}

type English = typeof recipe & typeof store & typeof pattern & typeof course & typeof draft;
type German = typeof recipeDe & typeof storeDe & typeof patternDe & typeof courseDe & typeof draftDe;

/** Codes whose sentence asks for a figure that the fault does not carry. */
type Unfilled<Words extends Record<FaultCode, Message>> = {
  [Code in FaultCode]: Exclude<NamesOf<Words[Code]>, FaultFigures[Code]> extends never ? never : Code;
}[FaultCode];

type None<Codes extends never> = Codes;

/** @proof that every code has a sentence, every sentence a code, and every figure it asks for is there. */
export type Said = [
  None<Exclude<FaultCode, keyof English>>,
  None<Exclude<keyof English, FaultCode>>,
  None<Unfilled<English>>,
  None<Unfilled<German>>,
];
