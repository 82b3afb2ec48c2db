import type { Yarn } from '../../knit/piece/garment.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { NumberField } from '../../ui/field/number-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Group } from '../../ui/group/group.tsx';
import { yarnToType, yarnTyped, yarnUnit } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import type { ChangeYarn } from './change-yarn.ts';

type NumberOf = 'grams' | 'metres' | 'balls' | 'strands';

/** What stands on the ball band, and how many balls there are. */
export function BandFields({
  garment,
  change,
}: {
  readonly garment: GarmentRecord;
  readonly change: ChangeYarn;
}) {
  const yarn: Yarn = garment.yarns?.[0] ?? { name: '' };
  const set = (edit: (yarn: Yarn) => Yarn) =>
    change((now) => {
      const [first = { name: '' }, ...others] = now.yarns ?? [];
      return { ...now, yarns: [edit(first), ...others] };
    });
  const text = (field: 'name' | 'colour' | 'dyeLot', label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      maxLength={200}
      value={yarn[field] ?? ''}
      onChange={(typed) => set((now) => ({ ...now, [field]: typed }))}
    />
  );
  const number = (field: NumberOf, label: string, unit?: string, least = 0) => (
    <NumberField
      label={label}
      unit={unit}
      bare
      decimals={field === 'grams'}
      min={least}
      value={yarn[field]}
      onChange={(value) => set((now) => withNumber(now, field, value, least))}
    />
  );
  return (
    <Group title={say('yarn.band')} says={[yarn.name, yarn.colour].filter(Boolean).join(', ')}>
      {text('name', say('yarn.name'))}
      <div class="yarn-pair">
        {text('colour', say('yarn.colour'))}
        {text('dyeLot', say('yarn.dyeLot'), say('yarn.dyeLotHint'))}
        {number('grams', say('yarn.grams'), say('yarn.unitGrams'))}
        <NumberField
          label={say('yarn.metres')}
          unit={yarnUnit()}
          bare
          decimals
          min={0}
          value={yarn.metres === undefined ? undefined : yarnToType(yarn.metres)}
          onChange={(value) =>
            set((now) => withNumber(now, 'metres', value === undefined ? undefined : yarnTyped(value), 0))
          }
        />
        {number('balls', say('yarn.balls'))}
        {number('strands', say('yarn.strands'), undefined, 1)}
      </div>
    </Group>
  );
}

/** A field that was emptied, or holds less than can be, leaves the yarn without that figure. */
function withNumber(yarn: Yarn, field: NumberOf, value: number | undefined, least: number): Yarn {
  const { [field]: _before, ...rest } = yarn;
  return value === undefined || value < least ? rest : { ...rest, [field]: value };
}
