import { type Draft, openSections } from '../../app/in-hand/rework-draft.ts';
import type { InHand } from '../../app/state.ts';
import { landmarksOf } from '../../knit/piece/count/landmarks.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysLandmark } from '../../words/count.ts';
import { lengthUnit, saysLength } from '../../words/measures.ts';
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
    case 'first':
    case 'plain':
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

function RowsFields({ now, draft, onChange }: WishFieldsProps) {
  const sections = openSections(now);
  const one = sections.find(({ index }) => index === draft.section);
  const planned = one?.rows ?? 0;
  const rows = draft.rows ?? planned;
  const heightMm = rows * (now.part.cells[draft.section]?.height ?? 0);
  return (
    <>
      {sections.length > 1 && (
        <SelectField
          label={say('count.reworkSection')}
          value={String(draft.section)}
          options={sections.map(({ index, name }) => ({ value: String(index), label: name }))}
          onChange={(section) => onChange({ section: Number(section), rows: undefined })}
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
