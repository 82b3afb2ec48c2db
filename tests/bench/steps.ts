import type { Figure } from './figure.ts';
import { mapFigures } from './map-figures.ts';
import { memoryFigures } from './memory-figures.ts';
import { nodeFigures } from './node-figures.ts';
import { type BenchPhone, openBenchPhone } from './phone.ts';
import { restoreFigures } from './restore-figures.ts';
import { sizeFigures } from './size-figures.ts';
import { startFigures } from './start-figures.ts';
import { tapFigures } from './tap-figures.ts';
import { visitFigures } from './visit-figures.ts';

/** Part of the repetitions, for a quick look: $RIDGELINE_SHARE, 1 in a run that counts. */
const share = Number(process.env.RIDGELINE_SHARE ?? 1);

const times = (full: number): number => Math.max(2, Math.round(full * share));

/** The engine compiles what runs often and drops it when it likes: that is not what the page holds on to. */
const withoutMachineCode = ['--js-flags=--jitless'];

/** The steps of `npm run bench`. */
export const steps = {
  craft: async () => nodeFigures(times(15)),
  size: async () => sizeFigures(),
  taps: () => onPhone((phone) => tapFigures(phone, times(4), times(30))),
  restore: () => onPhone((phone) => restoreFigures(phone, times(30))),
  starts: () => onPhone((phone) => startFigures(phone, times(15))),
  visit: () => onPhone(({ context }) => visitFigures(context, times(9))),
  map: () => onPhone((phone) => mapFigures(phone, times(5))),
  memory: () => onPhone((phone) => memoryFigures(phone.context, phone.long, 1000), withoutMachineCode),
} as const satisfies Record<string, () => Promise<readonly Figure[]>>;

export type StepName = keyof typeof steps;

/** Every step has a phone of its own: none inherits what another has filled. */
async function onPhone(
  work: (phone: BenchPhone) => Promise<readonly Figure[]>,
  args: readonly string[] = [],
): Promise<readonly Figure[]> {
  const phone = await openBenchPhone(args);
  try {
    return await work(phone);
  } finally {
    await phone.close();
  }
}
