import { ASIDE } from '../../store/backup/own-settings.ts';
import { beginFreshLog } from '../../store/box/fresh-log.ts';
import { keepUpWhenHidden } from '../backup/backup-file.ts';
import { takeOpenedFiles } from '../backup/opened-files.ts';
import { colourBar } from '../device/bar-colour.ts';
import { goTo } from '../navigate.ts';
import { hrefTo } from '../routes.ts';
import { store } from '../store.ts';

/** What the app listens for once it stands: its colours, files it is opened with, links shared to it, and being put away. */
export function startLater(): void {
  // first of all: what is written before it is done stands on what the last time has left
  void beginFreshLog(globalThis.indexedDB, document.documentElement?.dataset.box ?? 'ridgeline');
  colourBar();
  keepUpWhenHidden();
  takeOpenedFiles(() => goTo(hrefTo('backup')));
  openSharedLink();
  // for the day when the browser has lost its storage, or has no room: that is no time to look for a file
  for (const part of [import('../../store/box/frame-factory.ts'), import('../../store/beside/beside.ts')])
    part.catch(() => undefined);
  void clearAside();
  void rememberGarments();
}

/** A browser that is killed soon after the first garment forgets what was kept beside the box: then nobody would miss them. */
async function rememberGarments(): Promise<void> {
  const { door, sentinel } = (await store()).box;
  if (sentinel.read().garments > 0) return;
  const there = await door.read(['summaries'], (tx) => tx.objectStore('summaries').count());
  if (there.ok && there.value > 0) sentinel.change(() => ({ garments: there.value }));
}

/** What a backup that was cut off while it was read in has left behind; nobody sees it. */
async function clearAside(): Promise<void> {
  const { atOpening, box } = await store();
  if (atOpening[ASIDE] === undefined) return;
  const aside = await import('../../store/backup/aside.ts').catch(() => undefined);
  await aside?.clearAside(box);
}

/** A link of ours that another app shared comes as the query of the start page; it is opened and taken off the address. */
function openSharedLink(): void {
  const query = new URLSearchParams(location.search);
  const shared = [query.get('url'), query.get('text')].find((text) => text?.includes('#/open/'));
  if (!shared) return;
  const hash = /#\/open\/[\w.-]+/.exec(shared)?.[0];
  history.replaceState(history.state, '', location.pathname);
  if (hash) goTo(hash);
}
