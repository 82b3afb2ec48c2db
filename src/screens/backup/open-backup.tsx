import { useEffect, useRef, useState } from 'preact/hooks';
import { type OpenedFile, openFile, takeIn } from '../../app/backup/backup.ts';
import { openedFiles } from '../../app/backup/opened-files.ts';
import { textOfFile } from '../../app/drafts/pattern/from-file/read-file.ts';
import { handedText } from '../../app/drafts/pattern/handed-text.ts';
import { linkInFile } from '../../app/garments/passing-on.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import type { Fault } from '../../knit/fault.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { later } from '../later.tsx';
import { PreviewList } from './preview-list.tsx';
import { WayBackNotice } from './way-back-notice.tsx';
import { WhatGoes } from './what-goes.tsx';

/** Not kept for offline use. */
const ByCamera = later(async () => (await import('./by-camera.tsx')).ByCamera);

type Step =
  | { readonly at: 'choosing' }
  | { readonly at: 'camera' | 'no camera' }
  | { readonly at: 'handed'; readonly file: Blob }
  | { readonly at: 'reading'; readonly stop?: () => void }
  | { readonly at: 'refused'; readonly faults: readonly Fault[]; readonly text?: string | undefined }
  | { readonly at: 'deciding'; readonly file: OpenedFile }
  | { readonly at: 'done' };

/** Choose, look at what would change, decide; and the way back if it was wrong. */
export function OpenBackup({ onAsk }: { readonly onAsk: (asks: boolean) => void }) {
  const [step, go] = useState<Step>({ at: 'choosing' });
  const input = useRef<HTMLInputElement>(null);
  const asked = useRef<HTMLDivElement>(null);
  const open = async (file: Blob) => {
    go({ at: 'reading' });
    const link = await linkInFile(file);
    if (link !== undefined) return goTo(link);
    const read = await openFile(file, (stop) => go({ at: 'reading', stop }));
    if (read === undefined) return go({ at: 'choosing' });
    if (read.ok) return go({ at: 'deciding', file: read.value });
    go({ at: 'refused', faults: read.faults, text: await patternIn(file) });
  };
  const look = async () => go({ at: (await ByCamera.fetch()) ? 'camera' : 'no camera' });
  const arrived = ({ file, handed }: { readonly file: Blob; readonly handed: boolean }) =>
    handed ? go({ at: 'handed', file }) : void open(file);
  useEffect(() => openedFiles(arrived), []);
  // what a file asks of her stands at the page's end: she is brought to it
  useEffect(() => {
    asked.current?.scrollIntoView();
    onAsk(step.at === 'handed' || step.at === 'deciding' || step.at === 'done');
  }, [step.at]);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file) void open(file);
  };
  return (
    <Card label={say('backup.openTitle')}>
      <h2>{say('backup.openTitle')}</h2>
      <p>{say('backup.openHelp')}</p>
      <fieldset class="backup-drop" onDragOver={(event) => event.preventDefault()} onDrop={drop}>
        <input
          ref={input}
          class="spoken"
          type="file"
          accept=".json,application/json,.txt,text/plain,.pdf,application/pdf,.docx"
          tabIndex={-1}
          aria-label={say('backup.choose')}
          onChange={(event) => {
            const [file] = event.currentTarget.files ?? [];
            if (file) void open(file);
            event.currentTarget.value = '';
          }}
        />
        <Button icon="onward" onPress={() => input.current?.click()}>
          {say('backup.choose')}
        </Button>
        <span>{say('backup.drop')}</span>
      </fieldset>
      {step.at !== 'camera' && <Button onPress={() => void look()}>{say('backup.byCamera')}</Button>}
      {step.at !== 'choosing' && (
        <div ref={asked}>
          <Outcome step={step} go={go} open={(file) => void open(file)} />
        </div>
      )}
      <WayBackNotice always />
    </Card>
  );
}

interface OutcomeProps {
  readonly step: Step;
  readonly go: (step: Step) => void;
  readonly open: (file: Blob) => void;
}

