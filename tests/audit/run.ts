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
import { slowdownFor } from './slowdown.ts';

/** The last one that runs on the oldest Node that the project is built with. */
const LIGHTHOUSE = 'lighthouse@12.8.2';
/** Of so many runs of a screen the middle one counts: a page's time hangs on what else the machine does. */
const RUNS = Number(process.env.RIDGELINE_RUNS ?? 3);
/** How many times slower than this machine the phone is taken to be, as Lighthouse has it: the score with it is the bar. */
const PLAIN = 4;

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
  readonly environment: { readonly benchmarkIndex: number };
  readonly categories: Readonly<Record<Category, { readonly score: number | null }>>;
  readonly audits: Readonly<
    Record<
      string,
      {
        readonly title: string;
        readonly score: number | null;
        readonly scoreDisplayMode: string;
        readonly numericValue?: number;
      }
    >
  >;
}

const folder = '.cache/audit';

async function audited(url: string, name: string, times: number): Promise<Report> {
  const out = `${folder}/${name.replaceAll(' ', '-')}-${times}.json`;
  await promisify(execFile)(
    'npx',
    [
      '--yes',
      LIGHTHOUSE,
      url,
      '--quiet',
      '--output=json',
      `--output-path=${out}`,
      `--throttling.cpuSlowdownMultiplier=${times}`,
      '--chrome-flags=--headless=new --no-sandbox',
    ],
    { env: { ...process.env, CHROME_PATH: requireChromium() } },
  );
  return JSON.parse(readFileSync(out, 'utf8')) as Report;
}

async function runsOf(url: string, name: string, times: number): Promise<readonly Report[]> {
  const reports: Report[] = [];
  for (let run = 0; run < RUNS; run += 1) reports.push(await audited(url, name, times));
  return reports;
}

const scoreOf = (report: Report, category: Category): number =>
  Math.round((report.categories[category].score ?? 0) * 100);

const middle = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;

const timed = {
  FCP: 'first-contentful-paint',
  LCP: 'largest-contentful-paint',
  TBT: 'total-blocking-time',
  SI: 'speed-index',
} as const;

/** What the score is made of, as the slowed phone has it, and how much was fetched. */
function figuresOf(reports: readonly Report[]): string {
  const of = (audit: string) => middle(reports.map(({ audits }) => audits[audit]?.numericValue ?? 0));
  const times = Object.entries(timed).map(([name, audit]) => `${name} ${Math.round(of(audit))} ms`);
  const shift = of('cumulative-layout-shift').toFixed(3);
  return [...times, `CLS ${shift}`, `${Math.round(of('total-byte-weight') / 1024)} KB`].join(', ');
}

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
  const reports = await runsOf(`${host.url}${hash}`, name, PLAIN);
  const scores = categories.map((category) => {
    const score = middle(reports.map((report) => scoreOf(report, category)));
    if (score < bar(category)) missed += 1;
    return `${category} ${score}${score < bar(category) ? ' MISSED' : ''}`;
  });
  console.log(`${name}: ${scores.join(', ')}`);
  console.log(`  slowed ${PLAIN} times: ${figuresOf(reports)}`);
  const index = Math.round(middle(reports.map(({ environment }) => environment.benchmarkIndex)));
  const times = slowdownFor(index);
  // what a phone of the middle class would come to, whatever this machine is: to be known, and no bar
  const asPhone = times === PLAIN ? reports : await runsOf(`${host.url}${hash}`, name, times);
  const score = middle(asPhone.map((report) => scoreOf(report, 'performance')));
  console.log(
    `  for information, benchmarkIndex ${index}, slowed ${times} times: performance ${score}, ${figuresOf(asPhone)}`,
  );
  for (const fault of new Set(reports.flatMap(faultsOf))) console.log(`  ${fault}`);
}
await host.close();
if (missed > 0) process.exitCode = 1;
