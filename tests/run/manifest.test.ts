import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { install, pictures } from '../../src/build/install.ts';
import { BACKUP_ENDING } from '../../src/store/backup/file-type.ts';

it('the manifest states no id: a relative one is resolved against the origin, and two apps of one domain would be one', () => {
  // W3C Web Application Manifest, 'id' member: parsed with the start URL's origin as its base
  expect(install).toHaveProperty('start_url', './');
  expect(install).not.toHaveProperty('id');
});

/** Width and height in pixels: JPEG (ITU-T T.81), the frame header after a marker SOF0 or SOF2. */
function sidesOf(jpeg: Buffer): number[] {
  const at =
    [0xc0, 0xc2].map((kind) => jpeg.indexOf(Buffer.from([0xff, kind, 0, 17]))).find((one) => one > 0) ?? 0;
  return [jpeg.readUInt16BE(at + 7), jpeg.readUInt16BE(at + 5)];
}

describe('the pictures that a browser shows where it offers to install', () => {
  // W3C 'Web App Manifest - Application Information', screenshots; from memory what Chromium takes: each side 320 to
  // 3840 px, the longer at most 2.3 times the shorter, all of one form factor of one proportion
  it.each(pictures)('are there in the size that is said: $file', ({ file, width, height, density }) => {
    const picture = readFileSync(`public/pictures/${file}`);
    const sides = sidesOf(picture);
    expect(sides).toEqual([width * density, height * density]);
    expect(Math.max(...sides)).toBeLessThanOrEqual(2.3 * Math.min(...sides));
    expect(Math.min(...sides)).toBeGreaterThanOrEqual(320);
    // kept small: they are in the repository
    expect(picture.length).toBeLessThan(150_000);
  });

  it('are of a phone and of a wide screen, each with words', () => {
    expect(new Set(pictures.map(({ form_factor }) => form_factor))).toEqual(new Set(['narrow', 'wide']));
    expect(pictures.every(({ label }) => label.length > 10)).toBe(true);
  });
});

it('a backup has an ending of its own, so that the app is not offered for every file of data', () => {
  const accepted = (install.file_handlers ?? []).flatMap(({ accept }) => Object.entries(accept));
  expect(accepted).toEqual([['application/vnd.ridgeline+json', ['.ridgeline.json']]]);
  // a chooser that knows no such type shows it as what it is
  expect(BACKUP_ENDING.endsWith('.json')).toBe(true);
});

it('a start while a window is open goes on in that window', () => {
  expect(install.launch_handler?.client_mode).toContain('navigate-existing');
});
