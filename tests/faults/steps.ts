import { findChromium } from '../run/chromium.ts';
import { type Served, serve } from '../run/serve.ts';
import { builtCopy } from './built-copy.ts';
import { startOffline } from './cold-starts.ts';
import { missing, type Program, pathOf } from './debian.ts';
import { chromiumEngine } from './engine.ts';
import { type CannotRun, type Figure, printFigures } from './figure.ts';
import { firefoxEngine } from './firefox.ts';
import { onHost } from './hosts.ts';
import { killFigure, killWhileTapping } from './kills.ts';
import { plantedFaults } from './mutants.ts';
import { everyFaultOnEveryPath, hostileFiles, livesOnTwoDevices, mergedHistories } from './node-checks.ts';
import { cleared, fullDisk, refusedStorage } from './promises.ts';
import { loseStorage } from './storage-lost.ts';
import { syncsPerTaps } from './syncs.ts';
import { tapInTwoTabs } from './two-tabs.ts';
import { brokenDeploysLeaveItWorking, firstVisitsCutOff, updateWhileKnitting } from './updates.ts';
import { walk } from './walk.ts';
import { stopScreen, webkitEngine } from './webkit.ts';

type Outcome = Figure | CannotRun;
type Step = () => Promise<readonly Outcome[]>;

/** Part of the promised numbers to try with, for a quick look: $RIDGELINE_SHARE, 1 in a run that counts. */
export const share = Number(process.env.RIDGELINE_SHARE ?? 1);

const times = (promised: number): number => Math.max(1, Math.ceil(promised * share));

/** The steps of `npm run faults`, with the numbers that it promises. */
export const steps = {
  walk: () => hosted((host) => walk(chromiumEngine, host)),
  storage: () => hosted(fullDisk, cleared, refusedStorage),
  tabs: () => hosted((host) => tapInTwoTabs(chromiumEngine, host, times(500))),
  offline: async () => [await startOffline(chromiumEngine, times(50))],
  updates: () => updateWhileKnitting(times(20)),
  deploys: async () => [...(await brokenDeploysLeaveItWorking()), await firstVisitsCutOff(times(10))],
  store: async () => [everyFaultOnEveryPath(), hostileFiles(times(20_000)), mergedHistories()],
  // a life takes a second or two: 300 are some ten minutes, and RIDGELINE_SHARE=7 makes 2100
  model: async () => [livesOnTwoDevices(times(300))],
  syncs: () =>
    needing(['strace'], 'Chromium: disk syncs', () =>
      hosted((host) => syncsPerTaps(chromiumEngine, 'CHROMIUM', findChromium() ?? '', host, times(100))),
    ),
  firefox: () =>
    needing(['firefox'], 'Firefox', async () => [
      ...(await hosted(
        (host) => walk(firefoxEngine, host),
        (host) => tapInTwoTabs(firefoxEngine, host, times(100)),
        async (host) =>
          killFigure(firefoxEngine, await killWhileTapping(firefoxEngine, host, times(30), 2500)),
      )),
      await startOffline(firefoxEngine, times(5)),
    ]),
  'firefox-syncs': () =>
    needing(['firefox', 'strace'], 'Firefox: disk syncs', () =>
      hosted((host) => syncsPerTaps(firefoxEngine, 'RIDGELINE_FIREFOX', pathOf('firefox'), host, times(100))),
    ),
  webkit: () =>
    needing(['webkit', 'screen'], 'WebKit', async () => {
      try {
        return [
          ...(await hosted(
            (host) => walk(webkitEngine, host),
            (host) => loseStorage(host, times(5)),
            async (host) =>
              killFigure(webkitEngine, await killWhileTapping(webkitEngine, host, times(30), 2500)),
          )),
          await startOffline(webkitEngine, times(5)),
          { name: 'WebKit: two windows', why: 'its remote inspector opens no second window' },
        ];
      } finally {
        stopScreen();
      }
    }),
  nginx: () => needing(['nginx'], 'nginx', () => onHost('nginx', times(5))),
  caddy: () => needing(['caddy'], 'Caddy', () => onHost('caddy', times(5))),
  planted: plantedFaults,
  kills: () =>
    hosted(async (host) =>
      killFigure(chromiumEngine, await killWhileTapping(chromiumEngine, host, times(300))),
    ),
} as const satisfies Record<string, Step>;

export type StepName = keyof typeof steps;

/** Makes each check against a host of the built app; one that breaks off is a miss and stops no other. */
async function hosted(...checks: readonly ((host: Served) => Promise<Figure>)[]): Promise<Figure[]> {
  const host = await serve({ root: builtCopy() });
  const figures: Figure[] = [];
  for (const check of checks) {
    const figure = await check(host).catch((error: unknown) => ({
      name: 'a check broke off',
      measured: String(error).slice(0, 400),
      bar: 'ends',
      met: false,
    }));
    console.log(`  ${printFigures([figure])}`);
    figures.push(figure);
  }
  await host.close();
  return figures;
}

async function needing(programs: readonly Program[], name: string, work: Step): Promise<readonly Outcome[]> {
  const why = missing(...programs);
  return why === undefined ? work() : [{ name, why }];
}
