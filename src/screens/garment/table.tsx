import { nextPlace } from '../../app/in-hand/next-place.ts';
import type { MakeView, PieceView } from '../../app/state.ts';
import type { PlaceRecord } from '../../store/records.ts';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { PieceThumb } from '../../ui/panel-map/piece-thumb.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';

interface OnTable {
  readonly piece: PieceView;
  readonly make: MakeView;
  readonly place: PlaceRecord;
  readonly wideMm: number;
}

/** Every piece as it lies on the table, to one scale; touched, it goes on where it was left. */
export function Table({ pieces }: { readonly pieces: readonly PieceView[] }) {
  const laid = pieces.flatMap((piece) => piece.makes.flatMap((make) => onTable(piece, make)));
  const scale = scaleOf(laid);
  return (
    <ul role="list" class="table" aria-label={say('garment.pieces')}>
      <Shows what="table" />
      {laid.map((one) => (
        <Tile key={`${one.piece.id} ${one.make.make}`} laid={one} share={one.wideMm * scale} />
      ))}
    </ul>
  );
}

function onTable(piece: PieceView, make: MakeView): OnTable[] {
  const place = nextPlace(make.places);
  const wideMm = shapeOfPiece(make.parts).box.width;
  return place ? [{ piece, make, place, wideMm }] : [];
}

/** Hundredths of the table's width: two panels lie side by side, and a band has a line of its own. */
const PANEL = 42;
const BAND = 94;

/** Hundredths of the table's width to 1 mm. */
function scaleOf(laid: readonly OnTable[]): number {
  const widest = (isWanted: (one: OnTable) => boolean) =>
    Math.max(1, ...laid.filter(isWanted).map(({ wideMm }) => wideMm));
  return Math.min(PANEL / widest((one) => !isBand(one)), BAND / widest(isBand));
}

const isBand = ({ make }: OnTable): boolean => make.parts.some(({ from }) => 'pickUp' in from);

function Tile({ laid, share }: { readonly laid: OnTable; readonly share: number }) {
  const { piece, make, place } = laid;
  const part = make.parts[place.part]?.name ?? '';
  const isWhole = make.places.length === 1 || isDone(place);
  const said = saysTile(isWhole ? make : { places: [place] });
  return (
    <li class={`tile-place${isBand(laid) ? ' tile-band' : ''}`} style={{ '--share': share.toFixed(2) }}>
      <a class={`tile${place.rows > 0 && !isDone(place) ? ' tile-begun' : ''}`} href={hrefToMake(place.id)}>
        <PieceThumb parts={make.parts} worked={make.places.map(({ rows }) => rows)} />
        <strong>{saysMake(piece.name, '', make.make, piece.recipe)}</strong>
        <span class="garment-small">{isWhole || part === piece.name ? said : `${part} · ${said}`}</span>
      </a>
    </li>
  );
}

const isDone = ({ rows, total }: PlaceRecord): boolean => rows >= total;

/** 'row 63 of 104', 'not begun', 'finished'. */
function saysTile({ places }: Pick<MakeView, 'places'>): string {
  if (places.every(isDone)) return say('garment.finished');
  const [place] = places;
  if (!place || place.rows === 0) return say('garment.tileNotBegun');
  return say('garment.tileRow', { row: place.rows + 1, rows: place.total });
}
