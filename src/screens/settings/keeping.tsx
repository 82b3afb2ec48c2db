import { useEffect, useState } from 'preact/hooks';
import { askToKeep, type Keeping as State, readKeeping } from '../../app/device/keeping.ts';
import { appVersion, offlineReady } from '../../app/service-worker.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** Whether rows and app stay on this phone, and what can be done about it. */
export function Keeping() {
  const [state, setState] = useState<State>();
  const [refused, setRefused] = useState(false);
  const read = () => void readKeeping().then(setState);
  useEffect(read, []);
  const ask = async () => {
    setRefused(!(await askToKeep()));
    read();
  };
  return (
    <div class="keeping">
      <Line sure={offlineReady.value}>{say(offlineReady.value ? 'settings.offlineYes' : 'settings.offlineNo')}</Line>
      {state && <Line sure={state.promised === true}>{saysPromise(state)}</Line>}
      {state?.promised === false && <Button onPress={() => void ask()}>{say('settings.keptAsk')}</Button>}
      <p role="status">{refused ? say('settings.keptRefused') : ''}</p>
      <p class="settings-small">
        {state?.usedBytes !== undefined && `${say('settings.used', { used: saysBytes(state.usedBytes) })} · `}
        {say('settings.version', { version: appVersion })}
      </p>
    </div>
  );
}

function Line({ sure, children }: { readonly sure: boolean; readonly children: string }) {
  return (
    <p class="keeping-line">
      <Icon name={sure ? 'check' : 'note'} />
      <span>{children}</span>
    </p>
  );
}

const saysPromise = ({ promised }: State): string =>
  say(promised === undefined ? 'settings.keptUnknown' : promised ? 'settings.kept' : 'settings.keptNot');

const saysBytes = (bytes: number): string => `${saysNumber(bytes / 1e6, { digits: 1 })} MB`;
