import { useState } from 'preact/hooks';
import { changeGarment } from '../../app/garments/change-garment.ts';
import { notesFromLog } from '../../app/garments/notes-from-log.ts';
import { isSafeAddress } from '../../app/garments/row-notes.ts';
import type { GarmentView } from '../../app/state.ts';
import type { RowNote } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';

/** What she tells whoever follows at single rows, with an address that shows how where she chose one. */
export function RowNotes({ view: { garment } }: { readonly view: GarmentView }) {
  const places = garment.pieces.flatMap(({ recipe }) =>
    recipe.parts.map(({ name }) => ({ piece: recipe.name, part: name })),
  );
  const [at, setAt] = useState('0');
  const [row, setRow] = useState<number>();
  const [text, setText] = useState('');
  const [address, setAddress] = useState('');
  const notes = garment.rowNotes ?? [];
  const keep = (by: (now: readonly RowNote[]) => readonly RowNote[]) =>
    void changeGarment(garment.id, (now) => ({ ...now, rowNotes: by(now.rowNotes ?? []) }));
  const isSafe = address === '' || isSafeAddress(address);
  const place = places[Number(at)];
  const add = () => {
    if (!place || !row) return;
    const said = { ...(text && { text }), ...(address && { address }) };
    keep((now) => [...now, { ...place, row, ...said }]);
    setText('');
    setAddress('');
  };
  const fromRows = async () => {
    const found = await notesFromLog(garment);
    keep((now) => [...now, ...found.filter((one) => !now.some((other) => isSame(one, other)))]);
  };
  return (
    <Card label={say('passOn.rowNotes')}>
      <h2>{say('passOn.rowNotes')}</h2>
      <p>{say('passOn.rowNotesHint')}</p>
      <ul role="list">
        {notes.map((note, i) => (
          <li key={i}>
            <strong>{say('passOn.noteAt', { part: saysPlace(note), row: note.row })}</strong> {note.text}{' '}
            {note.address}{' '}
            <Button kind="quiet" icon="trash" onPress={() => keep((now) => now.filter((_, n) => n !== i))}>
              {say('passOn.dropNote')}
            </Button>
          </li>
        ))}
      </ul>
      <Button onPress={() => void fromRows()}>{say('passOn.notesFromRows')}</Button>
      <SelectField
        label={say('passOn.notePart')}
        value={at}
        options={places.map((one, i) => ({ value: String(i), label: saysPlace(one) }))}
        onChange={setAt}
      />
      <NumberField label={say('passOn.noteRow')} min={1} value={row} onChange={setRow} />
      <TextField label={say('passOn.noteText')} maxLength={500} value={text} onInput={setText} />
      <TextField
        label={say('passOn.noteAddress')}
        hint={say('passOn.noteAddressHint')}
        error={isSafe ? undefined : say('passOn.noteAddressWrong')}
        maxLength={500}
        value={address}
        onInput={setAddress}
      />
      <Button disabled={!row || !isSafe || (text === '' && address === '')} onPress={add}>
        {say('passOn.addNote')}
      </Button>
    </Card>
  );
}

const saysPlace = ({ piece, part }: Pick<RowNote, 'piece' | 'part'>): string =>
  piece === part ? piece : `${piece}, ${part}`;

const isSame = (one: RowNote, other: RowNote): boolean =>
  one.piece === other.piece && one.part === other.part && one.row === other.row && one.text === other.text;
