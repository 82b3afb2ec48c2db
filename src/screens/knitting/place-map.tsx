import { useMemo } from 'preact/hooks';
import { openGarmentInHand } from '../../app/garments/open-garments.ts';
import { lookAtRow } from '../../app/in-hand/knit.ts';
import { makeInHand } from '../../app/in-hand/make-in-hand.ts';
import { goTo } from '../../app/navigate.ts';
import type { MakeView, PieceView } from '../../app/state.ts';
import { garmentInHand, type InHand, looking } from '../../app/state.ts';
import { coloursOf, isStriped } from '../../knit/yarn/stripes.ts';
import { PanelMap, type RowPlace } from '../../ui/panel-map/panel-map.tsx';
import { say } from '../../words/say.ts';
import { StripesDrawn } from '../count/stripes-drawn.tsx';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';
import { useFresh } from '../use-fresh.ts';

/**
 * The piece drawn to scale with the place in it; a row touched is read. The other copies stand beside it. With it comes
 * the rest of the garment: not before the row is on the screen.
 */
export function PlaceMap({ now }: { readonly now: InHand }) {
  const { garment } = now.place;
  useFresh(() => openGarmentInHand(garment), { garment, own: now.make });
  const make = makeInHand();
  const current = make ? make.places.findIndex((place) => place.id === now.make) : 0;
  const parts = make?.parts ?? [now.part];
  const piece = garmentInHand.value?.pieces.find(({ id }) => id === now.place.piece);
  const others = useMemo(() => otherMakes(piece, now.place.make), [piece, now.place.make]);
  const worked = make ? workedOf(make, now) : [now.place.rows];
  const read = ({ part, row }: RowPlace) => {
    const there = make?.places[part];
    if (there === undefined || there.id === now.make) lookAtRow(row);
    else goTo(`${hrefToMake(there.id)}?row=${row}`);
  };
  return (
    <section class="place-map">
      <h2>{say('lap.map')}</h2>
      <PanelMap
        label={now.part.piece}
        parts={parts}
        worked={worked}
        current={current}
        name={saysMake(now.part.piece, '', now.place.make, piece?.recipe ?? now.place.make)}
        others={others}
        looked={looking.value === undefined ? undefined : { part: current, row: looking.value }}
        onRead={read}
        over={now.place.rows >= now.place.total && make && <Stripes make={make} now={now} />}
      />
    </section>
  );
}

interface StripesProps {
  readonly make: MakeView;
  readonly now: InHand;
}

/** What was made has its stripes, as far as it is worked. Only then: as many shapes as rows are no part of a tap. */
function Stripes({ make, now }: StripesProps) {
  const garment = garmentInHand.value?.garment;
  if (!garment || !isStriped(garment)) return null;
  const { parts } = make;
  const worked = workedOf(make, now);
  const all = [garment.stripes ?? [], ...(garment.restriped ?? []).map(({ stripes }) => stripes)].flat();
  return (
    <StripesDrawn
      parts={parts}
      order={all.map(({ colour }) => colour)}
      colours={(part) => {
        const colour = coloursOf(garment, now.place.piece, parts, part, make.make);
        const rows = worked[parts.indexOf(part)] ?? 0;
        return (row) => (row <= rows ? colour(row) : undefined);
      }}
    />
  );
}

const workedOf = (make: MakeView, now: InHand): readonly number[] =>
  make.places.map((place) => (place.id === now.make ? now.place.rows : place.rows));

function otherMakes(piece: PieceView | undefined, inHand: number) {
  const others = piece?.makes.filter(({ make }) => make !== inHand) ?? [];
  return others.map(({ make, parts, places }) => ({
    name: saysMake(piece?.name ?? '', '', make, piece?.recipe ?? make),
    isBefore: make < inHand,
    parts,
    worked: places.map((place) => place.rows),
  }));
}
