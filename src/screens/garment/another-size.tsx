import { useEffect, useState } from 'preact/hooks';
import { inAnotherSize } from '../../app/drafts/design/another-size.ts';
import { designFrom, keptPeople } from '../../app/drafts/design/designer.ts';
import type { DesignForm, Person } from '../../app/drafts/design/form.ts';
import type { Begun } from '../../app/drafts/kept/begun.ts';
import { readKept } from '../../app/drafts/kept/read-kept.ts';
import { bodyOfSize, bodyTableNames, bodyTables } from '../../knit/garment/bodies.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { say } from '../../words/say.ts';
import { AnotherSheet } from './another-sheet.tsx';

/** The same design for someone else, drafted anew; the garment that there is stays as it is. */
export function AnotherSize({ garment }: { readonly garment: GarmentRecord }) {
  const [figures, setFigures] = useState<DesignForm>();
  const [people, setPeople] = useState<readonly Person[]>([]);
  const [whose, setWhose] = useState('');
  const [open, setOpen] = useState(false);
  useEffect(() => {
    void readKept('designForm', garment.design).then((read) => setFigures(read.ok ? read.value : undefined));
    void keptPeople().then(setPeople);
  }, [garment.design]);
  if (figures === undefined) return null;
  const options = whoseSizes(people);
  const chosen = bodyBehind(whose, people);
  const begin = async (replace: boolean): Promise<Begun> => {
    if (chosen === undefined) return 'not kept';
    const name = say('record.againName', { garment: garment.name });
    return designFrom(inAnotherSize(figures, { ...chosen, name }), replace);
  };
  return (
    <AnotherSheet
      open={open}
      onOpen={() => setOpen(true)}
      onClose={() => setOpen(false)}
      screen="draft"
      beginLabel={say('garment.anotherBegin')}
      isReady={chosen !== undefined}
      begin={begin}
    >
      <SelectField label={say('draft.whose')} value={whose} options={options} onChange={setWhose} />
      <p>{say('garment.anotherHelp')}</p>
    </AnotherSheet>
  );
}

/** People kept, then the sizes of the published tables; none is chosen for her. */
const whoseSizes = (people: readonly Person[]) => [
  { value: '', label: '–' },
  ...people.map(({ name }) => ({ value: `person ${name}`, label: name })),
  ...bodyTableNames.flatMap((table) =>
    bodyTables[table].map(({ size }) => ({
      value: `${table} ${size}`,
      label: say('draft.fromTable', { table: say(`draft.${table}`), size }),
    })),
  ),
];

function bodyBehind(
  value: string,
  people: readonly Person[],
): Pick<DesignForm, 'person' | 'body'> | undefined {
  const at = value.indexOf(' ');
  const name = value.slice(at + 1);
  if (value.startsWith('person ')) {
    const body = people.find((one) => one.name === name)?.body;
    return body && { person: { name }, body };
  }
  const table = bodyTableNames.find((one) => one === value.slice(0, at));
  const body = table && bodyOfSize(table, name);
  return table && body && { person: { table, size: name }, body };
}
