import { Fragment } from 'preact';
import type { Rhythm, Timing } from '../../knit/piece/form/form.ts';
import { removed, replaced } from '../../knit/piece/form/list.ts';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { say } from '../../words/say.ts';
import { SaidNumber } from './said.tsx';
import type { SaysAt } from './says-here.ts';

interface RhythmFieldsProps {
  readonly timing: Timing;
  readonly says: SaysAt;
  readonly onChange: (timing: Timing, field: string) => void;
}

/** 'First on row 5, every 6th row 3 times, then every 4th row 5 times.' */
export function RhythmFields({ timing, says, onChange }: RhythmFieldsProps) {
  const { first, rhythm } = timing;
  const set = (next: readonly Rhythm[], field: string) => onChange({ first, rhythm: next }, field);
  const last = rhythm.length - 1;
  return (
    <>
      <SaidNumber
        label={say('editor.first')}
        said={say('editor.saidFirst')}
        typed={first}
        error={says('first')}
        onTyped={(typed) => onChange({ first: typed, rhythm }, 'first')}
      />
      {rhythm.map((beat, i) => (
        // rhythms have no id; their fields show what the form holds
        <Fragment key={i}>
          <SaidNumber
            label={say(i === 0 ? 'editor.every' : 'editor.thenEvery')}
            said={say(i === 0 ? 'editor.saidEvery' : 'editor.saidThenEvery')}
            typed={beat.every}
            error={says(`rhythm ${i + 1} every`)}
            onTyped={(every) => set(replaced(rhythm, i, { ...beat, every }), `rhythm ${i + 1} every`)}
          />
          <SaidNumber
            label={say('editor.times')}
            said={say('editor.saidTimes')}
            typed={beat.times}
            error={says(`rhythm ${i + 1} times`)}
            onTyped={(times) => set(replaced(rhythm, i, { ...beat, times }), `rhythm ${i + 1} times`)}
          />
        </Fragment>
      ))}
      <IconButton
        icon="plus"
        label={say('editor.addRhythm')}
        onPress={() => set([...rhythm, { every: '2', times: '' }], `rhythm ${rhythm.length} added`)}
      />
      {rhythm.length > 1 && (
        <IconButton
          icon="minus"
          label={say('editor.removeRhythm')}
          onPress={() => set(removed(rhythm, last), `rhythm ${last} removed`)}
        />
      )}
    </>
  );
}
