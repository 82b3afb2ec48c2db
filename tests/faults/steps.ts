import { dist } from '../run/built.ts';
import { type Served, serve } from '../run/serve.ts';
import { chromiumEngine } from './engine.ts';
import type { CannotRun, Figure } from './figure.ts';
import { killFigure, killWhileTapping } from './kills.ts';

/** Part of the promised numbers to try with, for a quick look: $RIDGELINE_SHARE, 1 in a run that counts. */
export const share = Number(process.env.RIDGELINE_SHARE ?? 1);

const times = (promised: number): number => Math.max(1, Math.ceil(promised * share));

type Step = () => Promise<readonly (Figure | CannotRun)[]>;

/** The steps of `npm run faults`, with the numbers that it promises. */
export const steps = {
  kills: () =>
    hosted(async (host) => [killFigure(chromiumEngine, await killWhileTapping(chromiumEngine, host, times(300)))]),
} as const satisfies Record<string, Step>;

export type StepName = keyof typeof steps;

async function hosted<T>(work: (host: Served) => Promise<T>): Promise<T> {
  const host = await serve({ root: dist });
  try {
    return await work(host);
  } finally {
    await host.close();
  }
}
