import { useEffect, useMemo, useState } from 'preact/hooks';
import { setByHand } from '../../app/drafts/design/draft-again.ts';
import { type DesignForm, designOf } from '../../app/drafts/design/form.ts';
import { fitPassed, isChanged } from '../../app/garments/fit-passed.ts';
import { type DraftedSize, inSizes } from '../../app/garments/in-sizes.ts';
import { bodiesOf, usualSet } from '../../app/garments/size-set.ts';
import type { Adjustment } from '../../knit/garment/adjust.ts';
import { bodyTables } from '../../knit/garment/bodies.ts';
import type { Body } from '../../knit/garment/design.ts';
import type { Gauge } from '../../knit/gauge.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { lengthToType, lengthTyped, lengthUnit, saysLength, saysTyped } from '../../words/measures.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { bodyMeasures } from '../body-measures.ts';
import { saysName } from '../draft/says-name.ts';
import { SizeTable } from '../size-table.tsx';
import type { Designed } from './designed.ts';
import { HerSwatch } from './her-swatch.tsx';
import { Keep, saysChange } from './keep-link.tsx';
import { saysFigure } from './says-figure.ts';

const AS_PLANNED = '';
const OWN = 'own';

type Whose = { readonly person: DesignForm['person']; readonly body: Body } | undefined;

interface Props {
  readonly passed: PassedOn;
  readonly designed: Designed;
  /** what it comes to in her size and gauge: that is drawn */
  readonly onMade: (garment: PassedOn) => void;
}

/** Her size and her swatch: the garment is drafted again by the same rules. */
export function Fit({ passed, designed: { form, set, people }, onMade }: Props) {
  const table = set?.table ?? form.person.table ?? 'women';
  const asked = passed.pieces.find(({ gauge }) => gauge)?.gauge ?? { stitches: 0, rows: 0 };
  const [who, setWho] = useState(AS_PLANNED);
  const [own, setOwn] = useState(form.body);
  const [gauge, setGauge] = useState<Partial<Gauge>>(asked);
  const whose = useMemo((): Whose => {
    if (who === OWN) return { person: {}, body: own };
    const person = people.find(({ name }) => who === `person ${name}`);
    if (person) return { person: { name: person.name }, body: person.body };
    const sized = bodyTables[table].find(({ size }) => who === `size ${size}`);
    return sized && { person: { table, size: sized.size }, body: sized.body };
  }, [who, own, people, table]);
  const made = useMemo(
    () => fitPassed(passed, { form, set, asked, gauge, who: whose }, saysName),
    [passed, form, set, asked, gauge, whose],
  );
  useEffect(() => onMade(made.ok ? made.value.garment : passed), [made, passed, onMade]);
  const changed = useMemo(() => isChanged(passed, form), [passed, form]);
  return (
    <>
      <FinishedSizes passed={passed} form={form} set={set ?? usualSet(form)} />
      <Card label={say('passOn.yourSize')}>
        <h2>{say('passOn.yourSize')}</h2>
        <SelectField
          label={say('draft.whose')}
          value={who}
          options={[
            {
              value: AS_PLANNED,
              label: [say('passOn.asPlanned'), form.person.size].filter(Boolean).join(' · '),
            },
            ...people.map(({ name }) => ({ value: `person ${name}`, label: name })),
            ...bodyTables[table].map(({ size }) => ({
              value: `size ${size}`,
              label: say('draft.fromTable', { table: saysName(table), size }),
            })),
            { value: OWN, label: say('draft.ownMeasures') },
          ]}
          onChange={setWho}
        />
        {who === OWN &&
          bodyMeasures.map(([name, label, hint]) => (
            <NumberField
              key={name}
              label={say(label)}
              hint={hint && say(hint)}
              value={Number.isFinite(own[name]) ? lengthToType(own[name]) : undefined}
              unit={lengthUnit()}
              says={saysTyped}
              decimals
              bare
              onChange={(v) => setOwn({ ...own, [name]: v === undefined ? Number.NaN : lengthTyped(v) })}
            />
          ))}
        {changed && <p>{say('passOn.changedByHand')}</p>}
      </Card>
      <HerSwatch
        asked={asked}
        gauge={gauge}
        onChange={setGauge}
        says={made.ok ? saysChange(passed, made.value.garment) : undefined}
      />
      {made.ok && made.value.worked && (
        <SizeTable
          drafted={[{ size: whose?.person.size ?? '', worked: { ok: true, value: made.value.worked } }]}
        />
      )}
      {made.ok && (
        <div>
          <Told
            key="kept"
            line="passOn.keptFigures"
            of={[...made.value.kept, ...setByHand(form, designOf(form))]}
          />
          <Told key="dropped" line="passOn.droppedFigures" of={made.value.dropped} />
        </div>
      )}
      <Keep mine={made.ok ? { ok: true, value: made.value.garment } : made} />
    </>
  );
}

const Told = ({
  line,
  of,
}: {
  readonly line: 'passOn.keptFigures' | 'passOn.droppedFigures';
  readonly of: readonly Adjustment[];
}) =>
  of.length === 0 ? null : (
    <p>{say(line, { list: saysList(of.map(({ path, mm }) => `${saysFigure(path)} ${saysLength(mm)}`)) })}</p>
  );

interface SizesProps {
  readonly passed: PassedOn;
  readonly form: DesignForm;
  readonly set: NonNullable<Designed['set']>;
}

/** Finished measures of the sizes that its maker passed it on in; worked out when they are asked for. */
function FinishedSizes({ passed, form, set }: SizesProps) {
  const [drafted, setDrafted] = useState<readonly DraftedSize[]>([]);
  const work = async () => {
    const { pieces: _drafted, joints: _stated, byHand: _sewn, ...rest } = passed;
    setDrafted(await inSizes(designOf(form), rest, bodiesOf(set), () => {}, set.adjusted));
  };
  return drafted.length > 0 ? (
    <SizeTable drafted={drafted} />
  ) : (
    <Button onPress={() => void work()}>{say('passOn.finishedSizes')}</Button>
  );
}
