import { afterEach, expect, it } from 'vitest';
import { takeSettings } from '../../../src/app/settings/wear-settings.ts';
import { speak } from '../../../src/words/say.ts';
import { plainSpeech, type Speech, speech } from '../../../src/words/settings.ts';

afterEach(() => speak(plainSpeech));

/** Each choice there is, on a device that would speak otherwise by itself. */
const chosen: readonly (readonly [Partial<Speech>, device: string])[] = [
  [{ language: 'en' }, 'de'],
  [{ language: 'de' }, 'en-US'],
  [{ terms: 'US' }, 'de'],
  [{ terms: 'UK' }, 'en-US'],
  [{ units: 'cm' }, 'en-US'],
  [{ units: 'in' }, 'de'],
  [{ needles: 'mm' }, 'en-US'],
  [{ needles: 'US' }, 'de'],
  [{ needles: 'UK' }, 'de'],
  [{ rows: 'full' }, 'de'],
];

it.each(chosen)(
  'what she has chosen holds against what the device would have: %j on %s',
  async (choice, device) => {
    await takeSettings({}, [device]);
    expect(speech.value).not.toMatchObject(choice);
    await takeSettings(choice, [device]);
    expect(speech.value).toMatchObject(choice);
  },
);
