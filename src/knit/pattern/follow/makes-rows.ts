import type { Statement } from '../say/statement.ts';

const ROW_MAKERS = new Set<Statement['is']>([
  'row',
  'rows',
  'even',
  'shape',
  'evenly',
  'groups',
  'bind off',
  'repeat rows',
  'repeat named',
  'as for',
  'other side',
]);

export const makesRows = (statement: Statement): boolean => ROW_MAKERS.has(statement.is);

/** 'Note: slip the first st of every row', 'Note: use 2 strands throughout': of all that is begun below it. */
export const isForAll = (statement: Statement): boolean =>
  statement.is === 'slips' || (statement.is === 'yarn' && statement.all === true);
