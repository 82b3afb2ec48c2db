import { useState } from 'preact/hooks';
import { handOver } from '../../app/backup/backup-file.ts';
import { garmentFile } from '../../app/backup/one-garment.ts';
import type { GarmentView } from '../../app/state.ts';
import type { Fault } from '../../knit/fault.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { LiveRegion } from '../../ui/live/live-region.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { later } from '../later.tsx';

type Told = { readonly said: string } | { readonly faults: readonly Fault[] } | undefined;
/** Fetched only where it is asked for; not kept for offline use. */
const CodeRun = later(async () => (await import('./code-run.tsx')).CodeRun);

/** This garment with its place, to another device of hers: as a file, or from screen to camera. */
export function ToDevice({ view: { garment } }: { readonly view: GarmentView }) {
  const [told, tell] = useState<Told>();
  const [shows, setShows] = useState<'codes' | 'nothing' | 'not there'>('nothing');
  const save = async () => {
    const file = await garmentFile(garment);
    if (!file.ok) return tell({ faults: file.faults });
    const handed = await handOver(file.value.name, file.value.text);
    tell(handed && { said: say('passOn.fileSaved') });
  };
  const show = async () => setShows((await CodeRun.fetch()) ? 'codes' : 'not there');
  return (
    <div class="pass-on columns">
      <Shows what="columns" />
      <p>{say('passOn.toDeviceWhat')}</p>
      {told !== undefined && 'faults' in told && (
        <Notice kind="fault" title={told.faults.map(saysFault).join(' ')} live />
      )}
      <Card label={say('passOn.file')}>
        <h2>{say('passOn.file')}</h2>
        <p>{say('passOn.toDeviceFile')}</p>
        <Button kind="main" icon="share" onPress={() => void save()}>
          {say('passOn.handOver')}
        </Button>
        <LiveRegion text={told !== undefined && 'said' in told ? told.said : ''} />
        {told !== undefined && 'said' in told && <p>{told.said}</p>}
      </Card>
      <Card label={say('passOn.byCamera')}>
        <h2>{say('passOn.byCamera')}</h2>
        <p>{say('passOn.byCameraHelp')}</p>
        {shows === 'codes' ? (
          <CodeRun garment={garment} />
        ) : (
          <Button onPress={() => void show()}>{say('passOn.showCodes')}</Button>
        )}
        {shows === 'not there' && <p role="status">{say('passOn.needsNetwork')}</p>}
      </Card>
    </div>
  );
}
