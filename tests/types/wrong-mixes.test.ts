import { expect, it } from 'vitest';
import type { PieceEntry } from '../../src/app/drafts/editor/garment-form.ts';
import { newGarmentId, newPieceId } from '../../src/app/garments/ids.ts';
import type { Plan, PlannedPart, ProvenPart, ShapingMark } from '../../src/knit/piece/planned.ts';
import type { ReworkedPart } from '../../src/knit/piece/rework/replan.ts';
import {
  type GarmentId,
  type LogEntry,
  type MakeKey,
  makeKey,
  type PieceId,
  type PlanId,
} from '../../src/progress/log.ts';
import { type PlaceRecord, type PlanRecord, planIdOf, planSlot } from '../../src/store/records.ts';
import type { Store } from '../../src/store/store.ts';

/** What must not compile: each line below has an error, or `tsc` says that one is missing. Never called. */

function unproven(part: PlannedPart, proven: ProvenPart, plan: Plan, rework: ReworkedPart) {
  // @ts-expect-error a part that nobody knitted is not proven
  const claimed: ProvenPart = part;
  // @ts-expect-error nor is one that was changed since
  const changed: ProvenPart = { ...proven, rows: [] };
  // @ts-expect-error a plan has none but proven parts
  const made: Plan = { ...plan, parts: [part] };
  // @ts-expect-error and so has a rework
  const again: ReworkedPart = { ...rework, part };
  return [claimed, changed, made, again];
}

function marks(by: number): readonly ShapingMark[] {
  return [
    { kind: 'edge', edge: 'left', by },
    { kind: 'bind off', edge: 'across', by },
    // @ts-expect-error an edge is right or left
    { kind: 'edge', edge: 'across', by },
    // @ts-expect-error nobody turns in the middle
    { kind: 'turn', edge: 'middle', by },
    // @ts-expect-error a centre decrease is in the middle
    { kind: 'middle', edge: 'right', by },
    // @ts-expect-error nor is a whole part cast on
    { kind: 'cast on', edge: 'across', by },
  ];
}

const told = { id: 'd-1', make: 'g/p/0/1' as const, seq: 1, at: 0, row: 1 };

const entries: readonly LogEntry[] = [
  { ...told, kind: 'row' },
  { ...told, kind: 'check', count: 40 },
  { ...told, kind: 'note', text: 'washed' },
  { ...told, kind: 'undo', undoes: 'd-0' },
  // @ts-expect-error a row counts nothing
  { ...told, kind: 'row', count: 40 },
  // @ts-expect-error a check has no words
  { ...told, kind: 'check', text: 'washed' },
  // @ts-expect-error a note takes nothing back
  { ...told, kind: 'note', undoes: 'd-0' },
  // @ts-expect-error there is no such kind
  { ...told, kind: 'washed' },
];

function makes(place: PlaceRecord, plan: PlanRecord): readonly MakeKey[] {
  return [
    place.id,
    // @ts-expect-error a garment is not a make of it
    place.garment,
    // @ts-expect-error nor is a piece
    place.piece,
    // @ts-expect-error nor is a plan, though its id begins alike
    plan.id,
    // @ts-expect-error nor is the one that the place is told by
    place.plan,
  ];
}

function plans(place: PlaceRecord, plan: PlanRecord): readonly PlanId[] {
  return [
    plan.id,
    place.plan,
    planIdOf(plan),
    // @ts-expect-error a make is not the plan that it is knitted by
    place.id,
    // @ts-expect-error nor is a garment
    plan.garment,
    // @ts-expect-error nor a piece
    plan.piece,
    // @ts-expect-error what the ids of all plans of a part begin with is the id of none
    planSlot('g', 'p', 0, false),
  ];
}

function garments(
  place: PlaceRecord,
  plan: PlanRecord,
  store: Store,
  entry: PieceEntry,
): readonly GarmentId[] {
  // @ts-expect-error nothing is read of a garment by the id of a piece
  void store.garment(place.piece);
  // @ts-expect-error nor is a garment thrown away by it
  void store.deleteGarment(entry.id);
  // @ts-expect-error nor is a key made of the two changed for one another
  makeKey({ ...place, garment: place.piece, piece: place.garment });
  return [
    place.garment,
    plan.garment,
    newGarmentId(),
    // @ts-expect-error a piece is not its garment
    place.piece,
    // @ts-expect-error nor is one that is being typed
    entry.id,
    // @ts-expect-error nor is one that is new
    newPieceId(),
    // @ts-expect-error nor is a make
    place.id,
    // @ts-expect-error nor is a plan
    plan.id,
  ];
}

function pieces(place: PlaceRecord, plan: PlanRecord, entry: PieceEntry): readonly PieceId[] {
  return [
    place.piece,
    plan.piece,
    entry.id,
    newPieceId(),
    // @ts-expect-error a garment is not a piece of it
    place.garment,
    // @ts-expect-error nor is one that is new
    newGarmentId(),
    // @ts-expect-error nor is a make
    place.id,
    // @ts-expect-error nor is a plan
    plan.id,
  ];
}

it('what is wrongly mixed does not compile: the types of this file are checked with all others', () => {
  expect(entries).toHaveLength(8);
  expect(marks(1)).toHaveLength(6);
  expect(garments).toBeTypeOf('function');
  expect(pieces).toBeTypeOf('function');
  expect(plans).toBeTypeOf('function');
  expect(makes).toBeTypeOf('function');
  expect(unproven).toBeTypeOf('function');
});
