import { useState } from 'preact/hooks';
import {
  change,
  forgetPerson,
  form,
  keepPerson,
  people,
  setMeasure,
} from '../../app/drafts/design/designer.ts';
import type { DesignForm } from '../../app/drafts/design/form.ts';
import { type BodyTable, bodyOfSize, bodyTableNames, bodyTables } from '../../knit/garment/bodies.ts';
import { Button } from '../../ui/button/button.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';
import { bodyMeasures } from '../body-measures.ts';
import { LengthField } from './at-field.tsx';
import { BodyFigure } from './body-figure.tsx';

/** Whose measures, and each of them to type over: what lies in the fold. */
export function Measures({ form: { body } }: { readonly form: DesignForm }) {
  return (
    <>
      <Whose />
      <div class="draft-mores">
        <details class="draft-more">
          <summary>{say('draft.eachMeasure')}</summary>
          <p class="quiet">{say('draft.tableNote')}</p>
          <BodyFigure />
          <div class="draft-grid draft-narrow">
            {bodyMeasures.map(([name, label, hint]) => (
              <LengthField
                key={name}
                label={say(label)}
                hint={hint && say(hint)}
                mm={body[name]}
                path={`body.${name}`}
                bare
                onChange={(mm) => setMeasure(name, mm)}
              />
            ))}
          </div>
        </details>
        <details class="draft-more">
          <summary>{say('draft.keepUnderName')}</summary>
          <KeepPerson />
        </details>
      </div>
    </>
  );
}

/** Beside the fold's name. */
export function saysWhose({ person: { name, table, size } }: DesignForm): string {
  if (name) return name;
  return table && size
    ? say('draft.fromTable', { table: say(`draft.${table}`), size })
    : say('draft.ownMeasures');
}

const OWN = 'own';

/** People kept, then the sizes of the published tables. */
function Whose() {
  const now = form.value;
  if (!now) return null;
  const { name, table, size } = now.person;
  const value = name ? `person ${name}` : table && size ? `${table} ${size}` : OWN;
  const options = [
    ...(value === OWN ? [{ value: OWN, label: say('draft.ownMeasures') }] : []),
    ...people.value.map((one) => ({ value: `person ${one.name}`, label: one.name })),
    ...bodyTableNames.flatMap((tableName) =>
      bodyTables[tableName].map((sized) => ({
        value: `${tableName} ${sized.size}`,
        label: say('draft.fromTable', { table: say(`draft.${tableName}`), size: sized.size }),
      })),
    ),
  ];
  return <SelectField label={say('draft.whose')} value={value} options={options} onChange={choosePerson} />;
}

function choosePerson(value: string): void {
  const [first = '', ...rest] = value.split(' ');
  const name = rest.join(' ');
  if (first === 'person') {
    const found = people.value.find((one) => one.name === name);
    if (found) change((old) => ({ ...old, person: { name }, body: found.body }));
    return;
  }
  const table = first as BodyTable;
  const body = bodyOfSize(table, name);
  if (body) change((old) => ({ ...old, person: { table, size: name }, body }));
}

function KeepPerson() {
  const [name, setName] = useState('');
  const [told, setTold] = useState('');
  const known = form.value?.person.name;
  const keep = async () => {
    if (await keepPerson(name.trim())) {
      setTold(say('draft.personKept', { name: name.trim() }));
      setName('');
    }
  };
  return (
    <div class="draft-stack">
      <TextField label={say('draft.personName')} value={name} onInput={setName} />
      <div class="draft-buttons">
        <Button disabled={name.trim() === ''} onPress={() => void keep()}>
          {say('draft.keepPerson')}
        </Button>
        {known && (
          <Button kind="quiet" icon="trash" onPress={() => void forgetPerson(known)}>
            {say('draft.forgetPerson', { name: known })}
          </Button>
        )}
      </div>
      <p role="status" class="quiet">
        {told}
      </p>
    </div>
  );
}
