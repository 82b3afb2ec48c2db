import { buildIfNeeded } from '../run/built.ts';
import { testsChromium } from '../run/chromium.ts';

/** Before the first browser test: a browser and a built app. */
export default function setup(): void {
  process.env.CHROMIUM = testsChromium();
  buildIfNeeded();
}
