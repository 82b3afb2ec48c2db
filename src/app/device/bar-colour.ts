import { effect } from '@preact/signals';
import { settings } from '../settings/settings.ts';

/**
 * The system's bar above the page takes the page's own ground: by day, by night, in the evening's colours. What the page
 * says of it before the app runs can follow the system alone.
 */
export function colourBar(): void {
  const bars = [...document.querySelectorAll<HTMLMetaElement>('meta[name=theme-color]')];
  const follow = () => {
    for (const bar of bars) bar.content = getComputedStyle(document.documentElement).backgroundColor;
  };
  effect(() => {
    // what the ground goes by; the root wears it in an effect of its own, which may come after this one
    void [settings.value.theme, settings.value.dim];
    queueMicrotask(follow);
  });
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', follow);
}
