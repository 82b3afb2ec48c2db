import { computed } from '@preact/signals';
import { hasTension, nextWithBefore, partAsItStands } from '../../app/in-hand/before-row.ts';
import { isLooking, toWork } from '../../app/in-hand/reading.ts';
import { nextShaping } from '../../app/in-hand/row-now.ts';
import { lengthsAt, lengthTo } from '../../knit/piece/before-row.ts';
import { useLate } from '../../pace/late.tsx';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { saysSection } from './says-place.ts';

interface Figure {
  readonly what: string;
  readonly mm: number;
}

/** How long the work is up to the row that is read, and how far it is to what comes; none without a measured tension. */
const figures = computed((): readonly Figure[] => {
  const read = toWork.value;
  const part = partAsItStands();
  if (!read || !part || !hasTension()) return [];
  const { row } = read;
  const worked = row.n - 1;
  const { soFar, toGo } = lengthsAt(part, worked);
  const section = saysSection(part, row);
  const stops = [nextShaping(part, worked)?.n, nextWithBefore(part, row.n)?.n].filter((n) => n !== undefined);
  const next = Math.min(...stops);
  const toNext = stops.length > 0 ? lengthTo(part, worked, next) : toGo;
  return [
    { what: say(isLooking.value ? 'lap.atRow' : 'lap.soFar'), mm: soFar },
    { what: section === '' ? say('lap.toEnd') : say('lap.toEndOf', { section }), mm: toGo },
    // what comes at the end of the section is as far as that, and said once
    ...(toNext === toGo ? [] : [{ what: say('lap.toRow', { row: next }), mm: toNext }]),
  ];
});

/** Beside the rows, quiet: she was taught 'until it measures 29 cm'. */
export function LengthsBeside() {
  const shown = useLate(figures, 'lengths') ?? [];
  if (shown.length === 0) return null;
  return (
    <dl class="lengths">
      {shown.map(({ what, mm }) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>{saysLength(mm)}</dd>
        </div>
      ))}
    </dl>
  );
}
