/**
 * `npm run audit`: Lighthouse over every screen that can be opened by its address, as a phone of its own making sees it
 * (slow processor and network simulated), from a host that compresses. Fetched by npx when it is asked for: it is larger
 * than all that the app is built with, and no test needs it. A word after the command narrows it: `npm run audit -- draft`.
 */
import { execFile } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { promisify } from 'node:util';
import { buildIfNeeded, dist } from '../run/built.ts';
import { requireChromium } from '../run/chromium.ts';
import { serve } from '../run/serve.ts';

/** The last one that runs on the oldest Node that the project is built with. */
const LIGHTHOUSE = 'lighthouse@12.8.2';
/** Of so many runs of a screen the middle one counts: a page's time hangs on what else the machine does. */
const RUNS = 3;

const screens: Readonly<Record<string, string>> = {
  workbasket: '',
  knitting: '#/sample',
  draft: '#/draft',
  pattern: '#/read',
  'new garment': '#/new',
  samples: '#/samples',
  backup: '#/backup',
  settings: '#/settings',
};

const categories = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
type Category = (typeof categories)[number];

/** The least that each must come to, of 100. */
const bar = (category: Category): number => (category === 'performance' ? 95 : 100);

interface Report {
  readonly categories: Readonly<Record<Category, { readonly score: number | null }>>;
  readonly audits: Readonly<
    Record<
      string,
      { readonly title: string; readonly score: number | null; readonly scoreDisplayMode: string }
    >
  >;
}

const folder = '.cache/audit';

async function audited(url: string, name: string): Promise<Report> {
  const out = `${folder}/${name.replaceAll(' ', '-')}.json`;
  await promisify(execFile)(
    'npx',
    [
      '--yes',
      LIGHTHOUSE,
      url,
      '--quiet',
      '--output=json',
      `--output-path=${out}`,
      '--chrome-flags=--headless=new --no-sandbox',
    ],
    { env: { ...process.env, CHROME_PATH: requireChromium() } },
  );
  return JSON.parse(readFileSync(out, 'utf8')) as Report;
}

const scoreOf = (report: Report, category: Category): number =>
  Math.round((report.categories[category].score ?? 0) * 100);

const middle = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

/** What cost a point, time aside. */
const faultsOf = ({ audits }: Report): string[] =>
  Object.values(audits)
    .filter(({ score, scoreDisplayMode }) => score === 0 && scoreDisplayMode === 'binary')
    .map(({ title }) => title);

buildIfNeeded();
mkdirSync(folder, { recursive: true });
const host = await serve({ root: dist, compress: true });
const wanted = process.argv[2] ?? '';
let missed = 0;
for (const [name, hash] of Object.entries(screens).filter(([one]) => one.includes(wanted))) {
  const reports: Report[] = [];
  for (let run = 0; run < RUNS; run += 1) reports.push(await audited(`${host.url}${hash}`, name));
  const scores = categories.map((category) => {
    const score = middle(reports.map((report) => scoreOf(report, category)));
    if (score < bar(category)) missed += 1;
    return `${category} ${score}${score < bar(category) ? ' MISSED' : ''}`;
  });
  console.log(`${name}: ${scores.join(', ')}`);
  for (const fault of new Set(reports.flatMap(faultsOf))) console.log(`  ${fault}`);
}
await host.close();
if (missed > 0) process.exitCode = 1;
