import { design, form } from '../../app/drafts/design/designer.ts';
import { fits } from '../../knit/garment/ease.ts';
import { type GarmentKind, garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { choose, drawn } from './choose.ts';
import { drawnGarment } from './drawn-choices.ts';
import { Tiles } from './tiles.tsx';
import { worded } from './worded.ts';

const kinds = Object.keys(garmentKinds) as readonly GarmentKind[];

const saysEase = (bodyMm: number, easeMm: number): string =>
  say('draft.fitSays', { body: saysLength(bodyMm), ease: saysLength(easeMm) });

/** What garment it is, and how it sits. */
export function Shape() {
  const now = form.value;
  const wished = design.value;
  if (!now || !wished) return null;
  const { kind, fit } = now.choices;
  const [body, ease] = [wished.body.chest, wished.ease.chest];
  return (
    <>
      <Tiles
        label={say('draft.kind')}
        value={kind}
        options={drawn(kinds, garmentKinds, drawnGarment)}
        onChange={(value) => choose({ kind: value })}
      />
      <Tiles
        label={say('draft.fit')}
        says={Number.isFinite(body + ease) ? saysEase(body, ease) : undefined}
        value={fit}
        options={worded(fits)}
        onChange={(value) => choose({ fit: value })}
      />
    </>
  );
}
