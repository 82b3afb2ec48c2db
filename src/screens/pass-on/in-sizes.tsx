import { useEffect, useState } from 'preact/hooks';
import { keptPeople } from '../../app/drafts/design/designer.ts';
import type { DesignForm, Person } from '../../app/drafts/design/form.ts';
import { readKept } from '../../app/drafts/kept/read-kept.ts';
import { type DraftedSize, inSizes, sizedPerson } from '../../app/garments/in-sizes.ts';
import type { GarmentView } from '../../app/state.ts';
import { type BodyTable, bodyTableNames, bodyTables, type SizedBody } from '../../knit/garment/bodies.ts';
import { type Point, points, toMend } from '../../knit/written/look-through.ts';
import { type LengthUnits, lengthUnits } from '../../knit/written/says-length.ts';
import { writeSizes } from '../../knit/written/write-sizes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { LiveRegion } from '../../ui/live/live-region.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { saysName } from '../draft/says-name.ts';
import { SizeTable } from './size-table.tsx';
import { WrittenKeys } from './written-text.tsx';

/** The garment's design in the sizes that she chooses, side by side and as one written pattern. */
export function InSizes({ view: { garment } }: { readonly view: GarmentView }) {
  const [form, setForm] = useState<DesignForm | null>();
  const [people, setPeople] = useState<readonly Person[]>([]);
  useEffect(() => {
    void readKept('designForm', garment.design).then((read) => setForm((read.ok && read.value) || null));
    void keptPeople().then(setPeople);
  }, [garment.design]);
  if (form === undefined) return null;
  if (form === null) return <Notice kind="note" title={say('passOn.noDesign')} />;
  return <Chosen garment={garment} form={form} people={people.map(sizedPerson)} />;
}

interface ChosenProps {
  readonly garment: GarmentView['garment'];
  readonly form: DesignForm;
  readonly people: readonly SizedBody[];
}

/** Sizes to either side of her own, to begin with. */
const BESIDE = 2;

function usualSizes(table: BodyTable, own: string | undefined): readonly string[] {
  const names = bodyTables[table].map(({ size }) => size);
  const middle = Math.max(BESIDE, own === undefined ? BESIDE : names.indexOf(own));
  const last = Math.min(names.length, middle + BESIDE + 1);
  return names.slice(Math.max(0, last - 2 * BESIDE - 1), last);
}

function Chosen({ garment, form, people }: ChosenProps) {
  const [table, setTable] = useState<BodyTable>(form.person.table ?? 'women');
  const [sizes, setSizes] = useState(usualSizes(table, form.person.size));
  const [hers, setHers] = useState<readonly string[]>([]);
  const [drafted, setDrafted] = useState<readonly DraftedSize[]>([]);
  const [told, tell] = useState('');
  const change = (by: () => void) => {
    by();
    setDrafted([]);
    tell('');
  };
  const work = async () => {
    const chosen = [
      ...bodyTables[table].filter(({ size }) => sizes.includes(size)),
      ...people.filter(({ size }) => hers.includes(size)),
    ];
    if (chosen.length === 0) return tell(say('passOn.noSizes'));
    setDrafted(await inSizes(garment, form, chosen, (size) => tell(say('passOn.workingOut', { size }))));
    tell('');
  };
  return (
    <div class="pass-on">
      <div class="pass-on no-print">
        <p>{say('passOn.sizesFrom')}</p>
        <SelectField
          label={say('draft.size')}
          value={table}
          options={bodyTableNames.map((value) => ({ value, label: saysName(value) }))}
          onChange={(value) =>
            change(() => {
              setTable(value);
              setSizes(usualSizes(value, form.person.table === value ? form.person.size : undefined));
            })
          }
        />
        <Ticks
          title={say('passOn.theSizes')}
          names={bodyTables[table].map(({ size }) => size)}
          on={sizes}
          onChange={(now) => change(() => setSizes(now))}
        />
        {people.length > 0 && (
          <Ticks
            title={say('passOn.people')}
            names={people.map(({ size }) => size)}
            on={hers}
            onChange={(now) => change(() => setHers(now))}
          />
        )}
        <Button kind="main" onPress={() => void work()}>
          {say('draft.workOutSizes')}
        </Button>
        <LiveRegion text={told} />
        {told !== '' && <p>{told}</p>}
      </div>
      {drafted.length > 0 && <Outcome name={garment.name} drafted={drafted} tell={tell} />}
    </div>
  );
}

interface TicksProps {
  readonly title: string;
  readonly names: readonly string[];
  readonly on: readonly string[];
  readonly onChange: (on: readonly string[]) => void;
}

const Ticks = ({ title, names, on, onChange }: TicksProps) => (
  <fieldset class="pass-on-ticks">
    <legend>{title}</legend>
    {names.map((name) => (
      <Toggle
        key={name}
        label={name}
        on={on.includes(name)}
        onChange={(isOn) => onChange(isOn ? [...on, name] : on.filter((one) => one !== name))}
      />
    ))}
  </fieldset>
);

interface OutcomeProps {
  readonly name: string;
  readonly drafted: readonly DraftedSize[];
  readonly tell: (text: string) => void;
}

/** The sizes side by side, and the pattern as it goes on paper. */
function Outcome({ name, drafted, tell }: OutcomeProps) {
  const { terms } = speech.value;
  const [units, setUnits] = useState<LengthUnits>(speech.value.units);
  const worked = drafted.flatMap((one) => (one.worked.ok ? [one.worked.value] : []));
  const written = writeSizes(worked, { terms, units });
  return (
    <>
      <SizeTable drafted={drafted} />
      {written.ok && (
        <Card label={say('passOn.written')}>
          <div class="no-print pass-on">
            <h2>{say('passOn.written')}</h2>
            <Choice
              label={say('passOn.lengthsIn')}
              value={units}
              options={lengthUnits.map((value) => ({
                value,
                label: value === 'both' ? say('passOn.both') : value,
              }))}
              onChange={setUnits}
            />
            <LookedThrough mend={toMend(written.value, worked, terms)} />
            <WrittenKeys name={name} text={written.value} tell={tell} />
            <Button icon="print" onPress={() => print()}>
              {say('passOn.printText')}
            </Button>
          </div>
          <article class="paper written" lang="en">
            {written.value
              .trim()
              .split('\n\n')
              .map((section) => (
                <Section key={section} lines={section.split('\n')} />
              ))}
          </article>
        </Card>
      )}
    </>
  );
}

const Section = ({ lines: [title, ...lines] }: { readonly lines: readonly string[] }) => (
  <section>
    <h3>{title}</h3>
    {lines.map((line, i) => (
      <p key={i}>{line}</p>
    ))}
  </section>
);

/** What she can mend herself; all else would be a defect of what we write. */
const mends = {
  title: 'passOn.mendTitle',
  'body and ease': 'passOn.mendFits',
  yarn: 'passOn.mendYarn',
  gauge: 'passOn.mendGauge',
  washed: 'passOn.mendWashed',
  licence: 'passOn.mendLicence',
} as const satisfies Partial<Record<Point, string>>;

const saysMend = (point: Point): string =>
  point in mends ? say(mends[point as keyof typeof mends]) : say('passOn.mendOurs', { list: point });

const LookedThrough = ({ mend }: { readonly mend: readonly Point[] }) => (
  <div>
    <h3>{say('passOn.looked')}</h3>
    <p>{say(mend.length === 0 ? 'passOn.lookedWell' : 'passOn.lookedMend', { count: points.length })}</p>
    <ul>
      {mend.map((point) => (
        <li key={point}>{saysMend(point)}</li>
      ))}
    </ul>
  </div>
);
