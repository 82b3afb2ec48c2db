import { useState } from 'preact/hooks';
import { nextMake } from '../../app/in-hand/next-make.ts';
import { hrefTo } from '../../app/routes.ts';
import { garmentInHand, type InHand } from '../../app/state.ts';
import { readOr, store } from '../../app/store.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { LogEntry } from '../../progress/log.ts';
import { makeRecord } from '../../progress/make-record.ts';
import { sittings } from '../../progress/sittings.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { say } from '../../words/say.ts';
import { saysDuration } from '../../words/time.ts';
import { hrefToMake } from '../links.ts';
import { QuietLine } from '../quiet-line.tsx';
import { saysMake } from '../says-make.ts';
import { useFresh } from '../use-fresh.ts';

/** The last row is worked: what becomes of the stitches, and what is knitted next. */
export function PartEnd({ now, title }: { readonly now: InHand; readonly title: string }) {
  return (
    <section class="part-end">
      <p class="part-end-head">
        <Icon name="flag" size="l" />
        <strong>{say('partEnd.partDone', { part: title })}</strong>
      </p>
      <p class="part-end-work">{saysEnd(now.part)}</p>
      <Took now={now} />
      <Next now={now} />
      <QuietLine isEmpty={false} />
    </section>
  );
}

function saysEnd(part: PlannedPart): string {
  if (part.left === 0) return say('partEnd.endBoundOff');
  return say(part.end === 'split' ? 'partEnd.endSplit' : 'partEnd.endHold', { count: part.left });
}

/** What it took her, from its log: days, sittings, hours. */
function Took({ now }: { readonly now: InHand }) {
  const [entries, setEntries] = useState<readonly LogEntry[]>([]);
  const { garment } = now.place;
  useFresh(async () => setEntries(readOr(await (await store()).entriesOfGarment(garment)) ?? []), {
    garment,
  });
  const own = entries.filter(({ make }) => make === now.make);
  const { from, to, workedMs } = makeRecord(now.make, own);
  if (from === undefined || to === undefined) return null;
  const days = Math.floor(to / DAY_MS) - Math.floor(from / DAY_MS) + 1;
  const sat = sittings(own).filter(({ rows }) => rows > 0).length;
  const facts = [
    say('partEnd.tookRows', { count: now.place.total }),
    say('partEnd.tookSittings', { count: sat }),
    ...(days > 1 ? [say('partEnd.tookDays', { count: days })] : []),
    ...(workedMs === undefined ? [] : [saysDuration(workedMs)]),
  ];
  return <p>{facts.join(' · ')}</p>;
}

const DAY_MS = 24 * 3_600_000;

function Next({ now }: { readonly now: InHand }) {
  const view = garmentInHand.value;
  if (view?.garment.id !== now.place.garment) return null;
  const next = nextMake(view, now.place);
  const toGarment = (
    <Button icon="garment" wide href={hrefTo('garment', { garment: now.place.garment })}>
      {say('partEnd.toGarment')}
    </Button>
  );
  if (next === undefined) {
    return (
      <>
        <p class="part-end-work">{say('partEnd.allDone', { garment: view.garment.name })}</p>
        <Button kind="main" icon="onward" wide href={hrefTo('makingUp', { garment: now.place.garment })}>
          {say('partEnd.toMakingUp')}
        </Button>
        {toGarment}
      </>
    );
  }
  const what = saysMake(next.piece, next.part, next.place.make, next.recipe);
  const word = next.place.rows === 0 ? 'partEnd.beginNext' : 'partEnd.continueNext';
  return (
    <>
      <Button kind="main" icon="needle" wide href={hrefToMake(next.place.id)}>
        {say(word, { what })}
      </Button>
      {toGarment}
    </>
  );
}
