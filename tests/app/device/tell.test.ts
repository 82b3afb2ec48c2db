import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { feelsAt } from '../../../src/app/device/feels.ts';
import { takeRest, tellStored } from '../../../src/app/device/tell.ts';
import { buzzOf } from '../../../src/app/device/touch.ts';
import { readSettings, settings } from '../../../src/app/settings/settings.ts';
import { restDue } from '../../../src/app/state.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { told } from '../../told.ts';

const MINUTE = 60_000;

/** Four rows of ribbing, then four of which the third decreases, and the row that binds off. */
const made = plan({
  name: 'Cuff',
  makes: 1,
  parts: [
    {
      name: 'cuff',
      from: { castOn: 10 },
      end: 'bind off',
      sections: [
        { name: 'rib', rows: 4, fabric: 'rib 1x1', needle: 3.5, shaping: [] },
        {
          name: 'plain',
          rows: 4,
          fabric: 'stocking',
          needle: 4,
          shaping: [{ kind: 'across', row: 3, by: -2 }],
        },
      ],
    },
  ],
});
if (!made.ok) throw new Error(told(made.faults));
const part = made.value.parts[0] as (typeof made.value.parts)[number];

describe('what is told of the row that comes', () => {
  it('is an end first, then what comes: ribbing ends, a row decreases, the bind-off comes, the part is done', () => {
    expect([0, 1, 3, 4, 5, 6, 7, 8, 9].map((rows) => feelsAt(part, rows).join(' and '))).toEqual([
      'plain',
      'plain',
      'plain',
      'section end',
      'plain',
      'shaping',
      'plain',
      'section end',
      'part end',
    ]);
  });
});

describe('a row that was stored', () => {
  let felt: unknown[];
  let asked: number;
  beforeEach(() => {
    felt = [];
    asked = 0;
    vi.stubGlobal('navigator', {
      vibrate: (ms: unknown) => felt.push(ms),
      storage: {
        persist: async () => {
          asked += 1;
          return true;
        },
        persisted: async () => false,
      },
    });
    settings.value = { ...settings.value, buzz: true, tick: false, rest: true };
    restDue.value = false;
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    settings.value = readSettings({});
    restDue.value = false;
  });
  const store = (rows: number, now: number, isFirst = false) => tellStored({ part, rows, now, isFirst });

  it('is told to the hand where she wants it, and not in the task that shows it', async () => {
    const telling = store(6, 0);
    expect(felt).toEqual([]);
    await telling;
    expect(felt).toEqual([buzzOf(['shaping'])]);
    settings.value = { ...settings.value, buzz: false };
    await store(7, MINUTE);
    expect(felt).toHaveLength(1);
  });

  it('has the browser asked to keep what is stored with the first of a visit, and with no other', async () => {
    await store(1, 0);
    expect(asked).toBe(0);
    await store(1, 0, true);
    await vi.waitFor(() => expect(asked).toBe(1));
  });

  it('after long enough a sitting has her rest her hands, once, and then counts anew; not where she does not want it', async () => {
    // later than any row of a test before this one: a sitting of its own
    let minute = 1e9;
    const knitFor = async (minutes: number) => {
      for (const end = minute + minutes; minute < end; minute += 3) await store(1, minute * MINUTE);
    };
    await knitFor(20);
    expect(restDue.value).toBe(false);
    await knitFor(240);
    expect(restDue.value).toBe(true);
    takeRest();
    expect(restDue.value).toBe(false);
    await knitFor(10);
    expect(restDue.value).toBe(false);
    settings.value = { ...settings.value, rest: false };
    await knitFor(240);
    expect(restDue.value).toBe(false);
  });
});
