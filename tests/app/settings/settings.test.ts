import { afterEach, expect, it } from 'vitest';
import { changeSetting, changeSpeech } from '../../../src/app/settings/change-settings.ts';
import { readSettings, settings } from '../../../src/app/settings/settings.ts';
import { takeSettings } from '../../../src/app/settings/wear-settings.ts';
import { readFault } from '../../../src/app/state.ts';
import { fault, refuse } from '../../../src/knit/fault.ts';
import { speak } from '../../../src/words/say.ts';
import { plainSpeech, speech } from '../../../src/words/settings.ts';
import { openEmptyApp } from '../open-app.ts';

afterEach(() => speak(plainSpeech));

it('takes stored choices, and the first of each where one is missing or unknown', () => {
  const read = readSettings({ hand: 'left', theme: 'purple', tick: true, keys: 'yes', rest: false });
  expect(read).toMatchObject({
    hand: 'left',
    theme: 'auto',
    tick: true,
    keys: false,
    rest: false,
    buzz: true,
  });
});

it('follows the device in words and measures until she chooses', async () => {
  await takeSettings({}, ['de-AT', 'en-US']);
  expect(speech.value).toMatchObject({ language: 'de', units: 'cm' });
  await takeSettings({ language: 'en', units: 'in', rows: 'full', terms: 'Scots' }, ['de-AT']);
  expect(speech.value).toMatchObject({ language: 'en', units: 'in', rows: 'full', terms: 'UK' });
  await takeSettings({ hand: 'left' }, ['en-US']);
  expect([speech.value.terms, settings.value.hand]).toEqual(['US', 'left']);
});

it('are on disk before they are spoken: an app that is closed at once begins in them', async () => {
  const spoken: string[] = [];
  const store = await openEmptyApp((inner) => ({
    ...inner,
    setSetting: async (name, value) => {
      const written = await inner.setSetting(name, value);
      spoken.push(speech.value.units);
      return written;
    },
  }));
  await changeSpeech('units', 'in');
  expect(spoken).toEqual(['cm']);
  expect(speech.value.units).toBe('in');
  expect(await store.settings()).toMatchObject({ value: { units: 'in' } });
});

it('are spoken all the same where they cannot be written, and that is said', async () => {
  await openEmptyApp((inner) => ({ ...inner, setSetting: async () => refuse(fault('storage-full')) }));
  await changeSpeech('units', 'in');
  expect(speech.value.units).toBe('in');
  expect(readFault.value).toMatchObject({ code: 'storage-full' });
});

it('of other things are told too where they cannot be written', async () => {
  await openEmptyApp((inner) => ({ ...inner, setSetting: async () => refuse(fault('storage-full')) }));
  await changeSetting('hand', 'left');
  expect(settings.value.hand).toBe('left');
  expect(readFault.value).toMatchObject({ code: 'storage-full' });
});
