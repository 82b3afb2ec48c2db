import { signal } from '@preact/signals';

/**
 * What she can choose beside how the app speaks (`Speech` of src/words). Each is stored by its name; the first of a
 * list holds until she chooses.
 */
const choices = {
  /** 'auto' follows the phone */
  theme: ['auto', 'light', 'dark'],
  /** the thumb that taps */
  hand: ['right', 'left'],
  /** keys, page-turner pedals and shutter buttons finish and undo rows at once, not only once the pad has had the focus */
  keys: [false, true],
  /** next and previous of a headset */
  headset: [true, false],
  buzz: [true, false],
  tick: [false, true],
  /** each row is read aloud as it comes */
  voice: [false, true],
  /** the caution to rest hands after a long sitting */
  rest: [true, false],
  /** the evening's colours */
  dim: [false, true],
} as const satisfies Readonly<Record<string, readonly (string | boolean)[]>>;

export type SettingName = keyof typeof choices;

type Loose<T> = T extends boolean ? boolean : T;
export type Settings = { readonly [K in SettingName]: Loose<(typeof choices)[K][number]> };

export const settingNames = Object.keys(choices) as readonly SettingName[];

/** Stored values may be of an older or a newer app: what is not among the choices falls back to the first. */
export function readSettings(stored: Readonly<Record<string, unknown>>): Settings {
  const entries = settingNames.map((name) => {
    const known: readonly unknown[] = choices[name];
    return [name, known.includes(stored[name]) ? stored[name] : known[0]];
  });
  return Object.fromEntries(entries) as Settings;
}

export const settings = signal<Settings>(readSettings({}));
