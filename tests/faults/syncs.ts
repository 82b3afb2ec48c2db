import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Served } from '../run/serve.ts';
import { pathOf } from './debian.ts';
import type { Engine } from './engine.ts';
import type { Figure } from './figure.ts';
import { openBack, rowInHand, rowShown, thumbOn } from './tapping.ts';

/** Counts how often the browser tells the disk to write through while rows are tapped, by way of strace. */
export async function syncsPerTaps(
  engine: Engine,
  variable: 'CHROMIUM' | 'RIDGELINE_FIREFOX',
  program: string,
  host: Served,
  taps: number,
): Promise<Figure> {
  const folder = mkdtempSync(join(tmpdir(), 'ridgeline-syncs-'));
  const trace = join(folder, 'trace');
  const wrapped = join(folder, 'browser');
  const command = `${pathOf('strace')} -f -qq -e trace=fsync,fdatasync -o ${trace} ${program}`;
  writeFileSync(wrapped, `#!/bin/sh\nexec ${command} "$@"\n`);
  chmodSync(wrapped, 0o755);
  const before = process.env[variable];
  process.env[variable] = wrapped;
  try {
    const count = () => (readFileSync(trace, 'utf8').match(/f(?:data)?sync\(/g) ?? []).length;
    const { during, idle } = await countAround(engine, host, taps, count);
    return {
      name: `${engine.name}: disk syncs per ${taps} taps`,
      measured: `${during}, and ${idle} in as long a time without taps`,
      bar: `at least ${taps} more than without`,
      met: during - idle >= taps,
    };
  } finally {
    if (before === undefined) delete process.env[variable];
    else process.env[variable] = before;
    rmSync(folder, { recursive: true, force: true });
  }
}

async function countAround(engine: Engine, host: Served, taps: number, count: () => number) {
  const machine = await engine.open();
  const { page } = machine;
  await openBack(page, host.url);
  await page.waitForTimeout(8000);
  const { row: first } = await rowInHand(page);
  const { x, y } = await thumbOn(page);
  const began = count();
  const start = performance.now();
  for (let row = first; row < first + taps; row += 1) {
    await machine.tap(x, y);
    await rowShown(page, row + 1);
  }
  const during = count() - began;
  const took = performance.now() - start;
  await page.waitForTimeout(1000);
  const rested = count();
  await page.waitForTimeout(took);
  const idle = count() - rested;
  await machine.close();
  return { during, idle };
}
