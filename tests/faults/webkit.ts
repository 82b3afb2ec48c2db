import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { type Browser, type Page, webkit } from 'playwright-core';
import { newProfile } from '../browser/drive.ts';
import { until } from '../browser/until.ts';
import { pathOf } from './debian.ts';
import { atMost, type Engine, type Machine } from './engine.ts';
import { inspectorBridge } from './inspector-bridge.ts';
import { killNow, killTree, treeOf } from './process-tree.ts';

/** WebKit's own small browser for GTK, on a screen that nobody sees, driven through its remote inspector. */

export interface WebKitMachine extends Machine {
  /** ends the process that holds WebKit's databases, under the live page */
  killStorage(): void;
}

const screen = ':87';
let xvfb: ChildProcess | undefined;

/** Its page does not come to the inspector at every start: one that never does has lost nothing, and is begun again. */
const STARTS = 3;

export const webkitEngine: Omit<Engine, 'open'> & { open(profile?: string): Promise<WebKitMachine> } = {
  name: 'WebKit',
  async open(profile = newProfile()) {
    await startScreen();
    for (let start = 1; ; start += 1) {
      try {
        return await started(profile);
      } catch (error) {
        if (start === STARTS) throw error;
        console.log(`  WebKit showed no page at start ${start} of ${STARTS}: ${String(error).slice(0, 120)}`);
      }
    }
  },
};

async function started(profile: string): Promise<WebKitMachine> {
  const port = await freePort();
  const bridge = await inspectorBridge(port);
  const child = spawn(pathOf('webkit'), [bridge.url], {
    env: { ...process.env, ...surroundings(profile), WEBKIT_INSPECTOR_HTTP_SERVER: `127.0.0.1:${port}` },
    stdio: 'ignore',
  });
  const pid = child.pid;
  if (pid === undefined) throw new Error('WebKit does not start.');
  const exited = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const browser = await connect(bridge.url).catch((error: unknown) => {
    killTree(pid);
    throw error;
  });
  const page = browser.contexts()[0]?.pages()[0];
  if (page === undefined) throw new Error('WebKit shows no page.');
  const complaints: string[] = [];
  const strangers: string[] = [];
  listen(page, complaints, strangers);
  const end = async () => {
    killTree(pid);
    await exited;
    await atMost(
      browser.close().catch(() => undefined),
      3000,
    );
    await bridge.close();
  };
  return {
    page,
    profile,
    complaints,
    strangers,
    tap: (x, y) => page.mouse.click(x, y),
    killStorage() {
      const storage = treeOf(pid).find(({ command }) => command.includes('WebKitNetworkProcess'));
      if (storage === undefined) throw new Error('WebKit has no network process.');
      killNow(storage.pid);
    },
    kill: end,
    close: end,
  };
}

function listen(page: Page, complaints: string[], strangers: string[]): void {
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => {
    if (!/^(?:http:\/\/localhost:\d+\/|blob:|data:|about:)/.test(request.url()))
      strangers.push(request.url());
  });
}

/** The page is listed some time after the browser began to run. */
async function connect(url: string): Promise<Browser> {
  let browser: Browser | undefined;
  await until(
    async () => {
      const targets = (await (await fetch(`${url}/json`)).json()) as { title: string }[];
      if (targets[0]?.title !== 'Ready') return false;
      browser = await webkit.connectOverCDP(url, { timeout: 5000 }).catch(() => undefined);
      if (browser?.contexts()[0]?.pages()[0]) return true;
      await browser?.close().catch(() => undefined);
      return false;
    },
    (ready) => ready,
    60_000,
  );
  return browser as Browser;
}

/** Everything that it keeps goes into the profile. */
function surroundings(profile: string): Record<string, string> {
  const runtime = join(profile, 'run');
  mkdirSync(runtime, { recursive: true, mode: 0o700 });
  return {
    HOME: profile,
    XDG_DATA_HOME: join(profile, 'data'),
    XDG_CACHE_HOME: join(profile, 'cache'),
    XDG_CONFIG_HOME: join(profile, 'config'),
    XDG_RUNTIME_DIR: runtime,
    DISPLAY: screen,
    GDK_BACKEND: 'x11',
    LIBGL_ALWAYS_SOFTWARE: '1',
  };
}

async function startScreen(): Promise<void> {
  if (xvfb !== undefined) return;
  xvfb = spawn(pathOf('screen'), [screen, '-screen', '0', '500x950x24', '-nolisten', 'tcp'], {
    stdio: 'ignore',
  });
  process.once('exit', stopScreen);
  await new Promise((resolve) => setTimeout(resolve, 1000));
}

/** Call after the last step in WebKit. */
export function stopScreen(): void {
  if (xvfb?.pid !== undefined) killNow(xvfb.pid);
  xvfb = undefined;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}
