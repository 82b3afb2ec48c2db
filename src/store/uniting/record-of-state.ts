import type {
  GarmentFields,
  GarmentMarks,
  GarmentPart,
  GarmentRecord,
  GonePiece,
  ListOrder,
  PieceRecord,
} from '../records.ts';
import { type BegunIn, hasParts, withMakes } from './begun.ts';
import { joinedNotes } from './joined-notes.ts';
import { assembled, type ListName, pieceIn, pieceName, sameParts } from './parts.ts';
import type { Stamp } from './stamp.ts';
import { type GarmentState, NOTES, namesIn } from './state.ts';

/** The same state is the same record, to the letter. `begun`: what the log has of a piece. */
export function recordOf(
  state: GarmentState,
  { id, createdAt, changedAt, name }: Pick<GarmentRecord, 'id' | 'createdAt' | 'changedAt' | 'name'>,
  begun: BegunIn,
): GarmentRecord {
  const chosen = new Map<string, { readonly stamp: Stamp; readonly part: GarmentPart }>();
  for (const [part, versions] of state.parts) chosen.set(part, latestOf(versions, begun));
  const shown = [...state.gone.keys()]
    .filter((piece) => begun(piece) !== undefined && !chosen.has(pieceName(piece)))
    .sort();
  const base = mostCommon([...chosen.values()].map(({ stamp }) => stamp));
  const presented = new Map([...chosen].map(([part, { stamp, part: of }]) => [part, { stamp, of }]));
  for (const piece of shown) {
    const { stamp, piece: of } = state.gone.get(piece) as GonePiece;
    presented.set(pieceName(piece), { stamp, of: { pieces: [made(of, begun)] } });
  }
  const inTurn = ordered(presented, state.order);
  const fields = {
    name,
    ...assembled(inTurn.map((part) => (presented.get(part) as { of: GarmentPart }).of)),
  };
  const notes = state.parts.get(NOTES);
  return {
    ...(fields as GarmentFields),
    ...(notes && notes.size > 1
      ? { notes: joinedNotes(versionsOf(notes).map(([, of]) => of.notes ?? '')) }
      : {}),
    id,
    createdAt,
    changedAt,
    marks: marksFor(state, { chosen, shown, base, inTurn }),
  };
}

interface Chosen {
  readonly chosen: ReadonlyMap<string, { readonly stamp: Stamp; readonly part: GarmentPart }>;
  readonly shown: readonly string[];
  readonly base: Stamp;
  readonly inTurn: readonly string[];
}

function marksFor(state: GarmentState, { chosen, shown, base, inTurn }: Chosen): GarmentMarks {
  const at = [...chosen].filter(([name, { stamp }]) => stamp !== base && !isJoined(state, name)).sort(byName);
  const also = [...state.parts].sort(byName).flatMap(([name, versions]) => {
    const { stamp: top, part } = chosen.get(name) as { stamp: Stamp; part: GarmentPart };
    return versionsOf(versions)
      .filter(([stamp]) => versions.size > 1 && (stamp !== top || name === NOTES))
      .map(([stamp, of]) => ({ name, stamp, ...(name !== NOTES && sameParts(of, part) ? {} : { of }) }));
  });
  const order = [...state.order].filter(([list, { stamp, names }]) => {
    const now = namesIn(new Map(inTurn.map((part) => [part, part])), list);
    return stamp !== base || JSON.stringify(now) !== JSON.stringify(names);
  });
  const gone = [...state.gone.values()].sort((a, b) => (a.piece.id < b.piece.id ? -1 : 1));
  const photosGone = [...state.photosGone.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    base,
    seen: [...state.seen.values()].sort(),
    ...(at.length === 0 ? {} : { at: Object.fromEntries(at.map(([name, { stamp }]) => [name, stamp])) }),
    ...(also.length === 0 ? {} : { also }),
    ...(gone.length === 0 ? {} : { gone }),
    ...(photosGone.length === 0 ? {} : { photosGone }),
    ...(shown.length === 0 ? {} : { shown }),
    ...(order.length === 0 ? {} : { order: Object.fromEntries(order) }),
  };
}

const isJoined = ({ parts }: GarmentState, name: string): boolean =>
  name === NOTES && (parts.get(name) as ReadonlyMap<Stamp, GarmentPart>).size > 1;

const byName = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number => (a < b ? -1 : 1);

const versionsOf = (versions: ReadonlyMap<Stamp, GarmentPart>) => [...versions].sort(byName);

/** The latest; of a piece the latest that has every part that was begun, with every make that was. */
function latestOf(versions: ReadonlyMap<Stamp, GarmentPart>, begun: BegunIn) {
  const all = versionsOf(versions);
  const covering = all.filter(([, part]) => {
    const piece = pieceIn(part);
    const needed = piece && begun(piece.id);
    return piece && needed && hasParts(piece, needed);
  });
  const [stamp, part] = (covering.at(-1) ?? all.at(-1)) as [Stamp, GarmentPart];
  const piece = pieceIn(part);
  return { stamp, part: piece ? { pieces: [made(piece, begun)] } : part };
}

const made = (piece: PieceRecord, begun: BegunIn): PieceRecord => {
  const needed = begun(piece.id);
  return needed ? withMakes(piece, needed) : piece;
};

/** Most parts were written at once, when the garment was made: their stamp is said once. */
function mostCommon(stamps: readonly Stamp[]): Stamp {
  const times = new Map<Stamp, number>();
  for (const stamp of stamps) times.set(stamp, (times.get(stamp) ?? 0) + 1);
  const [most] = [...times].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1));
  return most?.[0] ?? '';
}

/** Names in the order in which they were last laid; what has come since follows, the earlier before the later. */
function ordered(
  presented: ReadonlyMap<string, { readonly stamp: Stamp }>,
  order: ReadonlyMap<ListName, ListOrder>,
): string[] {
  const rank = new Map<string, number>();
  for (const { names } of order.values()) for (const [i, name] of names.entries()) rank.set(name, i);
  return [...presented]
    .sort(([a, one], [b, two]) => {
      const [first, second] = [
        rank.get(a) ?? Number.MAX_SAFE_INTEGER,
        rank.get(b) ?? Number.MAX_SAFE_INTEGER,
      ];
      return (
        first - second || (one.stamp < two.stamp ? -1 : one.stamp > two.stamp ? 1 : byName([a, 0], [b, 0]))
      );
    })
    .map(([name]) => name);
}
