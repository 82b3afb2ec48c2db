import { useState } from 'preact/hooks';
import { beginLike, formLike } from '../../app/drafts/editor/another-like.ts';
import type { Begun } from '../../app/drafts/kept/begun.ts';
import { readOptionsOf, wholeText } from '../../app/drafts/pattern/read-garment.ts';
import { readAgain } from '../../app/drafts/pattern/reader.ts';
import { asPassedOn } from '../../app/garments/as-made.ts';
import type { GarmentView } from '../../app/state.ts';
import { isStriped } from '../../knit/yarn/stripes.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { say } from '../../words/say.ts';
import { AnotherSheet } from './another-sheet.tsx';

/** How another one begins: what is said of it before, where it is made, and what takes it there. */
interface Way {
  readonly help: string;
  readonly screen: 'newGarment' | 'read';
  readonly begin: (replace: boolean) => Promise<Begun>;
}

/** Another in another size, of a garment that has no design to be drafted anew: from its numbers, or from its text. */
export function AnotherLike({ view }: { readonly view: GarmentView }) {
  const [way, setWay] = useState<Way>();
  const isOver = Boolean(view.garment.yarns?.length) || isStriped(view.garment);
  return (
    <AnotherSheet
      open={way !== undefined}
      onOpen={() => setWay(wayOf(asPassedOn(view)))}
      onClose={() => setWay(undefined)}
      screen={way?.screen ?? 'newGarment'}
      beginLabel={say('record.likeBegin')}
      isReady={way !== undefined}
      begin={async (replace) => (way === undefined ? 'not kept' : way.begin(replace))}
      title={say('record.likeOther')}
      text={say('record.likeOtherText')}
    >
      <p>{way?.help}</p>
      {isOver && <p>{say(way?.screen === 'read' ? 'record.likeYarnNot' : 'record.likeYarn')}</p>}
      <p>{say('record.likeStays')}</p>
    </AnotherSheet>
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
