import { describe, expect, it } from 'vitest';
import { type Known, wantsBackup } from '../../../src/app/backup/reminder.ts';

const DAY = 24 * 3_600_000;
const now = 1_800_000_000_000;
const known: Known = { kept: 'not kept', unsaved: 150, hasKeptFile: false, putOff: 0, now };

describe('a backup is asked for', () => {
  it('where some evenings of knitting are in no file', () => {
    expect(wantsBackup(known)).toBe(true);
    expect(wantsBackup({ ...known, unsaved: 149 })).toBe(false);
    expect(wantsBackup({ ...known, kept: 'unknown' })).toBe(true);
  });

  it('later where the browser promised to keep what is stored: the phone can still be lost', () => {
    expect(wantsBackup({ ...known, kept: 'kept' })).toBe(false);
    expect(wantsBackup({ ...known, kept: 'kept', unsaved: 1500 })).toBe(true);
  });

  it('never where a file is kept up to date by itself', () => {
    expect(wantsBackup({ ...known, hasKeptFile: true, unsaved: 9999 })).toBe(false);
  });

  it('not for three weeks after she put it off; a clock that was set back does not silence it', () => {
    expect(wantsBackup({ ...known, putOff: now - 20 * DAY })).toBe(false);
    expect(wantsBackup({ ...known, putOff: now - 21 * DAY })).toBe(true);
    expect(wantsBackup({ ...known, putOff: now + 300 * DAY })).toBe(true);
  });
});
