import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

/** Where a Chromium may be found under which names; the first that can be run is taken. */
const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'msedge'];
const macPaths = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** The same without windows, bars and pages of its own: a fifth less work where nobody looks on. */
const withoutWindows = ['chromium-headless-shell', 'chrome-headless-shell'];

/** The Chromium that tests are made in: $CHROMIUM, else one without windows, else `requireChromium`. */
export function testsChromium(): string {
  return process.env.CHROMIUM || found(withoutWindows) || requireChromium();
}

/** The Chromium on this machine: $CHROMIUM, else one on the path, else one that was fetched earlier. */
export function findChromium(): string | undefined {
  return process.env.CHROMIUM || [found(names), ...macPaths, fetchedPath()].find(canRun);
}

/** The first of these names that can be run from the path. */
function found(programs: readonly string[]): string | undefined {
  const folders = ['/usr/bin', ...(process.env.PATH ?? '').split(delimiter)];
  return folders.flatMap((folder) => programs.map((name) => join(folder, name))).find(canRun);
}

/** A Chromium that can be run, installed first where there is none. Throws a sentence where that fails. */
export function requireChromium(): string {
  const here = findChromium();
  if (here) return here;
  console.log('No Chromium here: getting one for the browser tests.');
  if (isDebian() && process.getuid?.() === 0) {
    run('apt-get', ['update', '-qq']);
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-dejavu-core']);
  } else {
    run(process.execPath, [join('node_modules', 'playwright-core', 'cli.js'), 'install', 'chromium']);
  }
  const got = findChromium();
  if (got) return got;
  throw new Error(
    'The browser tests need Chromium, and it could not be fetched. Install Chromium or Chrome, or set ' +
      'CHROMIUM to the path of one, and run the command again.',
  );
}

function run(command: string, args: readonly string[]): void {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'], env });
}

function isDebian(): boolean {
  const release = '/etc/os-release';
  return existsSync(release) && /^ID(_LIKE)?=.*(debian|ubuntu)/m.test(readFileSync(release, 'utf8'));
}

function fetchedPath(): string {
  try {
    return chromium.executablePath();
  } catch {
    return '';
  }
}

function canRun(path: string | undefined): path is string {
  try {
    accessSync(path ?? '', constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
