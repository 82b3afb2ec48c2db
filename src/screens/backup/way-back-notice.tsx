import { useState } from 'preact/hooks';
import { leaveItSo, readWayBack, takeItBack, wayBack } from '../../app/backup/way-back.ts';
import type { Result } from '../../knit/fault.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { saysAgo } from '../../words/time.ts';
import { useFresh } from '../use-fresh.ts';

type Taken = Result<{ readonly kept: readonly string[] }>;

/** The way back from the last backup that was taken in, until the next one. `always`: also when she let it stay so. */
export function WayBackNotice({ always = false }: { readonly always?: boolean }) {
  useFresh(readWayBack, {});
  const [taken, setTaken] = useState<Taken | 'taking'>();
  const back = wayBack.value;
  if (taken === 'taking') return <p role="status">{say('backup.takingBack')}</p>;
  if (taken !== undefined) return <TakenBack taken={taken} />;
  if (back === undefined || (back.hidden && !always)) return null;
  const takeBack = async () => {
    setTaken('taking');
    setTaken(await takeItBack());
  };
  const actions = (
    <>
      <Button onPress={() => void takeBack()}>{say('backup.undo')}</Button>
      {!always && <Button onPress={() => void leaveItSo()}>{say('backup.leaveSo')}</Button>}
    </>
  );
  const when = saysAgo(back.at, Date.now());
  return (
    <Notice kind="note" title={say(`backup.${back.mode}d`, { when })} actions={actions}>
      {say('backup.undoHelp')}
    </Notice>
  );
}

function TakenBack({ taken }: { readonly taken: Taken }) {
  if (!taken.ok) {
    return (
      <Notice kind="fault" title={say('backup.notTakenBack')} live>
        {taken.faults.map(saysFault).join(' ')}
      </Notice>
    );
  }
  const { kept } = taken.value;
  return (
    <Notice kind="done" title={say('backup.undone')} live>
      {kept.length > 0 && say('backup.stays', { names: kept.join(', ') })}
    </Notice>
  );
}
