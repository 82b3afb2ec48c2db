/**
 * `npm run release`: the app as it is handed to who hosts it: a zip of dist with the licences of all that is inside,
 * what four kinds of hosts are told to send with it, and its checksum.
 */
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { buildIfNeeded, dist } from './built.ts';
import { filesOfRelease, zipped } from './release-files.ts';

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
const name = `ridgeline-${version}.zip`;
buildIfNeeded();
const zip = zipped(filesOfRelease(dist));
const sum = createHash('sha256').update(zip).digest('hex');
rmSync('release', { recursive: true, force: true });
mkdirSync('release');
writeFileSync(`release/${name}`, zip);
writeFileSync(`release/${name}.sha256`, `${sum}  ${name}\n`);
console.log(`release/${name}, ${(zip.length / 1000).toFixed(0)} KB\nsha256 ${sum}`);
