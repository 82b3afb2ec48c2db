import '../../../src/ui/tokens.css';
import '../../../src/ui/base.css';
import { render } from 'preact';
import { loadWords } from '../../../src/words/say.ts';
import { MapPage } from './map-page.tsx';
import { PadPage } from './pad-page.tsx';
import { PartsPage } from './parts-page.tsx';

/** Every part of the look on a page of its own, so that it can be tried in a browser without a screen around it. */
const pages: Readonly<Record<string, () => preact.JSX.Element>> = {
  parts: PartsPage,
  pad: PadPage,
  map: MapPage,
};

const asked = new URLSearchParams(location.search);
for (const name of ['theme', 'dim']) {
  const value = asked.get(name);
  if (value) document.documentElement.dataset[name] = value;
}
document.documentElement.dir = asked.get('dir') ?? 'ltr';
await loadWords('ui', 'craft', 'row', 'print');
const Page = pages[asked.get('page') ?? 'parts'];
const root = document.getElementById('app');
if (Page && root) render(<Page />, root);
document.body.dataset.ready = 'true';
