import type { Flow } from '../say/flow.ts';
import type { Statement } from '../say/statement.ts';

/** 'Work picot edge of brim' on a line of its own right above 'Next row: …': what the rows below make. */
export const namesRowsBelow = (one: Flow, below: Flow | undefined): boolean =>
  one.is === 'own words' &&
  one.announces === true &&
  below?.is === 'said' &&
  below.line !== one.line &&
  saysRows(below.said.statement);

const saysRows = (statement: Statement): boolean =>
  (statement.is === 'row' && statement.label !== undefined) ||
  (statement.is === 'even' && statement.until !== undefined) ||
  statement.is === 'rows';
