import './ui/tokens.css';
import './ui/base.css';
import { render } from 'preact';
import { startRouting } from './app/navigate.ts';
import { wearSettings } from './app/settings/wear-settings.ts';
import { startServiceWorker } from './app/start/service-worker.ts';
import { startStore } from './app/start/start.ts';
import { expectFirstScreen, later } from './pace/first-screen.ts';
import { Shell } from './screens/shell.tsx';

/** The store opens and the screen loads at the same time; the rest comes when the screen stands (src/pace/order.ts). */
const root = document.getElementById('app');
if (root) {
  void startStore();
  startRouting();
  wearSettings(document.documentElement);
  render(<Shell />, root);
  startServiceWorker();
  later('listeners', async () => (await import('./app/start/later.ts')).startLater());
  expectFirstScreen();
}
