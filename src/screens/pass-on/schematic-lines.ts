import { mergeTexts } from '../../knit/written/merge-sizes.ts';
import type { SaysLength } from '../../knit/written/says-length.ts';
import type { WorkedSize } from '../../knit/written/work-size.ts';
import type { WrittenWords } from '../../knit/written/written-words.ts';
import type { PieceMeasure } from '../../ui/panel-map/piece-measure.ts';
import { measuresOf } from './measures-of.ts';

/** A measure by its letter, as it stands below a drawing: all sizes in brackets. */
interface SchematicLine {
  readonly letter: string;
  readonly name: string;
  readonly list: string;
}

function measured({ garment, made }: WorkedSize, name: string) {
  const make = garment.pieces.find(({ recipe }) => recipe.name === name)?.makes[0];
  const sides = made.joints.flatMap((joint) =>
    joint.kind === 'seam' && joint.of === 'side' ? [...joint.a, ...joint.b] : [],
  );
  const side = sides.find((one) => one.piece === name && one.make === make?.make)?.edge;
  return measuresOf(make?.parts ?? [], side === 'left' ? 'left' : 'right');
}

/** A piece as the first size has it, drawn with letters, and what each letter is in every size; undefined where it has no measure. */
export function schematicOf(
  name: string,
  sizes: readonly WorkedSize[],
  words: WrittenWords,
  length: SaysLength,
) {
  const all = sizes.map((size) => measured(size, name));
  const [own] = all;
  if (!own || own.measures.length === 0) return undefined;
  const keys = [...new Set(all.flatMap(({ measures }) => measures.map(({ key }) => key)))];
  const names = sizes.map(({ size }) => words.size(size));
  const lines = keys.map((key, i): SchematicLine => {
    const values = all.map(({ measures }) => measures.find((one) => one.key === key));
    const text = values.map((value) => (value ? [length(value.mm)] : []));
    const named = values.find((value) => value !== undefined);
    return {
      letter: letterOf(i),
      name: named ? nameOf(named, words.pictures) : '',
      list: mergeTexts(text, names, words.list).join('; '),
    };
  });
  return { ...own, lines, letter: ({ key }: PieceMeasure) => letterOf(keys.indexOf(key)) };
}

/** Without I and O, which look like a line's ends and a nought. */
const letterOf = (i: number): string => 'ABCDEFGHJKLMNPQRSTUVWXYZ'.charAt(i);

const nameOf = ({ name }: PieceMeasure, words: WrittenWords['pictures']): string =>
  typeof name === 'string' ? words.measures[name] : words.section(name.section, name.toTop);
