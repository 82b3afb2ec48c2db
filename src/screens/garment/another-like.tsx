import { useState } from 'preact/hooks';
import { beginLike, formLike } from '../../app/drafts/editor/another-like.ts';
import type { Begun } from '../../app/drafts/kept/begun.ts';
import { readOptionsOf, wholeText } from '../../app/drafts/pattern/read-garment.ts';
import { readAgain } from '../../app/drafts/pattern/reader.ts';
import { asPassedOn } from '../../app/garments/as-made.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import type { GarmentView } from '../../app/state.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';
import { OtherBegun } from '../record/other-begun.tsx';

/** How another one begins: what is said of it before, where it is made, and what takes it there. */
interface Way {
  readonly help: string;
  readonly screen: 'newGarment' | 'read';
  readonly begin: (replace: boolean) => Promise<Begun>;
}

/** Another in another size, of a garment that has no design to be drafted anew: from its numbers, or from its text. */
export function AnotherLike({ view }: { readonly view: GarmentView }) {
  const [way, setWay] = useState<Way>();
  const [outcome, setOutcome] = useState<Begun>();
  const { stripes, restriped } = view.garment;
  const isStriped = Boolean(stripes?.length || restriped?.length);
  const take = async (replace: boolean) => {
    if (way === undefined) return;
    const done = await way.begin(replace);
    if (done === 'taken') goTo(hrefTo(way.screen));
    else setOutcome(done);
  };
  const isOther = outcome === 'another is begun';
  const close = () => {
    setWay(undefined);
    setOutcome(undefined);
  };
  return (
    <>
      <Button icon="plus" onPress={() => setWay(wayOf(asPassedOn(view)))}>
        {say('garment.anotherSize')}
      </Button>
      <OtherBegun
        open={isOther}
        title={say('record.likeOther')}
        text={say('record.likeOtherText')}
        href={hrefTo(way?.screen ?? 'newGarment')}
        onClose={close}
        onReplace={() => void take(true)}
      />
      <Sheet
        open={way !== undefined && !isOther}
        title={say('garment.anotherSize')}
        onClose={close}
        actions={
          <Button wide kind="main" onPress={() => void take(false)}>
            {say('record.likeBegin')}
          </Button>
        }
      >
        <p>{way?.help}</p>
        {isStriped && <p>{say('record.likeStripes')}</p>}
        <p>{say('record.likeStays')}</p>
        {outcome === 'not kept' && (
          <Notice kind="fault" live>
            {say('record.designNotKept')}
          </Notice>
        )}
      </Sheet>
    </>
  );
}

function wayOf(garment: GarmentRecord): Way {
  const name = say('record.againName', { garment: garment.name });
  const text = wholeText(garment);
  if (text !== undefined) {
    const begin = async (replace: boolean) => {
      const { size = 0, gauge = {} } = (await readOptionsOf(garment)) ?? {};
      return readAgain({ version: 1, name, text, size, gauge }, replace);
    };
    return { help: say('record.likeText'), screen: 'read', begin };
  }
  const form = formLike(garment, name);
  return {
    help: say(form.shape ? 'record.likeStraight' : 'record.likePieces'),
    screen: 'newGarment',
    begin: (replace) => beginLike(form, replace),
  };
}
