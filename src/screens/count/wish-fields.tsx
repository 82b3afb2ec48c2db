import { type Draft, heightsAt, openSections, rhythmAhead } from '../../app/in-hand/rework-draft.ts';
import type { InHand } from '../../app/state.ts';
import { fabricNames } from '../../knit/fabric.ts';
import { MOST_ROWS, MOST_STITCHES } from '../../knit/piece/check-recipe.ts';
import { landmarksOf } from '../../knit/piece/count/landmarks.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysLandmark, saysNeeded } from '../../words/count.ts';
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
          min={-MOST_NECK}
          max={MOST_NECK}
          needs={saysNeeded(-MOST_NECK, MOST_NECK)}
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

/** Rows by which a neck may be moved; needle, mm, and rows from one shaping to the next: more is a slip of the finger. */
const MOST_NECK = 200;
const MOST_NEEDLE = 50;
const MOST_EVERY = 200;

function AcceptFields({ draft, onChange }: WishFieldsProps) {
  return (
    <>
      <NumberField
        label={say('count.reworkCount')}
        min={1}
        max={MOST_STITCHES}
        needs={saysNeeded(1, MOST_STITCHES)}
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
  const { least, most } = heightsAt(now, draft);
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
        min={lengthToType(least)}
        max={lengthToType(most)}
        decimals
        unit={lengthUnit()}
        needs={saysNeeded(least, most, saysLength)}
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
        max={MOST_NEEDLE}
        needs={saysNeeded(1, MOST_NEEDLE)}
        value={shown(draft.needle, planned?.needle)}
        onChange={(needle) => onChange({ needle: changed(needle, planned?.needle) })}
      />
      {rhythm !== undefined && (
        <NumberField
          label={say('count.wishEvery')}
          min={1}
          max={MOST_EVERY}
          needs={saysNeeded(1, MOST_EVERY)}
          value={shown(draft.every, rhythm)}
          onChange={(every) => onChange({ every: changed(every, rhythm) })}
        />
      )}
    </>
  );
}

/** What stands in a field: as planned until she has typed, and nothing where that is no number. */
const shown = (typed: number | null | undefined, planned: number | undefined): number | undefined =>
  typed === undefined ? planned : (typed ?? undefined);

const changed = (typed: number | undefined, planned: number | undefined): number | null | undefined =>
  typed === planned ? undefined : (typed ?? null);

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
  const rows = shown(draft.rows, planned);
  const rowMm = now.part.cells[draft.section]?.height ?? 0;
  const least = Math.max(1, now.place.rows + 1 - (now.part.sections[draft.section]?.first ?? 1));
  const hinted = rows ?? planned;
  return (
    <>
      <WhichSection now={now} draft={draft} onChange={onChange} />
      {rowMm > 0 && (
        <NumberField
          label={say('count.reworkLength')}
          unit={lengthUnit()}
          decimals
          says={saysTyped}
          min={lengthToType(least * rowMm)}
          max={lengthToType(MOST_ROWS * rowMm)}
          needs={saysNeeded(least * rowMm, MOST_ROWS * rowMm, saysLength)}
          value={rows && lengthToType(rows * rowMm)}
          onChange={(length) =>
            onChange({ rows: length === undefined ? null : Math.round(lengthTyped(length) / rowMm) })
          }
        />
      )}
      <NumberField
        label={say('count.reworkRows')}
        hint={say('count.reworkRowsHint', {
          rows: planned,
          length: `${saysLength(hinted * rowMm)}${saysRidgesOf(now.part, draft.section, hinted)}`,
        })}
        min={least}
        max={MOST_ROWS}
        needs={saysNeeded(least, MOST_ROWS)}
        step={2}
        value={rows}
        onChange={(typed) => onChange({ rows: typed ?? null })}
      />
    </>
  );
}
