import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  type Browser,
  type BrowserContext,
  type ConsoleMessage,
  chromium,
  type Page,
  type Request,
  type WebError,
} from 'playwright-core';
import { requireChromium } from '../run/chromium.ts';
import { turn } from '../run/turn.ts';
import { borrowWindow } from './kept-windows.ts';
import { killBrowserOf } from './kill.ts';

/** Phones that the screens are made for, in CSS pixels. */
export const phones = {
  common: { width: 390, height: 844 },
  small: { width: 320, height: 640 },
} as const;

const isLong = process.env.RIDGELINE_LOOKS === 'all';

/** Which of them a walk is made on: one in every run, both with RIDGELINE_LOOKS=all. */
export const walkedOn = (size: keyof typeof phones): readonly (keyof typeof phones)[] =>
  isLong ? ['common', 'small'] : [size];

/** Of ways to make the same walk, in another language or with other choices: these in every run, `all` with RIDGELINE_LOOKS=all. */
export const walkedBy = <T>(all: readonly T[], inEveryRun: (one: T) => boolean): readonly T[] =>
  isLong ? all : all.filter(inEveryRun);

/** Of a list of repetitions every so many-th, from another one on with each turn; all of them with RIDGELINE_LOOKS=all. */
export const walkedInTurn = <T>(all: readonly T[], every = 2): readonly T[] =>
  isLong ? all : all.filter((_, i) => (i + turn) % every === 0);

export interface Phone {
  readonly context: BrowserContext;
  /** the window that was opened with it */
  readonly page: Page;
  /** folder with everything the browser keeps; give it to `openPhone` again to switch the phone back on; '' for none */
  readonly profile: string;
  /** addresses outside the app's own origin that anything in it asked for */
  readonly strangers: string[];
  /** what the console and the page said went wrong */
  readonly complaints: string[];
  /** Kills the browser's processes with SIGKILL, as a phone that runs out of memory does. */
  kill(): Promise<void>;
  close(): Promise<void>;
}

export interface PhoneOptions {
  readonly size?: keyof typeof phones;
  /** a profile kept from before; without it a new one */
  readonly profile?: string;
  readonly colorScheme?: 'light' | 'dark';
  readonly reducedMotion?: 'reduce' | 'no-preference';
  /** false: without service workers, and never switched on again (`once`) */
  readonly worker?: boolean;
  /** true: never killed nor switched on again, a window of a browser that other tests use too and that keeps nothing */
  readonly once?: boolean;
  readonly args?: readonly string[];
  /** device pixels for one of CSS */
  readonly density?: 1 | 2;
  /** the language of the system, which an app follows until one is chosen */
  readonly locale?: string;
}

/**
 * What this browser would do for itself beside the app: pages for its own address bar, hints and updates fetched from
 * outside. On a small machine that is a third of the work. (A list given here replaces the driver's own.)
 */
const notNeeded = [
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
  'WebUIOmniboxFullPopup',
  'OmniboxPopupWebUI',
  'AimEnabled',
  'GlobalMediaControls',
  'HttpsUpgrades',
  'InitialWebUI',
  'LensOverlay',
  'MediaRouter',
  'NetworkTimeServiceQuerying',
  'OptimizationHints',
  'PaintHolding',
  'PreconnectToSearch',
  'RenderDocument',
  'SpareRendererForSitePerProcess',
  'TabHoverCardImages',
  'ThirdPartyStoragePartitioning',
  'Translate',
];

const profiles: string[] = [];

/** A new, empty profile; removed by `removeProfiles`. */
export function newProfile(): string {
  const profile = mkdtempSync(join(tmpdir(), 'ridgeline-phone-'));
  profiles.push(profile);
  return profile;
}

/** A process that draws as a graphics card would, one for the network, one for each page, bars around it: a fifth of the work of opening pages. */
export const light = [
  '--disable-gpu',
  '--in-process-gpu',
  '--enable-features=NetworkServiceInProcess2',
  '--disable-site-isolation-trials',
  '--kiosk',
];

/**
 * Pages of tests live for seconds: what a browser would compile once more, and better, for those that live long, and
 * the threads that it does so on, took a sixth of it. (A bench gives arguments of its own; so does what reckons for long.)
 */
const shortLived = ['--js-flags=--no-opt --no-maglev --single-threaded', ...light];

const launch = (args: readonly string[] = shortLived) => ({
  executablePath: requireChromium(),
  args: ['--no-sandbox', `--disable-features=${notNeeded.join(',')}`, ...args],
});

let shared: Promise<Browser> | undefined;

function sharedBrowser(): Promise<Browser> {
  // one process for the windows of a phone: the empty page that a window begins with has one of its own else, and the app another
  shared ??= chromium.launch(launch([...shortLived, '--renderer-process-limit=1']));
  return shared;
}

/** Switches on a phone: Chromium with a touch screen and a profile that outlives it. */
export async function openPhone(options: PhoneOptions = {}): Promise<Phone> {
  const {
    size = 'common',
    args,
    worker = true,
    once = !worker,
    profile = once ? '' : newProfile(),
    density = 1,
    colorScheme,
    reducedMotion,
    locale,
  } = options;
  const look = {
    viewport: phones[size],
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: density,
    ...(colorScheme && { colorScheme }),
    ...(reducedMotion && { reducedMotion }),
    ...(locale && { locale }),
  };
  const { context, page, giveBack } = await opened();
  const strangers: string[] = [];
  const complaints: string[] = [];
  const onRequest = (request: Request) => {
    if (!isOwn(request.url())) strangers.push(request.url());
  };
  const onConsole = (message: ConsoleMessage) => {
    if (message.type() === 'error') complaints.push(message.text());
  };
  const onError = (error: WebError) => complaints.push(error.error().message);
  context.on('request', onRequest).on('console', onConsole).on('weberror', onError);
  const closed = new Promise<void>((resolve) => context.once('close', () => resolve()));
  const kill = async () => {
    killBrowserOf(profile);
    await closed;
  };
  const close = async () => {
    await giveBack();
    context.off('request', onRequest).off('console', onConsole).off('weberror', onError);
  };
  return { context, page, profile, strangers, complaints, kill, close };

  async function opened() {
    if (!worker) return borrowWindow(await sharedBrowser(), { serviceWorkers: 'block', ...look });
    const its = once
      ? await (await sharedBrowser()).newContext(look)
      : await chromium.launchPersistentContext(profile, { ...launch(args), ...look });
    return { context: its, page: its.pages()[0] ?? (await its.newPage()), giveBack: () => its.close() };
  }
}

/** Every test's host is this machine; what a page makes for itself (blob:, data:) goes nowhere. */
const isOwn = (url: string) => /^(?:http:\/\/localhost:\d+\/|blob:|data:|about:|chrome:)/.test(url);

/** Call after the last test of a file. The browser of phones that keep nothing goes on, for the files after it. */
export function removeProfiles(): void {
  for (const profile of profiles.splice(0))
    rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
}

/** Call at the end of a command that has opened phones; that of a test's process ends with the process. */
export async function closePhones(): Promise<void> {
  const browser = shared;
  shared = undefined;
  await (await browser)?.close();
  removeProfiles();
}
