import { useMemo } from 'preact/hooks';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { shapeOfPiece } from '../panel-map/outline-of.ts';
import { atBeginning, atItsWidest, inAll } from '../panel-map/piece-measure.ts';
import { Schematic } from './schematic.tsx';

interface Props {
  /** the piece's name */
  readonly label: string;
  readonly parts: readonly PlannedPart[];
  /** heights above the cast-on to be marked from edge to edge, mm */
  readonly marksMm?: readonly number[] | undefined;
}

/** A piece with its height, the width that it begins with and where it is widest. Needs the catalogue 'print'. */
export function PieceSchematic({ label, parts, marksMm }: Props) {
  const shape = useMemo(() => shapeOfPiece(parts), [parts]);
  const beginning = atBeginning(shape);
  const { width, height } = shape.box;
  const said = {
    width: saysLength(width),
    height: saysLength(height),
    castOn: saysLength(beginning[0]?.mm ?? 0),
  };
  return (
    <Schematic
      label={`${label}: ${say('print.measures', said)}`}
      shape={shape}
      measures={[...beginning, ...atItsWidest(shape), inAll(shape)]}
      marksMm={marksMm}
      notched
      says={({ mm }) => saysLength(mm)}
    />
  );
}
