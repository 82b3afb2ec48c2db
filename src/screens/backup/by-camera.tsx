import { useEffect, useRef, useState } from 'preact/hooks';
import { type LookTrouble, lookForCodes } from '../../app/backup/look-for-codes.ts';
import type { RunCode } from '../../store/share/code-run.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { ProgressBar } from '../../ui/progress/progress-bar.tsx';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

interface ByCameraProps {
  /** a garment that came as a run of codes, as the text of its file */
  readonly onRead: (text: string) => void;
  readonly onStop: () => void;
}

/** Looks through the camera for the codes on her other device's screen, until it has them all. */
export function ByCamera({ onRead, onStop }: ByCameraProps) {
  const video = useRef<HTMLVideoElement>(null);
  const [run, setRun] = useState<readonly RunCode[]>([]);
  const [trouble, setTrouble] = useState<LookTrouble>();
  useEffect(() => lookForCodes(video, { onRun: setRun, onRead, onTrouble: setTrouble }), []);
  const actions = <Button onPress={onStop}>{say('backup.stop')}</Button>;
  if (trouble !== undefined)
    return (
      <Notice
        kind="fault"
        title={say(trouble === 'no camera' ? 'backup.noCamera' : 'backup.noReader')}
        actions={actions}
        live
      >
        {say('backup.takeFile')}
      </Notice>
    );
  return (
    <div class="backup-camera">
      <div aria-hidden="true">
        <video ref={video} muted playsInline />
      </div>
      <Read run={run} />
      {actions}
    </div>
  );
}

/** So few are named, so that she can go to them by hand. */
const NAMED = 6;

function Read({ run }: { readonly run: readonly RunCode[] }) {
  const [first] = run;
  if (first === undefined) return <p role="status">{say('backup.cameraOn')}</p>;
  const said = say('backup.codesRead', { n: run.length, of: first.of });
  const have = new Set(run.map(({ n }) => n));
  const missing = Array.from({ length: first.of }, (_, i) => i + 1).filter((n) => !have.has(n));
  return (
    <>
      <ProgressBar label={say('backup.byCamera')} valueText={said} value={run.length} max={first.of} />
      <p>{said}</p>
      {missing.length <= NAMED && (
        <p>{say('backup.codesMissing', { list: saysList(missing.map(String)) })}</p>
      )}
    </>
  );
}
