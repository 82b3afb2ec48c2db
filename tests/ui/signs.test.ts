import { readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { firstDrawings } from '../../src/ui/icon/drawings.ts';
import { moreDrawings } from '../../src/ui/icon/more-drawings.ts';
import { shapingIcon } from '../../src/ui/icon/shaping-icons.tsx';
import { sheets } from './sheets.ts';

/** What a dashed line may be, by the token that draws it (src/ui/tokens.css), and where. */
const dashes: Readonly<Record<string, readonly string[]>> = {
  // press this
  'running-stitch': ['ui/button/button.css', 'ui/pad/finish-pad.css'],
  // shaping
  'shaping-dash': ['screens/editor/bands.css', 'screens/knitting/knitting.css', 'ui/card/card.css'],
  // not yet there: a draft, a row not on disk or not on the needles, a file to be dropped, what was asked for, an open edge
  'not-yet': ['screens/backup/backup.css', 'screens/knitting/knitting.css', 'ui/card/card.css'],
  'not-yet-dashes': [
    'screens/draft/draft.css',
    'screens/making-up/making-up.css',
    'ui/lap-window/lap-window.css',
    'ui/panel-map/panel-map.css',
  ],
};

const elsewhere = sheets.filter(({ path }) => path !== 'ui/tokens.css');

describe('a dashed line', () => {
  it('is drawn by one of the three that have a meaning, nowhere by itself', () => {
    const own = /\b(dashed|dotted)\b|stroke-dasharray:(?!\s*(var\(--not-yet-dashes\)|none)\s*;)/;
    expect(own.test('border: 1px dashed red;')).toBe(true);
    expect(own.test('stroke-dasharray: 4 3;')).toBe(true);
    expect(elsewhere.filter(({ text }) => own.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it.each(Object.entries(dashes))('--%s stands only where that is meant', (token, paths) => {
    const using = elsewhere.filter(({ text }) => text.includes(`var(--${token})`)).map(({ path }) => path);
    expect(using.sort()).toEqual(paths);
  });
});

describe('what folds', () => {
  it('has one sign, drawn in one place', () => {
    const own =
      /summary[^{}]*::(before|after|marker|-webkit-details-marker)|\.fold-sign \{[^}]*(border|content|inline-size)/;
    const none = /\.set-up-fold > summary::before \{\s*content: none;/;
    const drawing = sheets.filter(
      ({ path, text }) => path !== 'ui/base.css' && own.test(text.replace(none, '')),
    );
    expect(drawing.map(({ path }) => path)).toEqual([]);
    const folds = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.tsx'),
    );
    const unsigned = folds.filter((path) => {
      const text = readFileSync(`src/${path}`, 'utf8');
      return text.includes('aria-expanded') && !text.includes('class="fold-sign"');
    });
    expect(unsigned).toEqual([]);
  });
});

/** The icons that a file names: beside what it draws, in a choice between several, and in a table of them. */
function iconsIn(text: string): readonly string[] {
  const places = [
    /\bicon=("\w+")/g,
    /<Icon\s+name=("\w+")/g,
    /\bicon=\{([^{}]*)\}/g,
    /<Icon\s+name=\{([^{}]*)\}/g,
    /\bicon: ('\w+')/g,
    /= \{([^{}]*)\} as const satisfies [^;]*\bIconName\b/g,
    /: IconName(?: \| undefined)? =([^;]*);/g,
    /const icons = \{([^{}]*)\}/g,
    /const done =([^;]*);/g,
  ];
  return places.flatMap((place) =>
    [...text.matchAll(place)].flatMap(([, choice = '']) =>
      [...choice.replace(/[!=]== '\w+'/g, '').matchAll(/["'](\w+)["']/g)].map(([, icon = '']) => icon),
    ),
  );
}

describe('an icon', () => {
  const drawings = { ...firstDrawings, ...moreDrawings };
  const lines = readFileSync('src/ui/icon/README.md', 'utf8').matchAll(
    /^\| (\w+) \| ([^|]+) \| ([^|]*) \|$/gm,
  );
  const table = [...lines]
    .map(([, icon = '', means = '', files = '']) => ({
      icon,
      means,
      files: files.split(', ').filter(Boolean),
    }))
    .filter(({ icon }) => icon !== 'icon');

  it('stands once in the table of meanings, and no two mean or look the same', () => {
    expect(table.map(({ icon }) => icon).sort()).toEqual(Object.keys(drawings).sort());
    expect(new Set(table.map(({ means }) => means)).size).toBe(table.length);
    expect(new Set(Object.values(drawings).map((drawing) => JSON.stringify(drawing))).size).toBe(
      table.length,
    );
  });

  it('means one thing: what it means joins no two', () => {
    expect(table.filter(({ means }) => /, or | and also |;/.test(means))).toEqual([]);
  });

  it('is used only where the table says, wherever a screen chooses among several too', () => {
    const found: string[] = [];
    const used = new Set<string>();
    const folders = ['app', 'screens', 'ui'].flatMap((folder) =>
      readdirSync(`src/${folder}`, { recursive: true, encoding: 'utf8' }).map(
        (path) => `src/${folder}/${path}`,
      ),
    );
    for (const path of folders.filter((one) => /\.tsx?$/.test(one) && !one.startsWith('src/ui/icon/'))) {
      const name = basename(path).replace(/\.tsx?$/, '');
      for (const icon of iconsIn(readFileSync(path, 'utf8')).filter((one) => Object.hasOwn(drawings, one))) {
        const line = table.find((one) => one.icon === icon);
        if (!line?.files.includes(name)) found.push(`${icon} in ${path}`);
        used.add(`${icon} ${name}`);
      }
    }
    expect(found).toEqual([]);
    // nor does the table name a file that has it no more
    const elsewhereNamed = /^\w+ (shaping-icons|add-piece)$/;
    const named = table.flatMap(({ icon, files }) => files.map((file) => `${icon} ${file}`));
    expect(named.filter((one) => !used.has(one) && !elsewhereNamed.test(one))).toEqual([]);
  });

  it('is another for each way of shaping', () => {
    const icons = [
      { kind: 'edge', by: -1 },
      { kind: 'edge', by: 1 },
      { kind: 'bind off', by: -6 },
      { kind: 'cast on', by: 6 },
      { kind: 'turn', by: 0 },
    ] as const;
    expect(new Set(icons.map(shapingIcon)).size).toBe(icons.length);
  });
});
