import { useEffect, useState } from 'preact/hooks';
import { inAnotherSize } from '../../app/drafts/design/another-size.ts';
import { designFrom, keptPeople } from '../../app/drafts/design/designer.ts';
import type { DesignForm, Person } from '../../app/drafts/design/form.ts';
import { readKept } from '../../app/drafts/kept/read-kept.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import { bodyOfSize, bodyTableNames, bodyTables } from '../../knit/garment/bodies.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';
import { OtherBegun } from '../record/other-begun.tsx';

type Outcome = 'another is begun' | 'not kept' | undefined;

/** The same design for someone else, drafted anew; the garment that there is stays as it is. */
export function AnotherSize({ garment }: { readonly garment: GarmentRecord }) {
  const [figures, setFigures] = useState<DesignForm>();
  const [people, setPeople] = useState<readonly Person[]>([]);
  const [whose, setWhose] = useState('');
  const [open, setOpen] = useState(false);
  const [outcome, setOutcome] = useState<Outcome>();
  useEffect(() => {
    void readKept('designForm', garment.design).then((read) => setFigures(read.ok ? read.value : undefined));
    void keptPeople().then(setPeople);
  }, [garment.design]);
  if (figures === undefined) return null;
  const options = whoseSizes(people);
  const chosen = bodyBehind(whose, people);
  const take = async (replace: boolean) => {
    if (chosen === undefined) return;
    const name = say('record.againName', { garment: garment.name });
    const done = await designFrom(inAnotherSize(figures, { ...chosen, name }), replace);
    if (done === 'taken') goTo(hrefTo('draft'));
    else setOutcome(done);
  };
  const isOther = outcome === 'another is begun';
  const close = () => {
    setOpen(false);
    setOutcome(undefined);
  };
  return (
    <>
      <Button icon="plus" onPress={() => setOpen(true)}>
        {say('garment.anotherSize')}
      </Button>
      <OtherBegun open={isOther} onClose={close} onReplace={() => void take(true)} />
      <Sheet
        open={open && !isOther}
        title={say('garment.anotherSize')}
        onClose={close}
        actions={
          <Button wide kind="main" disabled={chosen === undefined} onPress={() => void take(false)}>
            {say('garment.anotherBegin')}
          </Button>
        }
      >
        <SelectField label={say('draft.whose')} value={whose} options={options} onChange={setWhose} />
        <p>{say('garment.anotherHelp')}</p>
        {outcome === 'not kept' && (
          <Notice kind="fault" live>
            {say('record.designNotKept')}
          </Notice>
        )}
      </Sheet>
    </>
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
