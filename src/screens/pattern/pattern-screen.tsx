import './pattern.css';
import { useEffect } from 'preact/hooks';
import { lookForText } from '../../app/drafts/pattern/handed-text.ts';
import {
  beginAnew,
  change,
  kept,
  openPattern,
  pattern,
  read,
  reading,
  settle,
  startAgain,
  stopReading,
  unread,
} from '../../app/drafts/pattern/reader.ts';
import { hrefTo } from '../../app/routes.ts';
import { otherTongue } from '../../knit/pattern/text/other-tongue.ts';
import { Button } from '../../ui/button/button.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { languageTable } from '../../words/languages.ts';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { StartAgain } from '../start-again.tsx';
import { Opening } from '../unread.tsx';
import { FromFile } from './from-file.tsx';
import { Handed } from './handed.tsx';
import { LineCard } from './line-card.tsx';
import { PatternFoot } from './pattern-foot.tsx';
import { PieceCheck } from './piece-check.tsx';
import { SizeAndGauge } from './size-and-gauge.tsx';

/** A pattern's text on top, what was understood of it below, and the garment at the foot. */
export default function PatternScreen() {
  useEffect(() => {
    void openPattern();
    void lookForText();
  }, []);
  const now = pattern.value;
  const title = say('pattern.title');
  useArrival(title, now !== undefined);
  const back = { href: hrefTo('workbasket'), label: say('pattern.toWorkbasket') };
  if (now === undefined) {
    return (
      <Screen title={title} back={back}>
        <Opening
          unread={unread.value}
          opening={say('pattern.opening')}
          beginAnew={say('pattern.beginAnew')}
          onAnew={beginAnew}
        />
      </Screen>
    );
  }
  return (
    <Screen title={title} back={back} foot={<PatternFoot />}>
      <Handed />
      <p>{say('pattern.intro')}</p>
      <TextField
        label={say('pattern.name')}
        value={now.name}
        maxLength={200}
        onInput={(name) => change({ name })}
      />
      <Tongue text={now.text} />
      <TextField
        label={say('pattern.text')}
        hint={say('pattern.textHint')}
        value={now.text}
        lines={10}
        onInput={(text) => change({ text })}
      />
      <FromFile />
      <Kept />
      <SizeAndGauge />
      <Reading />
      <Unread />
      <Understood />
      {read.value && <PieceCheck found={read.value} />}
      {now.text !== '' && <StartAgain words="pattern" onAgain={startAgain} />}
    </Screen>
  );
}

const Kept = () =>
  kept.value === 'failed' ? (
    <Notice kind="fault" live>
      {say('pattern.notKept')}
    </Notice>
  ) : (
    <p class="quiet">{say('pattern.kept')}</p>
  );

/** A text that takes long: the page answers meanwhile, and she need not wait. */
function Reading() {
  if (reading.value === 'reading')
    return (
      <p class="pattern-reading" role="status">
        {say('pattern.reading')} <Button onPress={stopReading}>{say('pattern.stop')}</Button>
      </p>
    );
  if (reading.value !== 'stopped') return null;
  const actions = <Button onPress={() => void settle()}>{say('pattern.readOn')}</Button>;
  return (
    <Notice kind="note" title={say('pattern.stopped')} actions={actions} live>
      {say('pattern.stoppedHelp')}
    </Notice>
  );
}

/** A text in another language is told at once, not line by line; above it, since it is longer than a phone is high. */
function Tongue({ text }: { readonly text: string }) {
  const tongue = otherTongue(text);
  if (tongue === undefined) return null;
  return (
    <Notice kind="note" title={say('pattern.otherTongue', { language: languageTable[tongue].name })} live>
      {say('pattern.otherTongueHelp')}
    </Notice>
  );
}

/** What stands behind all that can be read is told: it would be missing from the garment. */
function Unread() {
  const count = read.value?.unreadCharacters ?? 0;
  if (count === 0) return null;
  return (
    <Notice kind="fault" title={say('pattern.tooLong')} live>
      {say('pattern.tooLongHelp', { count })}
    </Notice>
  );
}

function Understood() {
  const lines = read.value?.lines ?? [];
  return (
    <section class="pattern-read" aria-label={say('pattern.understood')}>
      <Shows what="pattern-read" />
      <h2>{say('pattern.understood')}</h2>
      {lines.length === 0 ? (
        <p class="quiet">{say('pattern.nothing')}</p>
      ) : (
        <ol class="pattern-lines" role="list">
          {lines.map((line) => (
            <LineCard key={line.line} line={line} />
          ))}
        </ol>
      )}
    </section>
  );
}
