import { signal } from '@preact/signals';
import { fetchLanguage } from '../../words/language-files.ts';
import type { Language } from '../../words/languages.ts';
import { speak } from '../../words/say.ts';
import type { Speech } from '../../words/settings.ts';
import { keepWanted } from '../start/keep-wanted.ts';
import { readOr, store } from '../store.ts';
import { type Settings, settings } from './settings.ts';

/** The language that was asked for last, where it is neither on this device nor to be had now. */
export const languageAway = signal<Language | undefined>(undefined);

export async function changeSetting<K extends keyof Settings>(name: K, value: Settings[K]): Promise<void> {
  settings.value = { ...settings.value, [name]: value };
  readOr(await (await store()).setSetting(name, value));
}

/** Written first: what is spoken is spoken at the next start too, however soon that comes. */
export async function changeSpeech<K extends keyof Speech>(name: K, value: Speech[K]): Promise<void> {
  const written = await (await store()).setSetting(name, value);
  await speak({ [name]: value });
  readOr(written);
}

/** Speaks another language, once it is on this device; where it cannot be had the old one stays. */
export async function chooseLanguage(language: Language): Promise<void> {
  const worker = globalThis.navigator?.serviceWorker?.controller ?? undefined;
  languageAway.value = undefined;
  // kept first: what is begun in a language shall start in it again, with no network
  const here = (await keepWanted(worker, language)) || (await isHad(language));
  if (here) await changeSpeech('language', language);
  else languageAway.value = language;
}

const isHad = (language: Language): Promise<boolean> =>
  fetchLanguage(language).then(
    () => true,
    () => false,
  );
