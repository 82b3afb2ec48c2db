import { latestKnitted } from '../../app/in-hand/next-place.ts';
import { goTo } from '../../app/navigate.ts';
import type { MakeView, PieceView } from '../../app/state.ts';
import type { PlaceRecord } from '../../store/records.ts';
import { Icon } from '../../ui/icon/icon.tsx';
import { PanelMap, type RowPlace } from '../../ui/panel-map/panel-map.tsx';
import { say } from '../../words/say.ts';
import { saysAgo } from '../../words/time.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';

/** A piece with every copy of it: drawn to scale, each part with its place, one touch to go on. */
export function PieceSection({ piece }: { readonly piece: PieceView }) {
  return (
    <section class="piece">
      <h3>{piece.name}</h3>
      <div class={piece.makes.length > 1 ? 'piece-makes' : undefined}>
        {piece.makes.map((make) => (
          <Make key={make.make} piece={piece} make={make} />
        ))}
      </div>
    </section>
  );
}

function Make({ piece, make }: { readonly piece: PieceView; readonly make: MakeView }) {
  const name = piece.makes.length > 1 ? saysMake(piece.name, '', make.make, piece.recipe) : piece.name;
  const read = ({ part, row }: RowPlace) => {
    const place = make.places[part];
    if (place) goTo(`${hrefToMake(place.id)}?row=${row}`);
  };
  return (
    <div class="piece-make">
      {piece.makes.length > 1 && <h4>{say('garment.makeNo', { make: make.make })}</h4>}
      <div class="piece-map">
        <PanelMap
          label={name}
          parts={make.parts}
          worked={make.places.map((place) => place.rows)}
          current={partInHand(make.places)}
          onRead={read}
          sizePx={240}
        />
      </div>
      <ul role="list" class="piece-parts">
        {make.places.map((place, i) => (
          <li key={place.id}>
            <PartLink
              place={place}
              what={saysMake(piece.name, make.parts[i]?.name ?? '', make.make, piece.recipe)}
            />
          </li>
        ))}
      </ul>
    </div>
  );
}

/** The part knitted last; undefined before the first row. */
function partInHand(places: readonly PlaceRecord[]): number | undefined {
  const last = latestKnitted(places);
  return last && places.indexOf(last);
}

function PartLink({ place, what }: { readonly place: PlaceRecord; readonly what: string }) {
  const { rows, total } = place;
  const done = rows >= total;
  const words = done ? 'garment.look' : rows === 0 ? 'garment.begin' : 'garment.continue';
  return (
    <a class={`part-link${rows > 0 && !done ? ' part-link-begun' : ''}`} href={hrefToMake(place.id)}>
      <span class="part-link-words">
        <strong>{say(words, { what })}</strong>
        <span class="garment-small">{saysState(place)}</span>
      </span>
      <Icon name={done ? 'check' : 'onward'} />
    </a>
  );
}

function saysState({ rows, total, at }: PlaceRecord): string {
  if (rows === 0) return say('garment.notBegun', { count: total });
  const when = say('garment.lastKnitted', { when: saysAgo(at, Date.now()) });
  return `${rows >= total ? say('garment.finished') : say('garment.rowNext', { row: rows + 1, rows: total })} · ${when}`;
}
