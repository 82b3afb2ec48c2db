import { keyInHand, makeInHand } from '../../app/in-hand/make-in-hand.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { PieceThumb } from '../../ui/panel-map/piece-thumb.tsx';
import { say } from '../../words/say.ts';

export interface SmallMapProps {
  readonly part: PlannedPart;
  readonly worked: number;
  readonly onMap: () => void;
}

/** The place at a glance, beside the count; a touch goes down to the large drawing. */
export function SmallMap({ part, worked, onMap }: SmallMapProps) {
  const make = makeInHand();
  const parts = make?.parts ?? [part];
  const rows = make
    ? make.places.map((place) => (place.id === keyInHand.value ? worked : place.rows))
    : [worked];
  return (
    <button class="small-map" type="button" aria-label={say('knitting.map')} onClick={onMap}>
      <PieceThumb parts={parts} worked={rows} />
    </button>
  );
}
