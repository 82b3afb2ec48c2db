// Runs a script written in TypeScript on a Node that cannot: node tests/run/run.mjs tests/run/start.ts
import { resolve } from 'node:path';
import { runnerImport } from 'vite';

const [script, ...args] = process.argv.slice(2);
if (script === undefined) throw new Error('Name the script to run.');
const path = resolve(script);
process.argv = [process.argv[0] ?? 'node', path, ...args];
await runnerImport(path, { configFile: false, logLevel: 'error' });
