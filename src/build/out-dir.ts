import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const { version: packageVersion } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };

/** A build can be given another version, and another folder, so that a test can have two of them. */
export const version = process.env.RIDGELINE_VERSION ?? packageVersion;
export const outDir = process.env.RIDGELINE_OUT ?? 'dist';

/** The browser takes a file for offline use only when it is this one, byte for byte, whatever a host answers. */
export const integrityOf = (path: string): string =>
  `sha384-${createHash('sha384')
    .update(readFileSync(join(outDir, path)))
    .digest('base64')}`;
