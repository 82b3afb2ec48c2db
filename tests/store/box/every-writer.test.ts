import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

import { paths, WRITE_HELD } from './write-paths.ts';

/** Every place in src/store that writes, with a path that comes by there. */
const writers: Readonly<Record<string, string>> = {
  'backup/aside.ts clearAside': 'replace by a backup',
  'backup/aside.ts layAside': 'merge a backup',
  'backup/import.ts tryImport': 'merge a backup',
  'backup/way-back.ts forgetWayBack': 'forget the way back',
  'backup/way-back.ts hideWayBack': 'let a backup stay',
  'backup/way-back.ts takeBack': 'take a backup back',
  'place/choose-way.ts chooseWay': 'go on by the other way',
  'garment/garment-calls.ts changeGarment': 'note something on a garment',
  'garment/garment-calls.ts counted': 'save a garment',
  'garment/garment-calls.ts rework': 'plan two parts anew',
  'garment/photos.ts addPhoto': 'add a photo',
  'garment/photos.ts deletePhoto': 'delete a photo',
  'place/rows-together.ts write': 'finish rows of two',
  'box/set-setting.ts setSetting': 'change a setting',
  'store.ts readStart': 'open it for the first time',
  'place/taps.ts write': 'finish a row',
  'beside/write-held.ts writeHeld': WRITE_HELD,
};

const root = new URL('../../../src/', import.meta.url);
const sources = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((path) =>
  /\.tsx?$/.test(path),
);
const textOf = (path: string): string => readFileSync(new URL(path, root), 'utf8');

it('every place that writes into the box is among the paths that are tried', () => {
  const found = sources.flatMap((path) => {
    let within = '';
    return textOf(path)
      .split('\n')
      .flatMap((line) => {
        const named = /^ {0,2}(?:export )?(?:async )?(?:function|const) (\w+)/.exec(line)?.[1];
        if (named !== undefined && !/^ {2}const/.test(line)) within = named;
        return /\bdoor\s*\.write\(|^\s*\.write\($/.test(line)
          ? [`${path.replace('store/', '')} ${within}`]
          : [];
      });
  });
  expect([...new Set(found)].sort()).toEqual(Object.keys(writers).sort());
  for (const path of new Set(Object.values(writers)))
    expect([...Object.keys(paths), 'open it for the first time']).toContain(path);
  // and there is no other way into it than the door
  expect(sources.filter((path) => textOf(path).includes('.transaction('))).toEqual(['store/box/door.ts']);
});
