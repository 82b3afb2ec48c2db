import { useEffect, useRef } from 'preact/hooks';
import { makeInHand } from '../../app/in-hand/make-in-hand.ts';
import { nextMake } from '../../app/in-hand/next-make.ts';
import { hrefTo } from '../../app/routes.ts';
import { garmentInHand, type InHand, storedRows } from '../../app/state.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { PlaceRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import { QuietLine } from '../quiet-line.tsx';
import { saysMake } from '../says-make.ts';
import { TookLine } from '../took-line.tsx';
import { PlaceMap } from './place-map.tsx';

/** The last row is worked: what was made, filled, what becomes of its stitches, what it took, and what is knitted next. */
export function PartEnd({ now, title }: { readonly now: InHand; readonly title: string }) {
  const box = useRef<HTMLElement>(null);
  // the pad, and the focus with it, is gone with the last row: a reader goes on from here
  useEffect(() => {
    const isLost = document.activeElement === document.body;
    if (isLost && storedRows.peek() > 0) box.current?.focus({ preventScroll: true });
  }, []);
  const places = finishedWith(now);
  const head = places.length > 1 ? saysPiece(now) : saysHead(now.part, title);
  return (
    <section class="part-end" ref={box} tabIndex={-1} aria-label={head}>
      <Shows what="part-end" />
      <p class="part-end-head">
        <Icon name="check" size="l" />
        <strong>{head}</strong>
      </p>
      <PlaceMap now={now} />
      <p class="part-end-work">{saysEnd(now.part)}</p>
      <TookLine garment={now.place.garment} places={places} />
      <Next now={now} />
      <QuietLine isEmpty={false} />
    </section>
  );
}

/** What is finished with this part: it alone, or with the last one all of its piece; of a copy once the garment is read. */
function finishedWith({ place }: InHand): readonly PlaceRecord[] {
  const { places = [] } = makeInHand() ?? {};
  const all = places.map((one) => (one.id === place.id ? place : one));
  return all.length > 0 && all.every(({ rows, total }) => rows >= total) ? all : [place];
}

function saysPiece({ part, place }: InHand): string {
  const recipe = makeInHand()?.recipe;
  return say('partEnd.partDone', { part: saysMake(part.piece, '', place.make, recipe ?? place.make) });
}

/** A part without rows is not knitted: a neck whose middle rests for its band. */
function saysHead({ end, rows }: PlannedPart, part: string): string {
  if (end === 'split') return say('partEnd.partDivides', { part });
  return say(end === 'hold' && rows.length === 0 ? 'partEnd.partRests' : 'partEnd.partDone', { part });
}

function saysEnd(part: PlannedPart): string {
  if (part.left === 0) return say('partEnd.endBoundOff');
  return say(part.end === 'split' ? 'partEnd.endSplit' : 'partEnd.endHold', { count: part.left });
}

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
