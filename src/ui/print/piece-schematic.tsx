import { useMemo } from 'preact/hooks';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { measuresOf } from '../panel-map/measures-of.ts';
import { Schematic } from './schematic.tsx';

interface Props {
  /** the piece's name */
  readonly label: string;
  readonly parts: readonly PlannedPart[];
  /** heights above the cast-on to be marked from edge to edge, mm */
  readonly marksMm?: readonly number[] | undefined;
}

/** A piece with its height and the width that it begins with; the widest is read aloud. Needs the catalogue 'print'. */
export function PieceSchematic({ label, parts, marksMm }: Props) {
  const { shape, measures } = useMemo(() => measuresOf(parts), [parts]);
  const drawn = measures.filter(({ name }) => name === 'in all' || name === 'at its beginning');
  const castOn = drawn.find(({ name }) => name === 'at its beginning')?.mm ?? 0;
  const { width, height } = shape.box;
  const said = { width: saysLength(width), height: saysLength(height), castOn: saysLength(castOn) };
  return (
    <Schematic
      label={`${label}: ${say('print.measures', said)}`}
      shape={shape}
      measures={drawn}
      marksMm={marksMm}
      says={({ mm }) => saysLength(mm)}
    />
  );
}
