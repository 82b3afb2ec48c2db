import type { ManifestOptions } from 'vite-plugin-pwa';
import { BACKUP_ENDING, BACKUP_TYPE } from '../store/backup/file-type.ts';

const linen = '#f1eadb';

/** The app in pictures: in the manifest, and in README; width and height in CSS pixels. */
export const pictures = [
  {
    file: 'row.jpg',
    width: 390,
    height: 780,
    density: 2,
    form_factor: 'narrow',
    label: 'The row in hand, with the stitches there are after it',
  },
  {
    file: 'garment.jpg',
    width: 390,
    height: 780,
    density: 2,
    form_factor: 'narrow',
    label: 'The garment on the table, piece by piece',
  },
  {
    file: 'draft.jpg',
    width: 390,
    height: 780,
    density: 2,
    form_factor: 'narrow',
    label: 'A garment drawn from measurements and a swatch',
  },
  {
    file: 'tablet.jpg',
    width: 1180,
    height: 820,
    density: 1,
    form_factor: 'wide',
    label: 'The piece, the row in hand and the rows ahead',
  },
] as const;

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
  // A start while a window is open goes on in that window: a second one would be a second knitter of the same rows.
  launch_handler: { client_mode: ['navigate-existing', 'auto'] },
  // What it looks like, shown by a browser that offers to install it; `npm run shots -- pictures` takes them.
  screenshots: pictures.map(({ file, width, height, density, ...shown }) => ({
    src: `pictures/${file}`,
    sizes: `${width * density}x${height * density}`,
    type: 'image/jpeg',
    ...shown,
  })),
  // A backup opens with a double click, by an ending of its own: the app does not offer to open all the data there is.
  // A backup or a link of ours can be shared to the app. The worker takes them.
  file_handlers: [{ action: './#/backup', accept: { [BACKUP_TYPE]: [BACKUP_ENDING] } }],
  share_target: {
    action: './',
    method: 'POST',
    enctype: 'multipart/form-data',
    params: {
      title: 'title',
      text: 'text',
      url: 'url',
      files: [
        {
          name: 'file',
          accept: ['application/json', '.json', 'text/plain', '.txt', 'application/pdf', '.pdf', '.docx'],
        },
      ],
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
