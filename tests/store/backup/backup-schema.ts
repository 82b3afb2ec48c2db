import { stitchNames } from '../../../src/knit/stitch.ts';
import { BACKUP_VERSION, backupDocument } from '../../../src/store/backup/document.ts';
import { LIMITS, part, recipe, steps } from '../../../src/store/shapes/craft-shapes.ts';
import { garmentRecord, logEntry, photoText, planRecord } from '../../../src/store/shapes/record-shapes.ts';

/** What this file reads of the shapes that the store validates with. */
interface Shape {
  readonly type: string;
  readonly [more: string]: unknown;
}
type Schema = Record<string, unknown>;

/** Shapes that have a name of their own in the schema. */
const named = new Map<unknown, string>([
  [garmentRecord, 'garment'],
  [recipe, 'recipe'],
  [part, 'part'],
  [planRecord, 'plan'],
  [logEntry, 'entry'],
  [photoText, 'photo'],
  [steps, 'steps'],
]);

/** The JSON Schema (draft 2020-12) of a backup, told from the door itself: the published file cannot drift from it. */
export function backupSchema(): Schema {
  const defs = [...named].map(([shape, name]): [string, Schema] => [
    name,
    name === 'steps' ? stepList : bodyOf(shape),
  ]);
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: `Ridgeline backup, version ${BACKUP_VERSION}`,
    description:
      'Everything a knitter made with Ridgeline. Lengths are millimetres, gauges stitches and rows per 100 mm, times milliseconds since 1970 UTC; rows and makes count from 1, parts from 0. The log (entries) tells every place: of the entries of a make that are a row, place, rip back, rework or undo, the one with the highest seq, then the highest id, holds the rows worked and names the plan of which they are rows. Of a garment, marks tell when each part was changed, in an order that no clock spoils.',
    ...bodyOf(backupDocument),
    $defs: { ...Object.fromEntries(defs), step },
  };
}

const count = { type: 'integer', minimum: 0, maximum: 100_000 };
const stepRef = { $ref: '#/$defs/steps' };
const until = object({ left: count });
const work = { enum: stitchNames };

/** Steps nest; the door allows a few levels, which the schema need not say. */
const stepList = { type: 'array', items: { $ref: '#/$defs/step' }, maxItems: LIMITS.steps };
const step = {
  anyOf: [
    object({ work, times: count }),
    object({ work, until }),
    object({ repeat: stepRef, times: count }),
    object({ repeat: stepRef, until }),
  ],
};

function schemaOf(shape: unknown): Schema {
  const name = named.get(shape);
  return name === undefined ? bodyOf(shape) : { $ref: `#/$defs/${name}` };
}

function bodyOf(shape: unknown): Schema {
  const it = shape as Shape;
  const [first, ...actions] = (it.pipe as Shape[] | undefined) ?? [it];
  const base = plain(first as Shape);
  return Object.assign({}, base, ...actions.map((action) => ruleOf(action, base.type)));
}

function plain(it: Shape): Schema {
  switch (it.type) {
    case 'string':
    case 'number':
    case 'boolean':
      return { type: it.type };
    case 'literal':
      return { const: it.literal };
    case 'picklist':
      return { enum: it.options };
    case 'array':
      return { type: 'array', items: schemaOf(it.item) };
    case 'record':
      return {
        type: 'object',
        propertyNames: schemaOf(it.key),
        additionalProperties: schemaOf(it.value),
      };
    case 'strict_object':
      return strictObject(it.entries as Record<string, Shape>);
    case 'union':
    case 'variant':
      return { anyOf: (it.options as Shape[]).map(schemaOf) };
    // plain data that only its own part of the app reads
    case 'custom':
      return {};
    default:
      throw new Error(`no schema for ${it.type}`);
  }
}

function strictObject(entries: Record<string, Shape>): Schema {
  const optional = (name: string) => entries[name]?.type === 'exact_optional';
  const properties = Object.entries(entries).map(([name, shape]): [string, Schema] => [
    name,
    schemaOf(optional(name) ? shape.wrapped : shape),
  ]);
  return object(
    Object.fromEntries(properties),
    Object.keys(entries).filter((name) => !optional(name)),
  );
}

function object(properties: Record<string, Schema>, required = Object.keys(properties)): Schema {
  return { type: 'object', properties, required, additionalProperties: false };
}

function ruleOf(action: Shape, of: unknown): Schema {
  const bound = action.requirement;
  switch (action.type) {
    case 'safe_integer':
      return { type: 'integer' };
    case 'min_value':
      return { minimum: bound };
    case 'max_value':
      return { maximum: bound };
    case 'gt_value':
      return { exclusiveMinimum: bound };
    case 'min_length':
      return of === 'array' ? { minItems: bound } : { minLength: bound };
    case 'max_length':
      return of === 'array' ? { maxItems: bound } : { maxLength: bound };
    case 'regex':
      return { pattern: (bound as RegExp).source };
    // JSON has no other numbers; what a check computes no schema can say
    case 'finite':
    case 'check':
      return {};
    // what is let in stays the same: only its type is said more sharply
    case 'transform':
      return {};
    default:
      throw new Error(`no schema rule for ${action.type}`);
  }
}
