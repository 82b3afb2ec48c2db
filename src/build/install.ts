import type { ManifestOptions } from 'vite-plugin-pwa';

const linen = '#f1eadb';

/** What a phone is told when the app is put on its home screen. */
export const install: Partial<ManifestOptions> = {
  name: 'Ridgeline',
  short_name: 'Ridgeline',
  description: 'Keeps your place in a hand-knitted garment, row by row, with no network.',
  lang: 'en',
  dir: 'ltr',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: linen,
  theme_color: linen,
  categories: ['lifestyle', 'utilities'],
  icons: [
    { src: 'icons/icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
    { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
    { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
    { src: 'icons/maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
  // A backup opens with a double click; a backup or a link of ours can be shared to the app. The worker takes them.
  file_handlers: [{ action: './#/backup', accept: { 'application/json': ['.json'] } }],
  share_target: {
    action: './',
    method: 'POST',
    enctype: 'multipart/form-data',
    params: {
      title: 'title',
      text: 'text',
      url: 'url',
      files: [{ name: 'file', accept: ['application/json', '.json', 'text/plain', '.txt'] }],
    },
  },
  shortcuts: [
    {
      name: 'Continue knitting',
      short_name: 'Continue',
      description: 'Straight to the row in hand',
      url: './#/continue',
      icons: [{ src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' }],
    },
  ],
};
