import { useRef, useState } from 'preact/hooks';
import { textOfFile } from '../../app/drafts/pattern/from-file/read-file.ts';
import { handedText } from '../../app/drafts/pattern/handed-text.ts';
import { change, pattern } from '../../app/drafts/pattern/reader.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { loadFaults, saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';

type Step = 'choosing' | 'reading' | { readonly wrong: string };

/** A pattern that lies in a file: chosen, or dropped here. Into an empty field it goes at once; else she is asked. */
export function FromFile() {
  const [step, go] = useState<Step>('choosing');
  const input = useRef<HTMLInputElement>(null);
  const open = async (file: Blob | undefined) => {
    if (file === undefined) return;
    go('reading');
    const read = await textOfFile(file);
    if (read.ok) {
      take(read.value);
      return go('choosing');
    }
    await loadFaults();
    go({ wrong: read.faults.map((fault) => saysFault(fault)).join(' ') });
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    void open(event.dataTransfer?.files[0]);
  };
  return (
    <fieldset class="pattern-file" onDragOver={(event) => event.preventDefault()} onDrop={drop}>
      <input
        ref={input}
        class="spoken"
        type="file"
        accept=".pdf,application/pdf,.docx,.txt,text/plain"
        tabIndex={-1}
        aria-hidden="true"
        onChange={(event) => {
          void open(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
      <Button busy={step === 'reading'} onPress={() => input.current?.click()}>
        {say(step === 'reading' ? 'pattern.fileReading' : 'pattern.file')}
      </Button>
      <p class="quiet">{say('pattern.fileHelp')}</p>
      {typeof step === 'object' && (
        <Notice kind="fault" live>
          {step.wrong}
        </Notice>
      )}
    </fieldset>
  );
}

function take(text: string): void {
  if ((pattern.value?.text ?? '') === '') change({ text });
  else handedText.value = text;
}
