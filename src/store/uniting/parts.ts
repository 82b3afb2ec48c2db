import type { PieceId } from '../../progress/log.ts';
import { stableJson } from '../backup/stable.ts';
import { contentHash } from '../content-hash.ts';
import type { GarmentFields, GarmentPart, GarmentRecord } from '../records.ts';

/**
 * A garment's record taken apart into what is changed and united one by one: each piece, tick, weight, yarn, seam joined by hand and copied
 * text by its own name, everything else as a field.
 */

/** Lists of which each item stands for itself, and what it is called. */
const itemNames = {
  pieces: (piece: NonNullable<GarmentPart['pieces']>[number]): string => piece.id,
  yarns: ({ name, colour = '', dyeLot = '' }: NonNullable<GarmentPart['yarns']>[number]): string =>
    contentHash(JSON.stringify([name, colour, dyeLot])),
  ticked: (step: string): string => step,
  byHand: ({ id }: NonNullable<GarmentPart['byHand']>[number]): string => id,
  taken: ({ piece, make }: NonNullable<GarmentPart['taken']>[number]): string => `${make}/${piece}`,
} as const;

export type ListName = keyof typeof itemNames;
export const listNames = Object.keys(itemNames) as readonly ListName[];

export const nameOfItem = (list: ListName, name: string): string => `${list}/${name}`;
export const pieceName = (id: PieceId): string => nameOfItem('pieces', id);

/** The id of the piece that a part is; undefined for anything else. */
export const pieceIn = ({ pieces }: GarmentPart) => pieces?.[0];

/** The parts of a record by name, lists in their order. */
export function partsOf(record: GarmentPart & Partial<GarmentRecord>): Map<string, GarmentPart> {
  const { id: _id, createdAt: _created, changedAt: _changed, marks: _marks, ...fields } = record;
  const parts = new Map<string, GarmentPart>();
  for (const [field, value] of Object.entries(fields)) {
    if (value === undefined) continue;
    if (isList(field)) putItems(parts, field, value as readonly never[]);
    else if (field === 'texts')
      for (const [piece, text] of Object.entries(value as NonNullable<GarmentPart['texts']>))
        parts.set(`texts/${piece}`, { texts: { [piece]: text } });
    else parts.set(field, { [field]: value });
  }
  return parts;
}

const isList = (field: string): field is ListName => Object.hasOwn(itemNames, field);

function putItems(parts: Map<string, GarmentPart>, list: ListName, items: readonly never[]): void {
  for (const item of items) {
    const name = nameOfItem(list, itemNames[list](item));
    let own = name;
    // two of one name, which only an odd file has, are two
    for (let n = 2; parts.has(own); n += 1) own = `${name}#${n}`;
    parts.set(own, { [list]: [item] });
  }
}

/** The record's fields of its parts, lists in the order of the parts. */
export function assembled(parts: Iterable<GarmentPart>): Partial<GarmentFields> {
  const fields: Record<string, unknown> = {};
  for (const part of parts) {
    for (const [field, value] of Object.entries(part)) {
      const before = fields[field];
      if (isList(field))
        fields[field] = [...((before as readonly unknown[]) ?? []), ...(value as readonly unknown[])];
      else if (field === 'texts') fields[field] = { ...(before as object), ...(value as object) };
      else fields[field] = value;
    }
  }
  return fields as Partial<GarmentFields>;
}

export const sameParts = (a: GarmentPart | undefined, b: GarmentPart | undefined): boolean =>
  a === b || stableJson(a) === stableJson(b);
