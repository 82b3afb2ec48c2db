import { countedEdge } from './counted-edge.ts';
import { type Cursor, seesPhrase, takeAnyPhrase } from './cursor.ts';
import { readGoal } from './goal.ts';
import { skipManner } from './manner.ts';
import type { ReadItem } from './plain.ts';

export const BIND_OFF = ['bo', 'bind|cast -? off', 'bind|cast of', 'b o', 'boff'];

/** 'bind off 5 sts', 'bo center 17 sts', 'cast off all sts', 'bo to end'. */
export function readBindOff(c: Cursor): ReadItem | undefined {
  if (!takeAnyPhrase(c, ...BIND_OFF)) return undefined;
  // 'bind off and dec for underarm same as back' says no number, and means not the whole row
  if (seesPhrase(c, 'and dec|inc')) return undefined;
  skipManner(c);
  const all = readGoal(c);
  if (all) {
    skipManner(c);
    return { item: { is: 'stitches to', work: 'bo', goal: all } };
  }
  return countedEdge(c, 'bo');
}

export const takeBindOff = (c: Cursor): boolean => takeAnyPhrase(c, ...BIND_OFF);
