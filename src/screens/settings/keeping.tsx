import { useEffect, useState } from 'preact/hooks';
import { askToKeep, isKept, type Kept, type Room, roomLeft } from '../../app/device/room.ts';
import { hrefTo } from '../../app/routes.ts';
import { refusedToKeep } from '../../app/start/refused-to-keep.ts';
import { appVersion, offlineReady } from '../../app/start/service-worker.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** Whether rows and app stay on this phone, and what can be done about it. */
export function Keeping() {
  const [kept, setKept] = useState<Kept>();
  const [room, setRoom] = useState<Room>();
  const [refused, setRefused] = useState(false);
  useEffect(() => {
    void isKept().then(setKept);
    void roomLeft().then(setRoom);
  }, []);
  const ask = async () => {
    const now = await askToKeep();
    setKept(now);
    setRefused(now !== 'kept');
  };
  return (
    <div class="keeping">
      <Line sure={offlineReady.value}>{say(offline())}</Line>
      {kept && <Line sure={kept === 'kept'}>{say(promises[kept])}</Line>}
      {kept === 'not kept' && <Button onPress={() => void ask()}>{say('settings.keptAsk')}</Button>}
      <Button icon="download" href={hrefTo('backup')}>
        {say('settings.toBackup')}
      </Button>
      <p role="status">{refused ? say('settings.keptRefused') : ''}</p>
      <p class="settings-small">
        {room && `${say('settings.used', { used: saysBytes(room.used) })} · `}
        {say('settings.version', { version: appVersion })}
      </p>
    </div>
  );
}

/** Whether the app needs the network, and why it still does. */
function offline() {
  if (offlineReady.value) return 'settings.offlineYes';
  if (!('serviceWorker' in navigator)) return 'settings.offlineUnable';
  return refusedToKeep.value ? 'settings.offlineRefused' : 'settings.offlineNo';
}

function Line({ sure, children }: { readonly sure: boolean; readonly children: string }) {
  return (
    <p class="keeping-line">
      <Icon name={sure ? 'check' : 'info'} />
      <span>{children}</span>
    </p>
  );
}

const promises = {
  kept: 'settings.kept',
  'not kept': 'settings.keptNot',
  unknown: 'settings.keptUnknown',
} as const satisfies Readonly<Record<Kept, string>>;

const saysBytes = (bytes: number): string => `${saysNumber(bytes / 1e6, { digits: 1 })} MB`;
