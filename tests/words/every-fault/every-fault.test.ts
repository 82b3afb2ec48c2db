import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Fault, FaultCode } from '../../../src/knit/fault.ts';
import { parseRow } from '../../../src/knit/row/read/parse.ts';
import { loadFaults, saysFault } from '../../../src/words/fault.ts';
import { languages } from '../../../src/words/languages.ts';
import { loadWords, speak } from '../../../src/words/say.ts';
import { plainSpeech } from '../../../src/words/settings.ts';
import { told } from '../../told.ts';
import { asSaid, rowAsSaid } from './as-said.ts';
import { backupAndLinkDrivers } from './backup-and-link.ts';
import { courseDrivers } from './course.ts';
import { draftDrivers } from './draft.ts';
import { type Drivers, faultsIn } from './drivers.ts';
import { patternDrivers } from './pattern.ts';
import { recipeDrivers } from './recipe.ts';
import { rowDrivers } from './row.ts';
import { storeDrivers } from './store.ts';

/** Every code there is: one without a real input that makes it does not compile. */
const drivers: Drivers<FaultCode> = {
  ...rowDrivers,
  ...recipeDrivers,
  ...courseDrivers,
  ...patternDrivers,
  ...draftDrivers,
  ...storeDrivers,
  ...backupAndLinkDrivers,
};

const codes = Object.keys(drivers) as FaultCode[];

/** The fault of that code that its input really makes; made once for all that is asked of it. */
function made(code: FaultCode): Promise<Fault> {
  const known = makes.get(code) ?? make(code);
  makes.set(code, known);
  return known;
}

const makes = new Map<FaultCode, Promise<Fault>>();

async function make(code: FaultCode): Promise<Fault> {
  const faults = faultsIn(await drivers[code]());
  const found = faults.find((fault) => fault.code === code);
  if (!found) throw new Error(`'${code}' was not made, but: ${told(faults) || 'nothing'}`);
  return found;
}

beforeAll(async () => {
  await loadWords('craft');
  await loadFaults();
});
afterEach(() => speak(plainSpeech));

describe('every fault, as a real input makes it, is said with all its figures and its row', () => {
  it.each(codes)('%s', async (code) => {
    const fault = await made(code);
    for (const language of languages) {
      await speak({ language });
      const sentence = saysFault(fault);
      expect(sentence).not.toBe(code);
      expect(sentence).not.toMatch(/[{}]|undefined|NaN|null|\[object/);
      // a sentence begins as one and ends as one
      expect(sentence).toMatch(/^[\p{Lu}\d“„«][\s\S]*[.!?]$/u);
      for (const [name, value] of Object.entries(fault.figures))
        expect(sentence, name).toContain(asSaid(name, value, language));
      if (fault.at.row !== undefined) expect(sentence).toMatch(rowAsSaid(fault.at.row, language));
    }
  });

  it.each(codes)('%s: nothing English stands in the German sentence', async (code) => {
    const fault = await made(code);
    await speak({ language: 'de' });
    expect(saysFault(fault)).not.toMatch(english);
  });
});

it('what is wrong with all rows together is not said of one of them', async () => {
  expect((await made('too much to plan')).at.row).toBeUndefined();
});

it('a repeat of nothing over so many stitches is told to be endless, not shared by 0', () => {
  expect(faultsIn(parseRow('(yo) over next 12 sts, k to end')).map(({ code }) => code)).toEqual([
    'endless repeat',
  ]);
});

/** Words that no German sentence has; what she typed herself is quoted and has none of them. */
const english =
  /\b(the|or|of|no|with|stitch|stitches|repeat|missing|bad|value|unknown|field|expected|received|number|twice)\b/;
