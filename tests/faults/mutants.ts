import { rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Change, makeChanges } from '../mutants/change.ts';
import { copyProject } from '../mutants/copy.ts';
import { build } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { chromiumEngine } from './engine.ts';
import type { Figure } from './figure.ts';
import { runTests } from './node-checks.ts';
import { fullDisk } from './promises.ts';
import { tapInTwoTabs } from './two-tabs.ts';

/** Faults planted in a copy of the sources: each must turn the check red that is there to find it. */

interface Mutant {
  readonly name: string;
  readonly changes: readonly Change[];
  /** the smallest check that must find it; whether it stayed green */
  readonly staysGreen: (copy: string) => Promise<boolean>;
}

const inFaultTest = (named: string) => async (copy: string) =>
  runTests('tests/store/box/fault-at-every-step.test.ts', { cwd: copy, named }).failed === 0;

const mutants: readonly Mutant[] = [
  {
    name: 'a row shown before it is stored',
    changes: [
      {
        file: 'src/app/in-hand/taps.ts',
        from: 'const result = await head.write(open, id, rows, plan);',
        to: `const place = inHand.value?.place;
  if (place !== undefined) show(head, { ...place, rows: place.rows + 1 });
  const result = await head.write(open, id, rows, plan);`,
      },
    ],
    staysGreen: async (copy) => (await hosted(copy, fullDisk)).met,
  },
  {
    name: 'a place as it was last seen taken for the place as it is',
    changes: [
      {
        file: 'src/store/place/write-log.ts',
        from: 'if (JSON.stringify(newest) !== JSON.stringify([seen])) return newest;',
        to: 'if (newest.length > Number.POSITIVE_INFINITY) return newest;',
      },
    ],
    staysGreen: async (copy) => (await hosted(copy, (host) => tapInTwoTabs(chromiumEngine, host, 50))).met,
  },
  {
    name: 'the journal not drained',
    changes: [
      {
        file: 'src/store/beside/beside.ts',
        from: 'if (journal.taps().length === 0) return',
        to: 'if (journal.taps().length >= 0) return',
      },
    ],
    staysGreen: inFaultTest('to write what was held'),
  },
  {
    name: 'the place written after the log, not with it',
    changes: [
      {
        file: 'src/store/place/write-log.ts',
        from: "() => tx.objectStore('places').put(place),",
        to: 'async () => undefined,',
      },
      {
        file: 'src/store/place/taps.ts',
        from: 'unsure.delete(wish.make);\n    seen.saw(written.value);',
        to: `await door.write(['places'], async (tx) => void (await tx.objectStore('places').put(written.value)));
    unsure.delete(wish.make);
    seen.saw(written.value);`,
      },
    ],
    staysGreen: inFaultTest('to finish a row'),
  },
];

/** Plants each mutant in turn. One that no longer fits its source is a miss too. */
export async function plantedFaults(): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const mutant of mutants) {
    const green = await checkMutant(mutant).catch((error: unknown) => `cannot be planted: ${String(error)}`);
    figures.push({
      name: `planted: ${mutant.name}`,
      measured: green === false ? 'turns the run red' : green === true ? 'is not found' : green,
      bar: 'red',
      met: green === false,
    });
  }
  return figures;
}

async function checkMutant({ changes, staysGreen }: Mutant): Promise<boolean> {
  const copy = resolve('.cache/faults/mutant');
  copyProject(copy);
  makeChanges(copy, changes);
  try {
    return await staysGreen(copy);
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}

/** Builds the copy, serves it, and makes the check against it. */
async function hosted(
  copy: string,
  check: (host: Awaited<ReturnType<typeof serve>>) => Promise<Figure>,
): Promise<Figure> {
  const outDir = join(copy, 'dist');
  build({ outDir, cwd: copy });
  const host = await serve({ root: outDir });
  try {
    return await check(host);
  } finally {
    await host.close();
  }
}
