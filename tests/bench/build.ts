import { spawnSync } from 'node:child_process';
import { join, resolve } from 'node:path';
import { build } from 'vite';
import { buildIfNeeded } from '../run/built.ts';

/** Where the bench builds to, apart from dist, so that it disturbs nobody. */
const folder = '.cache/bench';

export const built = {
  app: join(folder, 'app'),
  bare: join(folder, 'bare'),
  node: join(folder, 'node'),
} as const;

/** The app, the bare page and what runs in Node. Throws a sentence where one cannot be built. */
export async function buildAll(): Promise<void> {
  buildIfNeeded(built.app);
  buildBare();
  await build({
    configFile: false,
    logLevel: 'error',
    build: { ssr: 'tests/bench/in-node.ts', outDir: built.node, emptyOutDir: true, target: 'es2022' },
  });
}

/** A process of its own, as for the app: what is built depends on the environment. */
export function buildBare(): void {
  const vite = join('node_modules', 'vite', 'bin', 'vite.js');
  const args = ['build', 'tests/bench/bare', '--config', 'tests/bench/bare/vite.config.ts'];
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [vite, ...args, '--outDir', resolve(built.bare), '--logLevel', 'warn'],
    { env: { ...process.env, NODE_ENV: 'production' }, encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(`The bare page could not be built.\n${stdout}${stderr}`);
}