function Outcome({ step, go, open }: OutcomeProps) {
  switch (step.at) {
    case 'choosing':
      return null;
    case 'camera':
      return <ByCamera onRead={(text) => open(new Blob([text]))} onStop={() => go({ at: 'choosing' })} />;
    case 'no camera':
      return (
        <Notice kind="fault" title={say('backup.noReader')} live>
          {say('backup.takeFile')}
        </Notice>
      );
    case 'handed':
      return <Handed onOpen={() => open(step.file)} onLeave={() => go({ at: 'choosing' })} />;
    case 'reading':
      return (
        <p role="status">
          {say('backup.reading')} {step.stop && <Button onPress={step.stop}>{say('backup.stop')}</Button>}
        </p>
      );
    case 'refused':
      return (
        <Notice
          kind="fault"
          title={say('backup.cannot')}
          actions={step.text !== undefined && <AsPattern text={step.text} />}
          live
        >
          {step.faults.map((fault) => (
            <p key={fault.code}>{saysFault(fault)}</p>
          ))}
        </Notice>
      );
    case 'deciding':
      return <Decide file={step.file} go={go} />;
    case 'done':
      return <Done />;
  }
}

/** A file that is no backup may hold a pattern. */
async function patternIn(file: Blob): Promise<string | undefined> {
  const read = await textOfFile(file);
  return read.ok ? read.value : undefined;
}

/** What is no backup may be a pattern's text. */
function AsPattern({ text }: { readonly text: string }) {
  const open = () => {
    handedText.value = text;
    goTo(hrefTo('read'));
  };
  return <Button onPress={open}>{say('backup.asPattern')}</Button>;
}

/** Any web page can post a file here: nothing of it is shown before she has said that it is hers. */
function Handed({ onOpen, onLeave }: { readonly onOpen: () => void; readonly onLeave: () => void }) {
  const actions = (
    <>
      <Button kind="main" onPress={onOpen}>
        {say('backup.handedOpen')}
      </Button>
      <Button onPress={onLeave}>{say('backup.handedLeave')}</Button>
    </>
  );
  return (
    <Notice kind="note" title={say('backup.handed')} actions={actions} live>
      {say('backup.handedHelp')}
    </Notice>
  );
}

function Decide({ file, go }: { readonly file: OpenedFile; readonly go: (step: Step) => void }) {
  const take = async (mode: 'merge' | 'replace') => {
    go({ at: 'reading' });
    const done = await takeIn(file.backup, mode);
    go(done.ok ? { at: 'done' } : { at: 'refused', faults: done.faults });
  };
  return (
    <div class="backup-choices" aria-live="polite">
      <section>
        <h3>{say('backup.merge')}</h3>
        <p>{say('backup.mergeHelp')}</p>
        <PreviewList preview={file.merge} />
        <Button kind="main" onPress={() => void take('merge')}>
          {say('backup.merge')}
        </Button>
      </section>
      {file.replace && <Replace preview={file.replace} onReplace={() => void take('replace')} />}
    </div>
  );
}

interface ReplaceProps {
  readonly preview: NonNullable<OpenedFile['replace']>;
  readonly onReplace: () => void;
}

function Replace({ preview, onReplace }: ReplaceProps) {
  const [asking, setAsking] = useState(false);
  return (
    <>
      <section>
        <h3>{say('backup.replace')}</h3>
        <p>{say('backup.replaceHelp')}</p>
        <PreviewList preview={preview} />
        <Button kind="danger" onPress={() => setAsking(true)}>
          {say('backup.replace')}
        </Button>
      </section>
      <WhatGoes preview={preview} open={asking} onClose={() => setAsking(false)} onReplace={onReplace} />
    </>
  );
}

function Done() {
  const actions = (
    <Button kind="main" href={hrefTo('workbasket')}>
      {say('backup.toWorkbasket')}
    </Button>
  );
  return <Notice kind="done" title={say('backup.takenIn')} actions={actions} live />;
}
