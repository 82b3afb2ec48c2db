import './ui/tokens.css';
import './ui/base.css';
import { render } from 'preact';
import { wearSettings } from './app/intents/settings.ts';
import { startRouting } from './app/navigate.ts';
import { startServiceWorker } from './app/service-worker.ts';
import { startStore } from './app/start.ts';
import { Shell } from './screens/shell.tsx';

/** Paint first: the store opens and the screen loads at the same time; the worker comes when both are done. */
const root = document.getElementById('app');
if (root) {
  void startStore();
  startRouting();
  wearSettings(document.documentElement);
  render(<Shell />, root);
  startServiceWorker();
  addEventListener('load', () => void import('./app/later.ts').then(({ startLater }) => startLater()));
}
