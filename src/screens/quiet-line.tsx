import { useEffect } from 'preact/hooks';
import { holdOffer, install, offer } from '../app/device/installing.ts';
import {
  findQuietLine,
  type QuietLine as Line,
  putOffQuietLine,
  quietLine,
} from '../app/device/quiet-line.ts';
import { hrefTo } from '../app/routes.ts';
import { Button } from '../ui/button/button.tsx';
import { Notice } from '../ui/notice/notice.tsx';
import { say } from '../words/say.ts';

const titles = {
  backup: 'quiet.backup',
  install: 'quiet.install',
  'home first': 'quiet.homeFirst',
  'from browser': 'quiet.fromBrowser',
  news: 'quiet.news',
} as const satisfies Readonly<Record<Line, string>>;

const helps = {
  backup: 'quiet.backupHelp',
  install: 'quiet.installHelp',
  'home first': 'quiet.homeFirstHelp',
  'from browser': 'quiet.fromBrowserHelp',
  news: 'quiet.newsHelp',
} as const satisfies Readonly<Record<Line, string>>;

/** One line at most, said by the way, and gone when she says so. Needs the catalogue 'quiet'. */
export function QuietLine({ isEmpty }: { readonly isEmpty: boolean }) {
  useEffect(holdOffer, []);
  useEffect(() => void findQuietLine(isEmpty), [isEmpty, offer.value]);
  const line = quietLine.value;
  if (line === undefined) return null;
  return (
    <Notice kind="note" title={say(titles[line])} actions={<Actions line={line} />}>
      {say(helps[line])}
    </Notice>
  );
}

function Actions({ line }: { readonly line: Line }) {
  return (
    <>
      {line === 'backup' && <Button href={hrefTo('backup')}>{say('quiet.toBackup')}</Button>}
      {line === 'from browser' && <Button href={hrefTo('backup')}>{say('quiet.openBackup')}</Button>}
      {line === 'install' && <Button onPress={() => void install()}>{say('quiet.put')}</Button>}
      <Button kind="quiet" onPress={() => void putOffQuietLine()}>
        {say(line === 'news' ? 'quiet.newsRead' : 'quiet.notNow')}
      </Button>
    </>
  );
}
