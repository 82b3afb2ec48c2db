import { useState } from 'preact/hooks';
import { design, form } from '../../app/drafts/design/designer.ts';
import { readSwatch } from '../../app/drafts/design/form.ts';
import { type DraftedSize, inSizes } from '../../app/garments/in-sizes.ts';
import { type BodyTable, bodyTableNames, bodyTables } from '../../knit/garment/bodies.ts';
import type { Design } from '../../knit/garment/design.ts';
import { Button } from '../../ui/button/button.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { say } from '../../words/say.ts';
import { SizeTable } from '../size-table.tsx';
import { Fold } from './fold.tsx';
import { saysName } from './says-name.ts';

/** The same garment in the sizes of a table. Worked out when she asks: it drafts and plans the garment for each. */
export function Sizes() {
  const [table, setTable] = useState<BodyTable>(form.value?.person.table ?? 'women');
  const [made, setMade] = useState<{ readonly of: Design; readonly sizes: readonly DraftedSize[] }>();
  const wished = design.value;
  if (!wished) return null;
  const work = async () => {
    const swatches = form.value?.swatches.flatMap((swatch) => readSwatch(swatch) ?? []) ?? [];
    const rest = { name: form.value?.name ?? '', swatches };
    setMade({ of: wished, sizes: await inSizes(wished, rest, bodyTables[table], () => {}) });
  };
  return (
    <Fold title={say('draft.sizes')}>
      <p class="quiet">{say('draft.sizesHint')}</p>
      <SelectField
        label={say('draft.size')}
        value={table}
        options={bodyTableNames.map((value) => ({ value, label: saysName(value) }))}
        onChange={(value) => {
          setTable(value);
          setMade(undefined);
        }}
      />
      <Button onPress={() => void work()}>{say('draft.workOutSizes')}</Button>
      {made?.of === wished && <SizeTable drafted={made.sizes} />}
    </Fold>
  );
}
