import { isDeepStrictEqual } from 'node:util';
import type { GarmentForm, PieceEntry } from '../../../src/app/drafts/editor/garment-form.ts';
import { checkPiece } from '../../../src/knit/piece/form/check.ts';
import type { PieceForm } from '../../../src/knit/piece/form/form.ts';
import { recipeToForm } from '../../../src/knit/piece/form/write-piece.ts';
import type { PieceRecord } from '../../../src/store/records.ts';
import type { Deed, Hand } from '../hand.ts';
import { type Facts, isBegun, type Truth } from '../truth.ts';

type Change = (form: GarmentForm, hand: Hand) => GarmentForm;

const inPiece =
  (change: (piece: PieceForm, hand: Hand) => PieceForm): Change =>
  (form, hand) => {
    const at = hand.number(form.pieces.length);
    const pieces = form.pieces.map((entry, i) =>
      i === at ? { ...entry, form: change(entry.form, hand) } : entry,
    );
    return { ...form, pieces };
  };

const longer = inPiece((piece, hand) => {
  const [first, ...others] = piece.parts;
  const [section, ...rest] = first?.sections ?? [];
  if (first === undefined || section === undefined) return piece;
  const rows = String(1 + hand.number(8));
  return { ...piece, parts: [{ ...first, sections: [{ ...section, rows }, ...rest] }, ...others] };
});

/** What she may type. */
const changes: Readonly<Record<string, Change>> = {
  'another name': (form, hand) => ({ ...form, name: `Vest ${hand.number(50)}` }),
  'other notes': (form, hand) => ({ ...form, notes: `for windy days ${hand.number(50)}` }),
  'another length': longer,
  'another length again': longer,
  'one more make': inPiece((piece) => ({ ...piece, makes: String(Math.min(4, Number(piece.makes) + 1)) })),
  'one make less': inPiece((piece) => ({ ...piece, makes: String(Math.max(1, Number(piece.makes) - 1)) })),
  'no shoulders': inPiece((piece) => {
    const [body] = piece.parts;
    return body === undefined ? piece : { ...piece, parts: [{ ...body, end: 'bind off' }] };
  }),
  'a new piece': (form, hand) => {
    const piece = hand.pick(hand.world.wardrobe)?.pieces[0];
    if (piece === undefined || form.pieces.length > 3) return form;
    const entry = { id: `new${hand.device.now() % 1e8}`, form: recipeToForm(piece.recipe) };
    return { ...form, pieces: [...form.pieces, entry] };
  },
  'one piece less': (form, hand) => {
    const at = hand.number(form.pieces.length);
    return form.pieces.length < 2 ? form : { ...form, pieces: form.pieces.filter((_, i) => i !== at) };
  },
};

/** Types in the editor of a garment, and does not save. */
export const edit: Deed = async (hand) => {
  const { page } = hand;
  const { editor, change } = page.app.editor;
  const id = editor.value?.garment ?? hand.garment();
  if (id === undefined) return hand.unchanged;
  await hand.at({ screen: 'editor', garment: id });
  if (!editor.value) await page.go(page.at);
  const name = hand.pick(Object.keys(changes)) ?? 'another name';
  if (!editor.value) return hand.unchanged;
  hand.say(`${name} of ${id}`);
  change((form) => changes[name]?.(form, hand) ?? form, name);
  return hand.unchanged;
};

/** Saves what the editor of the page holds; types something first where nothing was typed. */
export const save: Deed = async (hand) => {
  const { page, truth } = hand;
  if (!page.app.editor.editor.value) await edit(hand);
  else await hand.at({ screen: 'editor', garment: page.app.editor.editor.value.garment });
  const { editor, saveGarment } = page.app.editor;
  const at = editor.value;
  if (!at?.old) return hand.unchanged;
  hand.say(`save ${at.garment}`);
  const { old, history } = at;
  const saved = await saveGarment();
  const facts = truth.garments.get(at.garment);
  if (facts === undefined) return hand.ended(saved.ok, truth);
  const typed = typedIn(history.now, old.pieces, truth, at.garment);
  const looseFacts = new Map([[at.garment, (now: Facts) => isSaved(now, facts, typed)]]);
  return hand.ended(saved.ok, { ...truth, looseFacts, written: [] });
};

interface Typed {
  /** pieces that she took away */
  readonly gone: ReadonlySet<string>;
  /** recipes that she typed, by piece: of new pieces, and of others where they are other than they were */
  readonly recipes: ReadonlyMap<string, unknown>;
  /** pieces that are on the needles: no row of them changes here */
  readonly begun: ReadonlySet<string>;
}

function typedIn(form: GarmentForm, old: readonly PieceRecord[], truth: Truth, garment: string): Typed {
  const shown = new Set(form.pieces.map(({ id }) => id));
  const own = [...truth.makes.keys()].filter((key) => key.startsWith(`${garment}/`));
  const begun = new Set(own.filter((key) => isBegun(truth, key)).map((key) => key.split('/')[1] ?? ''));
  const recipes = form.pieces.flatMap((entry): [string, unknown][] => {
    const was = old.find(({ id }) => id === entry.id);
    if (was && isDeepStrictEqual(recipeToForm(was.recipe), entry.form)) return [];
    const recipe = recipeIn(entry);
    return recipe === undefined ? [] : [[entry.id, recipe]];
  });
  return {
    gone: new Set(old.map(({ id }) => id).filter((id) => !shown.has(id))),
    recipes: new Map(recipes),
    begun,
  };
}

/** What the form says, where it can be knitted; its role is not typed. */
function recipeIn({ form }: PieceEntry): unknown {
  const { plan, recipe } = checkPiece(form);
  return plan === undefined ? undefined : withoutRole(recipe);
}

const withoutRole = (recipe: object): unknown => {
  const { role: _, ...rest } = JSON.parse(JSON.stringify(recipe)) as { role?: unknown };
  return rest;
};

/** Nothing that she typed is missing, nothing that she left alone is another, no piece is lost. */
function isSaved(now: Facts, was: Facts, { gone, recipes, begun }: Typed): boolean {
  const found = new Map(now.pieces.map(({ id, recipe }) => [id, withoutRole(recipe)]));
  const before = new Map(was.pieces.map(({ id, recipe }) => [id, withoutRole(recipe)]));
  const kept = [...before].every(([id, recipe]) => {
    if (gone.has(id) && !begun.has(id)) return true;
    const wanted = begun.has(id) ? recipe : (recipes.get(id) ?? recipe);
    return isDeepStrictEqual(found.get(id), wanted);
  });
  const added = [...recipes].every(
    ([id, recipe]) => before.has(id) || isDeepStrictEqual(found.get(id), recipe),
  );
  return kept && added && isDeepStrictEqual(now.ticked, was.ticked);
}
