import { useEffect, useState } from 'preact/hooks';
import { codesOfGarment } from '../../app/backup/codes-of-garment.ts';
import type { Result } from '../../knit/fault.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { QrCode } from './qr-code.tsx';

/** A garment with its place but without its photos, as codes for the camera of another device. */
export function CodeRun({ garment: { id, name } }: { readonly garment: GarmentRecord }) {
  const [made, setMade] = useState<Result<readonly string[] | undefined>>();
  useEffect(() => {
    void codesOfGarment(id).then(setMade);
  }, [id]);
  if (made === undefined) return null;
  if (!made.ok) return <Notice kind="fault" title={made.faults.map(saysFault).join(' ')} live />;
  if (made.value === undefined) return <p role="status">{say('passOn.runTooLong')}</p>;
  return <Running codes={made.value} label={say('passOn.runLabel', { garment: name })} />;
}

/** Under three changes a second: nothing flashes (WCAG 2.3.1), and a camera has time for each. */
const EACH_MS = 350;

/** The codes one after the other, round and round, until she stops them. */
function Running({ codes, label }: { readonly codes: readonly string[]; readonly label: string }) {
  const [at, setAt] = useState(0);
  const [runs, setRuns] = useState(codes.length > 1);
  useEffect(() => {
    if (!runs) return undefined;
    const timer = setInterval(() => setAt((now) => (now + 1) % codes.length), EACH_MS);
    return () => clearInterval(timer);
  }, [runs, codes]);
  return (
    <div class="pass-on-run">
      <QrCode text={codes[at] ?? ''} label={label} />
      {codes.length > 1 && (
        <div class="pass-on-keys">
          <strong>{say('passOn.codeOf', { n: at + 1, of: codes.length })}</strong>
          <Button onPress={() => setRuns(!runs)}>{say(runs ? 'passOn.runStop' : 'passOn.runOn')}</Button>
          {!runs && (
            <Button icon="onward" onPress={() => setAt((at + 1) % codes.length)}>
              {say('passOn.nextCode')}
            </Button>
          )}
        </div>
      )}
    </div>
  );
}
