import '../../ui/screen/columns.css';
import './backup.css';
import { useEffect, useState } from 'preact/hooks';
import { backupState, makeBackup } from '../../app/backup/backup.ts';
import {
  canKeepUp,
  chooseFileThere,
  chooseKeptFile,
  forgetKeptFile,
  handOver,
  keepUpAgain,
  keptFile,
} from '../../app/backup/backup-file.ts';
import { keptFileLate } from '../../app/backup/kept-file-late.ts';
import { endWayBack } from '../../app/backup/way-back.ts';
import { hrefTo } from '../../app/routes.ts';
import type { Fault } from '../../knit/fault.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { saysAgo } from '../../words/time.ts';
import { useArrival } from '../arrival.ts';
import { KeptNews } from './kept-news.tsx';
import { OpenBackup } from './open-backup.tsx';

/** Everything out in one file, and back in. */
export default function BackupScreen() {
  useArrival(say('backup.title'));
  const [isAsking, setAsking] = useState(false);
  const back = { href: hrefTo('workbasket'), label: say('backup.toWorkbasket') };
  return (
    <Screen title={say('backup.title')} back={back}>
      <div class="backup columns">
        <Shows what="columns" />
        <MakeBackup isMain={!isAsking} />
        {canKeepUp() && <KeepUp />}
        <OpenBackup onAsk={setAsking} />
      </div>
    </Screen>
  );
}

type Made =
  | { readonly said: string; readonly without: readonly Fault[] }
  | { readonly faults: readonly Fault[] }
  | 'making'
  | undefined;

/** `isMain`: while a file asks her something, its answer is the page's main key instead. */
function MakeBackup({ isMain }: { readonly isMain: boolean }) {
  const [state, setState] = useState<Awaited<ReturnType<typeof backupState>>>();
  const [made, setMade] = useState<Made>();
  const refresh = () => void backupState().then(setState);
  useEffect(refresh, []);
  const make = async () => {
    setMade('making');
    const file = await makeBackup();
    if (!file.ok) return setMade({ faults: file.faults });
    const { name, text, garments, entries, without, kept } = file.value;
    const handed = await handOver(name, text);
    if (handed === undefined) return setMade(undefined);
    kept();
    await endWayBack();
    refresh();
    setMade({ said: say('backup.made', { count: garments, entries }), without });
  };
  return (
    <Card label={say('backup.make')}>
      <p>{say('backup.what')}</p>
      {state && <p>{saysLast(state)}</p>}
      <Button
        kind={isMain ? 'main' : 'plain'}
        icon="download"
        disabled={made === 'making'}
        onPress={() => void make()}
      >
        {say(made === 'making' ? 'backup.making' : 'backup.make')}
      </Button>
      {made !== undefined && made !== 'making' && 'without' in made && made.without.length > 0 && (
        <Notice kind="fault" title={say('backup.without')} live>
          {made.without.map((fault) => (
            <p key={saysFault(fault)}>{saysFault(fault)}</p>
          ))}
        </Notice>
      )}
      {made !== undefined && made !== 'making' && 'said' in made && (
        <Notice kind="done" title={made.said} live />
      )}
      {made !== undefined && made !== 'making' && 'faults' in made && (
        <Notice kind="fault" title={say('backup.notMade')} live>
          {made.faults.map((fault) => (
            <p key={fault.code}>{saysFault(fault)}</p>
          ))}
        </Notice>
      )}
    </Card>
  );
}

function saysLast({ backupAt, backupEntries, entries }: Awaited<ReturnType<typeof backupState>>): string {
  if (backupAt === 0) return say('backup.never');
  const since = Math.max(0, entries - backupEntries);
  return `${say('backup.last', { when: saysAgo(backupAt, Date.now()) })} ${say('backup.since', { count: since })}`;
}

/** The file is not what it says it is: why, and the way to mend it. */
function KeptFileLate() {
  const late = keptFileLate.value;
  if (late === undefined) return null;
  const actions = <Button onPress={() => void keepUpAgain()}>{say('backup.keepUpAgain')}</Button>;
  return (
    <Notice kind="fault" title={say('backup.keepUpLate')} actions={actions} live>
      <p>{saysFault(late)}</p>
    </Notice>
  );
}

function KeepUp() {
  const [name, setName] = useState<string>();
  const refresh = () => void keptFile().then((handle) => setName(handle?.name));
  useEffect(refresh, []);
  return (
    <Card label={say('backup.keepUp')}>
      <h2>{say('backup.keepUp')}</h2>
      <p>{name === undefined ? say('backup.keepUpHelp') : say('backup.keepUpOn', { name })}</p>
      {name !== undefined && <KeptFileLate />}
      <KeptNews />
      {name === undefined ? (
        <div class="backup-keys">
          <Button onPress={() => void chooseKeptFile().then(refresh)}>{say('backup.keepUpNew')}</Button>
          <Button onPress={() => void chooseFileThere().then(refresh)}>{say('backup.keepUpThere')}</Button>
        </div>
      ) : (
        <Button onPress={() => void forgetKeptFile().then(refresh)}>{say('backup.keepUpStop')}</Button>
      )}
    </Card>
  );
}
