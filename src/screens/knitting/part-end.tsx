import { nextMake } from '../../app/next-make.ts';
import { hrefTo } from '../../app/routes.ts';
import { garmentInHand, type InHand } from '../../app/state.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';

/** The last row is worked: what becomes of the stitches, and what is knitted next. */
export function PartEnd({ now, title }: { readonly now: InHand; readonly title: string }) {
  return (
    <section class="part-end">
      <p class="part-end-head">
        <Icon name="flag" size="l" />
        <strong>{say('knitting.partDone', { part: title })}</strong>
      </p>
      <p class="part-end-work">{saysEnd(now.part)}</p>
      <Next now={now} />
    </section>
  );
}

function saysEnd(part: PlannedPart): string {
  if (part.left === 0) return say('knitting.endBoundOff');
  return say(part.end === 'split' ? 'knitting.endSplit' : 'knitting.endHold', { count: part.left });
}

function Next({ now }: { readonly now: InHand }) {
  const view = garmentInHand.value;
  if (view?.garment.id !== now.place.garment) return null;
  const next = nextMake(view, now.place);
  const toGarment = (
    <Button icon="garment" wide href={hrefTo('garment', { garment: now.place.garment })}>
      {say('knitting.toGarment')}
    </Button>
  );
  if (next === undefined) {
    return (
      <>
        <p class="part-end-work">{say('knitting.allDone', { garment: view.garment.name })}</p>
        {toGarment}
      </>
    );
  }
  const what = saysMake(next.piece, next.part, next.place.make, next.makes);
  const word = next.place.rows === 0 ? 'knitting.beginNext' : 'knitting.continueNext';
  return (
    <>
      <Button kind="main" icon="needle" wide href={hrefToMake(next.place.id)}>
        {say(word, { what })}
      </Button>
      {toGarment}
    </>
  );
}
