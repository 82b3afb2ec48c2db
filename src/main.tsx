import './ui/tokens.css';
import './ui/base.css';
import { render } from 'preact';
import { startRouting } from './app/navigate.ts';
import { wearSettings } from './app/settings/change-settings.ts';
import { firstScreen, firstScreenStands } from './app/start/first-screen.ts';
import { startServiceWorker } from './app/start/service-worker.ts';
import { startStore } from './app/start/start.ts';
import { Shell } from './screens/shell.tsx';

/** Longer than any start takes: what waits for the first screen comes in the end, whatever became of that. */
const AT_LATEST_MS = 5000;

/** Paint first: the store opens and the screen loads at the same time; the rest comes when the screen stands. */
const root = document.getElementById('app');
if (root) {
  void startStore();
  startRouting();
  wearSettings(document.documentElement);
  render(<Shell />, root);
  startServiceWorker();
  void firstScreen.then(() => import('./app/start/later.ts')).then(({ startLater }) => startLater());
  setTimeout(firstScreenStands, AT_LATEST_MS);
}
