import { expect, it } from 'vitest';
import { install } from '../../src/build/install.ts';

it('the manifest states no id: a relative one is resolved against the origin, and two apps of one domain would be one', () => {
  // W3C Web Application Manifest, 'id' member: parsed with the start URL's origin as its base
  expect(install).toHaveProperty('start_url', './');
  expect(install).not.toHaveProperty('id');
});
