import { change } from '../../app/drafts/design/designer.ts';
import type { Choices } from '../../knit/garment/start.ts';
import { worded } from './worded.ts';

/** A choice's words with its drawing, both by its record. */
export const drawn = <Name extends string, Facts>(
  names: readonly Name[],
  records: Readonly<Record<Name, Facts>>,
  draw: (facts: Facts) => string,
) => worded(names).map((option) => ({ ...option, d: draw(records[option.value]) }));

export const choose = (by: Partial<Choices>): void =>
  change((old) => ({ ...old, choices: { ...old.choices, ...by } }));
