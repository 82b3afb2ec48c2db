/**
 * `npm run audit`: Lighthouse over every screen that can be opened by its address, as a phone of its own making sees it
 * (slow processor and network simulated), from a host that compresses. Fetched by npx when it is asked for: it is larger
 * than all that the app is built with, and no test needs it. A word after the command narrows it: `npm run audit -- draft`.
 */
import { execFile } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { loadavg } from 'node:os';
import { promisify } from 'node:util';
import { builtCopy } from '../faults/built-copy.ts';
import { buildIfNeeded } from '../run/built.ts';
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

/** The instrument breaks off now and then where the machine is busy (it finds no beginning in its own record): tried so often. */
const TRIES = 4;
/** A page is looked at in less, ms. */
const LONGEST_MS = 180_000;

interface Report {
  readonly runtimeError?: { readonly code: string };
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

/** One look at a page. Where the instrument breaks off nothing was measured: it looks again. */
async function audited(url: string, name: string, times: number): Promise<Report> {
  const out = `${folder}/${name.replaceAll(' ', '-')}-${times}.json`;
  let why = '';
  for (let attempt = 1; attempt <= TRIES; attempt += 1) {
    rmSync(out, { force: true });
    const broke = await look(url, out, times).then(
      () => '',
      (error: unknown) => /\b(?:NO|PROTOCOL|TARGET)_[A-Z_]+\b/.exec(String(error))?.[0] ?? String(error),
    );
    why = broke || brokenOff(out);
    if (why === '') return JSON.parse(readFileSync(out, 'utf8')) as Report;
    console.log(`  ${name}: the instrument broke off, try ${attempt} of ${TRIES}: ${why.slice(0, 200)}`);
  }
  throw new Error(`${name} could not be looked at: ${why}`);
}

function brokenOff(out: string): string {
  try {
    return (JSON.parse(readFileSync(out, 'utf8')) as Report).runtimeError?.code ?? '';
  } catch {
    return 'no report';
  }
}

const look = (url: string, out: string, times: number) =>
  promisify(execFile)(
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
    { env: { ...process.env, CHROME_PATH: requireChromium() }, timeout: LONGEST_MS },
  );

async function runsOf(url: string, name: string, times: number, runs = RUNS): Promise<readonly Report[]> {
  const reports: Report[] = [];
  for (let run = 0; run < runs; run += 1) reports.push(await audited(url, name, times));
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

/** A screen's scores against the bars; how many it misses. */
async function auditOf(name: string, url: string): Promise<number> {
  const reports = await runsOf(url, name, PLAIN);
  let missed = 0;
  const scores = categories.map((category) => {
    const score = middle(reports.map((report) => scoreOf(report, category)));
    if (score < bar(category)) missed += 1;
    return `${category} ${score}${score < bar(category) ? ' MISSED' : ''}`;
  });
  console.log(`${name}: ${scores.join(', ')} (the machine's load ${loadavg()[0]?.toFixed(1)})`);
  console.log(`  slowed ${PLAIN} times: ${figuresOf(reports)}`);
  for (const fault of new Set(reports.flatMap(faultsOf))) console.log(`  ${fault}`);
  await asPhone(name, url, reports);
  return missed;
}

/** What a phone of the middle class would come to, whatever this machine is: to be known, and no bar. One look is enough. */
async function asPhone(name: string, url: string, plain: readonly Report[]): Promise<void> {
  const index = Math.round(middle(plain.map(({ environment }) => environment.benchmarkIndex)));
  const times = slowdownFor(index);
  const reports = times === PLAIN ? plain : await runsOf(url, name, times, 1).catch(() => []);
  const score = middle(reports.map((report) => scoreOf(report, 'performance')));
  const figures =
    reports.length > 0 ? `performance ${score}, ${figuresOf(reports)}` : 'could not be looked at';
  console.log(`  for information, benchmarkIndex ${index}, slowed ${times} times: ${figures}`);
}

buildIfNeeded();
mkdirSync(folder, { recursive: true });
const host = await serve({ root: builtCopy(), compress: true });
const wanted = process.argv[2] ?? '';
let missed = 0;
for (const [name, hash] of Object.entries(screens).filter(([one]) => one.includes(wanted)))
  missed += await auditOf(name, `${host.url}${hash}`).catch((error: unknown) => {
    // one screen that cannot be looked at stops no other
    console.log(`${name}: MISSED, ${error instanceof Error ? error.message : String(error)}`);
    return 1;
  });
await host.close();
if (missed > 0) process.exitCode = 1;
