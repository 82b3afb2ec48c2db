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

/** The Chromium on this machine: $CHROMIUM, else one on the path, else one that was fetched earlier. */
export function findChromium(): string | undefined {
  const { CHROMIUM, PATH = '' } = process.env;
  if (CHROMIUM) return CHROMIUM;
  const folders = ['/usr/bin', ...PATH.split(delimiter)];
  const candidates = [...folders.flatMap((folder) => names.map((name) => join(folder, name))), ...macPaths];
  return [...candidates, fetchedPath()].find(canRun);
}

/** A Chromium that can be run, installed first where there is none. Throws a sentence where that fails. */
export function requireChromium(): string {
  const found = findChromium();
  if (found) return found;
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

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return path !== '';
  } catch {
    return false;
  }
}
