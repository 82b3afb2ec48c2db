import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

it('the manifest states no id: a relative one is resolved against the origin, and two apps of one domain would be one', () => {
  // W3C Web Application Manifest, 'id' member: parsed with the start URL's origin as its base
  const manifest =
    readFileSync('vite.config.ts', 'utf8').match(/\n {2}manifest: \{[\s\S]*?\n {2}\},/)?.[0] ?? '';
  expect(manifest).toContain("start_url: './'");
  expect(manifest).not.toMatch(/\bid:/);
});
