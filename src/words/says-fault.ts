import type { Fault, FaultCode, FaultFigures } from '../knit/fault.ts';
import type { Unit, Units } from '../knit/faults/units.ts';
import { saysEdge, saysFabric, saysSide } from './craft.ts';
import { faultCatalogues } from './fault-catalogues.ts';
import type { WordsOf } from './language-files.ts';
import type { Language } from './languages.ts';
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

type FaultsOf<L extends Language> = Every<WordsOf<L>[(typeof faultCatalogues)[number]]['words']>;

/** All that any of them has. */
type Every<One> = (One extends unknown ? (one: One) => void : never) extends (all: infer All) => void
  ? All
  : never;

type English = FaultsOf<'en'>;

/** Codes that have no sentence, or one that asks for a figure that the fault does not carry. */
type Unfilled<Words> = {
  [Code in FaultCode]: Code extends keyof Words
    ? Words[Code] extends Message
      ? Exclude<NamesOf<Words[Code]>, FaultFigures[Code]> extends never
        ? never
        : Code
      : Code
    : Code;
}[FaultCode];

type None<Codes extends never> = Codes;

/** @proof that every code has a sentence, every sentence a code, and every figure it asks for is there. */
export type Said = [
  None<Exclude<keyof English, FaultCode>>,
  None<{ [L in Language]: Unfilled<FaultsOf<L>> }[Language]>,
];
