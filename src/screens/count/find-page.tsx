import { useState } from 'preact/hooks';
import { knownFrom } from '../../app/in-hand/known.ts';
import { landmarksOf } from '../../knit/piece/count/landmarks.ts';
import { findPlace } from '../../knit/piece/find-place.ts';
import { ridgeAt, ridgedFrom } from '../../knit/piece/ridges.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysLandmark } from '../../words/count.ts';
import { lengthUnit } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import type { CountPageProps } from './count-page.ts';
import { FoundBar, FoundRows } from './found-rows.tsx';
import { nothingSeen, observationsOf, type SeenOnNeedle } from './seen-on-needle.ts';

/** From what she sees on the needle to the rows that it can be. */
export function FindPage({ now, entries }: CountPageProps) {
  const { part, place } = now;
  const { lifelines } = knownFrom(entries, part);
  const marks = landmarksOf(part, part.rows.length, lifelines);
  // over a rib ridges are counted from its top: from the start of the part they would be asked for as rows
  const [seen, setSeen] = useState<SeenOnNeedle>(() => {
    const rows = marks.map(({ row }) => row);
    return { ...nothingSeen, landmark: ridgedFrom(part, rows, place.rows) ?? nothingSeen.landmark };
  });
  const set = (change: Partial<SeenOnNeedle>) => setSeen({ ...seen, ...change });
  const observations = observationsOf(seen);
  const found = findPlace(
    part,
    observations.map(({ observation }) => observation),
    place.rows,
  );
  const isShaped = part.rows.some((row) => row.shaping.some(({ kind }) => kind === 'edge'));
  const ridged = ridgeAt(part, seen.landmark + 1) !== undefined;
  const counted = (
    <>
      <SelectField
        label={say('count.seeFrom')}
        value={String(seen.landmark)}
        options={marks
          .map((mark, i) => ({ value: String(i), label: saysLandmark(mark, part) }))
          .map(atRow(marks))}
        onChange={(row) => set({ landmark: Number(row), ridges: undefined })}
      />
      {ridged && (
        <NumberField
          label={say('count.seeRidges')}
          min={0}
          value={seen.ridges}
          onChange={(ridges) => set({ ridges })}
        />
      )}
      <NumberField
        label={say(ridged ? 'count.seeRowsOfRidges' : 'count.seeRows')}
        min={0}
        value={seen.rows}
        onChange={(rows) => set({ rows })}
      />
    </>
  );
  return (
    <>
      <p>{say('count.findIntro')}</p>
      {ridged && counted}
      <NumberField
        label={say('count.seeStitches')}
        min={0}
        value={seen.stitches}
        onChange={(stitches) => set({ stitches })}
      />
      <Choice
        label={say('count.seeFacing')}
        value={seen.facing}
        options={[
          { value: 'RS', label: say('lap.facesRS') },
          { value: 'WS', label: say('lap.facesWS') },
          { value: '', label: say('count.dontKnow') },
        ]}
        onChange={(facing) => set({ facing })}
      />
      <Choice
        label={say('count.seeYarn')}
        value={seen.yarn}
        asItLies
        options={[
          { value: 'left', label: say('count.yarnLeft') },
          { value: 'right', label: say('count.yarnRight') },
          { value: '', label: say('count.dontKnow') },
        ]}
        onChange={(yarn) => set({ yarn })}
      />
      {!ridged && counted}
      {isShaped && (
        <NumberField
          label={say('count.seeShaping')}
          min={0}
          value={seen.shaping}
          onChange={(shaping) => set({ shaping })}
        />
      )}
      <NumberField
        label={say('count.seeHeight')}
        min={0}
        decimals
        unit={lengthUnit()}
        value={seen.height}
        onChange={(height) => set({ height })}
      />
      <FoundRows now={now} found={found} observations={observations} />
      {observations.length > 0 && <FoundBar rows={found.rows} />}
    </>
  );
}

/** Two landmarks may lie in one row; the row is what counts. */
const atRow =
  (marks: readonly { readonly row: number }[]) =>
  ({ value, label }: { value: string; label: string }) => ({
    value: String(marks[Number(value)]?.row ?? 0),
    label,
  });
