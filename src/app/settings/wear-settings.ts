import { effect } from '@preact/signals';
import { languages } from '../../words/languages.ts';
import { speak } from '../../words/say.ts';
import { languageNow, type Speech, speech, speechFor } from '../../words/settings.ts';
import { readSettings, settings } from './settings.ts';

/** How the app speaks, each part stored by its name; `language` undefined or 'auto' follows the device. */
const speechChoices: { readonly [K in keyof Speech]: readonly Speech[K][] } = {
  language: languages,
  terms: ['US', 'UK'],
  units: ['cm', 'in'],
  needles: ['mm', 'US', 'UK', 'JP'],
  rows: ['abbreviated', 'full'],
};

type Stored = Readonly<Record<string, unknown>>;

/** Takes over what is stored; what is not stored or not known follows the device and the first of each list. */
export async function takeSettings(stored: Stored, deviceLanguages: readonly string[]): Promise<void> {
  settings.value = readSettings(stored);
  await speak({ ...speechFor(deviceLanguages), ...storedSpeech(stored) });
}

function storedSpeech(stored: Stored): Partial<Speech> {
  const names = Object.keys(speechChoices) as (keyof Speech)[];
  const known = names.filter((name) => (speechChoices[name] as readonly unknown[]).includes(stored[name]));
  return Object.fromEntries(known.map((name) => [name, stored[name]]));
}

/** The page itself follows: language and its direction, theme, evening. */
export function wearSettings(root: HTMLElement): () => void {
  return effect(() => {
    const { theme, dim } = settings.value;
    root.lang = speech.value.language;
    root.dir = languageNow().direction ?? 'ltr';
    root.dataset.theme = theme;
    root.dataset.dim = String(dim);
  });
}
