import { useEffect, useRef, useState } from 'preact/hooks';
import { keptPeople } from '../../app/drafts/design/designer.ts';
import { type DesignForm, designOf, type Person } from '../../app/drafts/design/form.ts';
import { readKept } from '../../app/drafts/kept/read-kept.ts';
import { inColours } from '../../app/garments/coloured-makes.ts';
import { besideDraft, type DraftedSize, inSizes } from '../../app/garments/in-sizes.ts';
import { bodiesOf, keepSizes, type SizeSet, usualSet, usualSizes } from '../../app/garments/size-set.ts';
import type { GarmentView } from '../../app/state.ts';
import { bodyTableNames, bodyTables } from '../../knit/garment/bodies.ts';
import type { WorkedSize } from '../../knit/written/work-size.ts';
import { Button } from '../../ui/button/button.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { LiveRegion } from '../../ui/live/live-region.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { saysName } from '../draft/says-name.ts';
import { SizeTable } from '../size-table.tsx';
import { Adjust } from './adjust.tsx';
import { Outcome } from './outcome.tsx';

interface Read {
  readonly form: DesignForm | undefined;
  readonly set: SizeSet | undefined;
  readonly people: readonly Person[];
}

/** The garment's design in the sizes that she chooses, side by side and as one written pattern. */
export function InSizes({ view: { garment } }: { readonly view: GarmentView }) {
  const [read, setRead] = useState<Read>();
  useEffect(() => {
    void readAll(garment).then(setRead);
  }, [garment.id]);
  if (read === undefined) return null;
  const { form, set, people } = read;
  if (form === undefined) return <Notice kind="note" title={say('passOn.noDesign')} />;
  return <Chosen garment={garment} form={form} kept={set ?? usualSet(form)} people={people} />;
}

/** The design, the sizes kept with it, and everyone whose measures are kept here or there. */
async function readAll({ design, sizes }: GarmentView['garment']): Promise<Read> {
  const [form, kept, here] = await Promise.all([
    readKept('designForm', design),
    readKept('sizeSet', sizes),
    keptPeople(),
  ]);
  const set = kept.ok ? kept.value : undefined;
  const there = set?.people ?? [];
  return {
    form: form.ok ? form.value : undefined,
    set,
    people: [...there, ...here.filter(({ name }) => !there.some((one) => one.name === name))],
  };
}

interface ChosenProps {
  readonly garment: GarmentView['garment'];
  readonly form: DesignForm;
  readonly kept: SizeSet;
  readonly people: readonly Person[];
}

function Chosen({ garment, form, kept, people }: ChosenProps) {
  const [set, setSet] = useState(kept);
  const [drafted, setDrafted] = useState<readonly DraftedSize[]>([]);
  const [told, tell] = useState('');
  const [isBehind, setBehind] = useState(false);
  // what is worked out is shown only where nothing was chosen anew meanwhile
  const turn = useRef(0);
  const there = useRef<HTMLElement>(null);
  const [asked, setAsked] = useState(0);
  // what she asked for may lie below the window: she is brought to it, and so is who hears it
  useEffect(() => {
    if (asked === 0) return;
    there.current?.focus({ preventScroll: true });
    there.current?.scrollIntoView();
  }, [asked]);
  const { table, sizes } = set;
  const hers = set.people.map(({ name }) => name);
  const put = (by: Partial<SizeSet>): SizeSet => {
    const now = { ...set, ...by };
    setSet(now);
    void keepSizes(garment.id, now);
    return now;
  };
  const change = (by: Partial<SizeSet>) => {
    put(by);
    turn.current += 1;
    setDrafted([]);
    tell('');
  };
  const work = async (now: SizeSet) => {
    const bodies = bodiesOf(now);
    if (bodies.length === 0) return tell(say('passOn.noSizes'));
    turn.current += 1;
    const mine = turn.current;
    setBehind(true);
    const onSize = (size: string) => mine === turn.current && tell(say('passOn.workingOut', { size }));
    const coloured = (size: WorkedSize) => inColours(garment, size);
    const worked = await inSizes(
      designOf(form),
      besideDraft(garment),
      bodies,
      onSize,
      now.adjusted,
      coloured,
    );
    if (mine !== turn.current) return;
    setDrafted(worked);
    setBehind(false);
    tell('');
  };
  return (
    <div class="pass-on in-sizes">
      <Shows what="in-sizes" />
      <div class="pass-on no-print">
        <p>{say('passOn.sizesFrom')}</p>
        <SelectField
          label={say('draft.whose')}
          value={table}
          options={bodyTableNames.map((value) => ({ value, label: saysName(value) }))}
          onChange={(value) =>
            change({
              table: value,
              sizes: usualSizes(value, form.person.table === value ? form.person.size : undefined),
            })
          }
        />
        <Ticks
          title={say('passOn.theSizes')}
          names={bodyTables[table].map(({ size }) => size)}
          on={sizes}
          onChange={(now) => change({ sizes: now })}
        />
        {people.length > 0 && (
          <Ticks
            title={say('passOn.people')}
            names={people.map(({ name }) => name)}
            on={hers}
            onChange={(now) => change({ people: people.filter(({ name }) => now.includes(name)) })}
          />
        )}
        <Button kind="main" onPress={() => void work(set).then(() => setAsked(asked + 1))}>
          {say('draft.workOutSizes')}
        </Button>
        <LiveRegion text={told} />
        {told !== '' && <p>{told}</p>}
      </div>
      {drafted.length > 0 && (
        <>
          <SizeTable drafted={drafted} there={there} />
          <Adjust
            set={set}
            drafted={drafted}
            design={designOf(form)}
            // what stands is left until it is worked out anew: who set a figure is not sent back to the top
            onChange={(adjusted) => void work(put({ adjusted }))}
          />
          {/* the text before a change is not kept for the one after it, nor printed */}
          <div class={isBehind ? 'pass-on no-print' : 'pass-on'} inert={isBehind} aria-busy={isBehind}>
            <Outcome name={garment.name} drafted={drafted} tell={tell} />
          </div>
        </>
      )}
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
