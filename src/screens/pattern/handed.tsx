import { handedText, isAddress } from '../../app/drafts/pattern/handed-text.ts';
import { change, pattern } from '../../app/drafts/pattern/reader.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';

/** A text that came from elsewhere: what it begins with, and whether it shall be read here. */
export function Handed() {
  const text = handedText.value;
  if (text === undefined) return null;
  const leave = () => {
    handedText.value = undefined;
  };
  if (isAddress(text))
    return (
      <Notice
        kind="note"
        title={say('pattern.address')}
        actions={<Button onPress={leave}>{say('pattern.leave')}</Button>}
        live
      >
        {say('pattern.addressHelp')}
      </Notice>
    );
  const take = () => {
    change({ text });
    leave();
  };
  const isFull = (pattern.value?.text ?? '') !== '';
  return (
    <Notice
      kind="note"
      title={say('pattern.handed')}
      actions={
        <>
          <Button kind="main" onPress={take}>
            {say(isFull ? 'pattern.takeInstead' : 'pattern.take')}
          </Button>
          <Button onPress={leave}>{say('pattern.leave')}</Button>
        </>
      }
      live
    >
      <p>{say('pattern.handedHelp')}</p>
      <blockquote class="pattern-handed">{beginning(text)}</blockquote>
    </Notice>
  );
}

/** Characters of it that are shown. */
const SHOWN = 160;

const beginning = (text: string): string =>
  text.length > SHOWN ? `${text.slice(0, SHOWN).trimEnd()} …` : text;
