import type { Rhythm, Timing } from '../../knit/piece/form/form.ts';
import { removed, replaced } from '../../knit/piece/form/list.ts';
import { Button } from '../../ui/button/button.tsx';
import { say } from '../../words/say.ts';
import type { SaysAt } from './says-here.ts';
import { TypedNumber } from './typed-number.tsx';

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
      <TypedNumber
        label={say('editor.first')}
        typed={first}
        error={says('first')}
        onTyped={(typed) => onChange({ first: typed, rhythm }, 'first')}
      />
      {rhythm.map((beat, i) => (
        // rhythms have no id; their fields show what the form holds
        <div class="edit-pair" key={i}>
          <TypedNumber
            label={say(i === 0 ? 'editor.every' : 'editor.thenEvery')}
            typed={beat.every}
            error={says(`rhythm ${i + 1} every`)}
            onTyped={(every) => set(replaced(rhythm, i, { ...beat, every }), `rhythm ${i + 1} every`)}
          />
          <TypedNumber
            label={say('editor.times')}
            typed={beat.times}
            error={says(`rhythm ${i + 1} times`)}
            onTyped={(times) => set(replaced(rhythm, i, { ...beat, times }), `rhythm ${i + 1} times`)}
          />
        </div>
      ))}
      <div class="edit-buttons">
        <Button
          kind="quiet"
          icon="plus"
          onPress={() => set([...rhythm, { every: '2', times: '' }], `rhythm ${rhythm.length} added`)}
        >
          {say('editor.addRhythm')}
        </Button>
        {rhythm.length > 1 && (
          <Button
            kind="quiet"
            icon="minus"
            onPress={() => set(removed(rhythm, last), `rhythm ${last} removed`)}
          >
            {say('editor.removeRhythm')}
          </Button>
        )}
      </div>
    </>
  );
}
