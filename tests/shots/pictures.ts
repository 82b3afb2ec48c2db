import { mkdirSync } from 'node:fs';
import { pictures } from '../../src/build/install.ts';
import { closePhones, openPhone } from '../browser/drive.ts';
import { knitterAt } from '../browser/knitter.ts';
import { settled } from '../browser/settled.ts';
import { sights } from '../browser/sights.ts';
import { buildIfNeeded, dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';

const folder = 'public/pictures';

/** Which sight stands on each picture of the manifest, after those that it is come to by: a garment is begun. */
const shows: Readonly<Record<(typeof pictures)[number]['file'], readonly string[]>> = {
  'row.jpg': ['shaping row'],
  'garment.jpg': ['shaping row', 'garment'],
  'draft.jpg': ['draft'],
  'tablet.jpg': ['shaping row'],
};

/** `npm run shots -- pictures`: takes the pictures of the manifest and of README anew, of the sample. */
export async function takePictures(): Promise<void> {
  buildIfNeeded();
  mkdirSync(folder, { recursive: true });
  const host = await serve({ root: dist });
  for (const { file, width, height, density } of pictures) {
    const phone = await openPhone({
      once: true,
      density,
      reducedMotion: 'reduce',
      colorScheme: 'light',
      locale: 'en-GB',
    });
    await phone.page.setViewportSize({ width, height });
    const knitter = knitterAt(phone.page, host.url);
    await knitter.openSample();
    for (const shown of shows[file])
      await sights.find(({ name }) => name === shown)?.come(phone.page, knitter);
    await settled(phone.page);
    await phone.page.screenshot({ path: `${folder}/${file}`, type: 'jpeg', quality: 80 });
    await phone.close();
  }
  await host.close();
  await closePhones();
  console.log(`${pictures.length} pictures in ${folder}/`);
}
