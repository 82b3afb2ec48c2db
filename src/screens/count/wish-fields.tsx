import { type Draft, openSections, rhythmAhead } from '../../app/in-hand/rework-draft.ts';
import type { InHand } from '../../app/state.ts';
import { fabricNames } from '../../knit/fabric.ts';
import { landmarksOf } from '../../knit/piece/count/landmarks.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysLandmark } from '../../words/count.ts';
import { saysFabric } from '../../words/craft.ts';
import { lengthToType, lengthTyped, lengthUnit, saysLength, saysTyped } from '../../words/measures.ts';
import { saysRidgesOf } from '../../words/ridge.ts';
import { say } from '../../words/say.ts';

interface WishFieldsProps {
  readonly now: InHand;
  readonly draft: Draft;
  readonly onChange: (change: Partial<Draft>) => void;
}

/** What has to be told for the wish that is chosen. */
export function WishFields(props: WishFieldsProps) {
  switch (props.draft.kind) {
    case 'accept':
      return <AcceptFields {...props} />;
    case 'measured':
      return <MeasuredFields {...props} />;
    case 'rows':
      return <RowsFields {...props} />;
    case 'section':
      return <SectionFields {...props} />;
    case 'neck':
      return (
        <NumberField
          label={say('count.reworkNeck')}
          signed
          step={2}
          min={-200}
          max={200}
          value={props.draft.neck}
          onChange={(neck) => props.onChange({ neck })}
        />
      );
    case 'shoulder':
    case 'stripes':
    case 'first':
    case 'plain':
    case undefined:
      return null;
  }
}

function AcceptFields({ draft, onChange }: WishFieldsProps) {
  return (
    <>
      <NumberField
        label={say('count.reworkCount')}
        min={1}
        value={draft.stitches}
        onChange={(stitches) => onChange({ stitches })}
      />
      <Choice
        label={say('count.reworkMissing')}
        value={draft.missing}
        options={[
          { value: 'right', label: say('count.missingRight') },
          { value: 'left', label: say('count.missingLeft') },
          { value: '', label: say('count.missingBoth') },
        ]}
        onChange={(missing) => onChange({ missing })}
      />
    </>
  );
}

function MeasuredFields({ now, draft, onChange }: WishFieldsProps) {
  const marks = landmarksOf(now.part, now.place.rows - 1);
  return (
    <>
      <SelectField
        label={say('count.seeFrom')}
        value={String(draft.above)}
        options={marks.map((mark) => ({ value: String(mark.row), label: saysLandmark(mark, now.part) }))}
        onChange={(row) => onChange({ above: Number(row) })}
      />
      <NumberField
        label={say('count.reworkHeight')}
        min={0}
        decimals
        unit={lengthUnit()}
        value={draft.height}
        onChange={(height) => onChange({ height })}
      />
    </>
  );
}

/** What is not touched stays as it is planned. */
function SectionFields({ now, draft, onChange }: WishFieldsProps) {
  const planned = now.part.sections[draft.section];
  const rhythm = rhythmAhead(now, draft.section);
  return (
    <>
      <WhichSection
        now={now}
        draft={draft}
        onChange={(change) => onChange({ ...change, fabric: undefined, needle: undefined, every: undefined })}
      />
      <SelectField
        label={say('count.wishFabric')}
        value={draft.fabric ?? planned?.fabric ?? 'stocking'}
        options={fabricNames.map((value) => ({ value, label: saysFabric(value) }))}
        onChange={(fabric) => onChange({ fabric: fabric === planned?.fabric ? undefined : fabric })}
      />
      <NumberField
        label={say('count.wishNeedle')}
        decimals
        min={1}
        step={0.25}
        value={draft.needle ?? planned?.needle}
        onChange={(needle) => onChange({ needle: needle === planned?.needle ? undefined : needle })}
      />
      {rhythm !== undefined && (
        <NumberField
          label={say('count.wishEvery')}
          min={1}
          value={draft.every ?? rhythm}
          onChange={(every) => onChange({ every: every === rhythm ? undefined : every })}
        />
      )}
    </>
  );
}

function WhichSection({ now, draft, onChange }: WishFieldsProps) {
  const sections = openSections(now);
  if (sections.length < 2) return null;
  return (
    <SelectField
      label={say('count.reworkSection')}
      value={String(draft.section)}
      options={sections.map(({ index, name }) => ({ value: String(index), label: name }))}
      onChange={(section) => onChange({ section: Number(section), rows: undefined })}
    />
  );
}

function RowsFields({ now, draft, onChange }: WishFieldsProps) {
  const sections = openSections(now);
  const one = sections.find(({ index }) => index === draft.section);
  const planned = one?.rows ?? 0;
  const rows = draft.rows ?? planned;
  const rowMm = now.part.cells[draft.section]?.height ?? 0;
  const heightMm = rows * rowMm;
  return (
    <>
      <WhichSection now={now} draft={draft} onChange={onChange} />
      {rowMm > 0 && (
        <NumberField
          label={say('count.reworkLength')}
          unit={lengthUnit()}
          decimals
          says={saysTyped}
          min={0}
          value={lengthToType(rows * rowMm)}
          onChange={(length) =>
            onChange({ rows: length === undefined ? undefined : Math.round(lengthTyped(length) / rowMm) })
          }
        />
      )}
      <NumberField
        label={say('count.reworkRows')}
        hint={say('count.reworkRowsHint', {
          rows: planned,
          length: `${saysLength(heightMm)}${saysRidgesOf(now.part, draft.section, rows)}`,
        })}
        min={1}
        step={2}
        value={rows}
        onChange={(typed) => onChange({ rows: typed })}
      />
    </>
  );
}
