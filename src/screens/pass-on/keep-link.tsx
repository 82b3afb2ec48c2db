import { useState } from 'preact/hooks';
import { keepGarment } from '../../app/garments/keep-garment.ts';
import { goInstead } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import type { Fault, Result } from '../../knit/fault.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { Button } from '../../ui/button/button.tsx';
import { say } from '../../words/say.ts';
import { Cannot } from './cannot.tsx';

/** Puts it in the workbasket, or says why it cannot be. */
export function Keep({ mine }: { readonly mine: Result<PassedOn> }) {
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [busy, setBusy] = useState(false);
  const keep = async () => {
    if (!mine.ok) return;
    setBusy(true);
    const kept = await keepGarment(mine.value);
    setBusy(false);
    if (kept.ok) goInstead(hrefTo('garment', { garment: kept.value }));
    else setFaults(kept.faults);
  };
  return (
    <>
      {!mine.ok && <Cannot faults={mine.faults} />}
      {faults.length > 0 && <Cannot faults={faults} />}
      <div class="pass-on-keep">
        <Button kind="main" wide disabled={!mine.ok || busy} onPress={() => void keep()}>
          {say(busy ? 'passOn.keeping' : 'passOn.keep')}
        </Button>
      </div>
    </>
  );
}

const firstCastOn = (garment: Garment): number => {
  const from = garment.pieces[0]?.parts[0]?.from;
  return from && 'castOn' in from ? from.castOn : 0;
};

export function saysChange(garment: Garment, mine: Garment): string {
  const was = firstCastOn(garment);
  const stitches = firstCastOn(mine);
  const same = mine.pieces.every((piece, i) => piece === garment.pieces[i]);
  if (same) return say('passOn.asItIs');
  return was === stitches
    ? say('passOn.changedBehind', { stitches })
    : say('passOn.changed', { stitches, was });
}
