import { copyText, saveFile, shareText } from '../../app/device/hand-over.ts';
import { Button } from '../../ui/button/button.tsx';
import { say } from '../../words/say.ts';

interface Props {
  /** the garment's name, which the file bears */
  readonly name: string;
  readonly text: string;
  readonly tell: (text: string) => void;
}

/** A written pattern: to save, to share, to copy. */
export function WrittenKeys({ name, text, tell }: Props) {
  const copy = async () => tell(say((await copyText(text)) ? 'passOn.copied' : 'passOn.copyFailed'));
  const save = () => {
    saveFile(`${name}.txt`, text);
    tell(say('passOn.fileSaved'));
  };
  const share = async () => {
    if (!(await shareText(name, text))) await copy();
  };
  return (
    <div class="pass-on-keys">
      <Button icon="download" onPress={save}>
        {say('passOn.saveText')}
      </Button>
      <Button icon="share" onPress={() => void share()}>
        {say('passOn.shareText')}
      </Button>
      <Button onPress={() => void copy()}>{say('passOn.copyWritten')}</Button>
    </div>
  );
}
