import { useState } from 'preact/hooks';
import { changeGarment } from '../../app/intents/change-garment.ts';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';

/** Her own words; kept when she leaves the field. */
export function Notes({ garment, notes }: { readonly garment: string; readonly notes: string }) {
  const [text, setText] = useState(notes);
  const [kept, setKept] = useState<boolean>();
  const keep = async (value: string) => {
    if (value !== notes) setKept(await changeGarment(garment, (now) => ({ ...now, notes: value })));
  };
  const input = (value: string) => {
    setText(value);
    setKept(undefined);
  };
  return (
    <section class="notes">
      <TextField
        label={say('garment.notes')}
        hint={say('garment.notesHint')}
        error={kept === false ? say('garment.notesLost') : undefined}
        value={text}
        lines={4}
        maxLength={10_000}
        onInput={input}
        onChange={(value) => void keep(value)}
      />
      <p class="garment-small" role="status">
        {kept ? say('garment.notesKept') : ''}
      </p>
    </section>
  );
}
