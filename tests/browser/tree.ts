import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { settled } from './settled.ts';
import type { Sight } from './sights.ts';

/**
 * What a reader hears of each sight: its accessibility tree, kept as a readable file, so that a change of a name, a role
 * or an order shows in the change that made it. `RIDGELINE_WRITE_TREES=1 npm test -- every-screen` writes them anew; then
 * read the difference.
 */
const folder = 'tests/browser/trees';

/** A plan on paper goes on and on: its beginning shows how it is told. */
const MOST_LINES = 300;

const writes = process.env.RIDGELINE_WRITE_TREES !== undefined;
const PATIENCE_MS = 10_000;

const pathOf = ({ name }: Sight) => `${folder}/${name.replaceAll(' ', '-')}.yml`;

const MONTH =
  '(?:Jan(?:uary)?|Feb(?:ruary)?|Mar(?:ch)?|Apr(?:il)?|May|June?|July?|Aug(?:ust)?|Sept?(?:ember)?|Oct(?:ober)?|Nov(?:ember)?|Dec(?:ember)?)\\b\\.?';

/** What hangs on the day, the hour and how long the test took, and what has no sound. */
const passing: readonly (readonly [RegExp, string])[] = [
  // what keeps a text apart from one that runs the other way is not heard
  [/[\u2066-\u2069]/g, ''],
  [/\bjust now\b|\b[\d.,]+ (?:seconds?|minutes?) ago\b/g, '(while) ago'],
  [/\b\d{1,2}:\d\d(?: ?[ap]\.?m\.?)?/gi, '(time)'],
  // a month with its day: 'Decreased 12' is none, nor is 'Dec 12 sts'
  [
    new RegExp(`\\b(?:\\d{1,2} ${MONTH}(?: \\d{4})?|${MONTH} \\d{1,2}(?:,? \\d{4})?)\\b(?! st)`, 'g'),
    '(day)',
  ],
  [/\b\d{1,2}\/\d{1,2}\/\d{2,4}\b/g, '(day)'],
  [/\b(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day\b/g, '(day)'],
  [/\b[\d.,]+ (?:seconds?|minutes?|min|s|h)\b/g, '(while)'],
  [/\b[\d.,]+ (?:kB|MB)\b/g, '(size)'],
  // what is said of a part's counts when a language changes: it hangs on the looks that were tried before
  [/(?<=- status): \d+ (?:stitches before|Maschen vorher), .*/g, ''],
  [/(?<=#\/g\/)[a-z\d]{10,}/g, '(garment)'],
  [/blob:\S+|http:\/\/localhost:\d+/g, '(address)'],
  [/\b\d+\.\d+\.\d+(?:[-+.][\w.]+)?\b/g, '(version)'],
];

async function treeOf(page: Page): Promise<string> {
  const told = await page.locator('body').ariaSnapshot();
  const lines = passing.reduce((text, [pattern, kind]) => text.replace(pattern, kind), told).split('\n');
  return `${lines.slice(0, MOST_LINES).join('\n')}\n`;
}

/** Where the tree of a sight is no longer the one that is kept, in a sentence; nothing where it is. */
export async function otherTree(page: Page, sight: Sight): Promise<string[]> {
  const path = pathOf(sight);
  const kept = existsSync(path) ? readFileSync(path, 'utf8') : '';
  // what stands after the first paint comes a few frames later
  if (writes) await settled(page);
  const until = performance.now() + PATIENCE_MS;
  let tree = await treeOf(page);
  for (let before = ''; tree !== (writes ? before : kept) && performance.now() < until; ) {
    before = tree;
    await page.waitForTimeout(100);
    tree = await treeOf(page);
  }
  if (writes) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path, tree);
    return [];
  }
  if (kept === tree) return [];
  const [was, is] = [kept.split('\n'), tree.split('\n')];
  const at = is.findIndex((line, index) => line !== was[index]);
  return [
    `${sight.name}: a reader hears '${is[at]?.trim()}' where ${path}:${at + 1} has '${was[at]?.trim() ?? ''}'`,
  ];
}
