import { useEffect, useMemo } from 'preact/hooks';
import { asItStands } from '../../app/garments/as-it-stands.ts';
import type { GarmentView, PieceView } from '../../app/state.ts';
import { finished } from '../../knit/making-up/finished.ts';
import { makingUpOf } from '../../knit/making-up/making-up.ts';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { FinishedLines } from '../making-up/made-up.tsx';

interface FinishedSizeProps {
  readonly view: GarmentView;
  /** hears the two that she asks for first, or the size of each piece, for the line that is in sight while the rest is folded */
  readonly onSays: (says: string) => void;
}

/** What the garment measures when it is made up. */
export function FinishedSize({ view, onSays }: FinishedSizeProps) {
  const measures = useMemo(() => {
    const garment = asItStands(view);
    return finished(makingUpOf(garment).worked, garment);
  }, [view]);
  const { chest, length } = measures;
  const isWorn = chest !== undefined && length !== undefined;
  const pieces = isWorn ? [] : view.pieces.map(saysPiece);
  const says = isWorn
    ? say('garment.finishedSays', { round: saysLength(chest), length: saysLength(length) })
    : pieces.join(' · ');
  useEffect(() => onSays(says), [says]);
  return isWorn ? <FinishedLines measures={measures} /> : null;
}

function saysPiece({ name, makes }: PieceView): string {
  const box = shapeOfPiece(makes[0]?.parts ?? []).box;
  const size = { width: saysLength(box.width), height: saysLength(box.height) };
  return say('garment.pieceSize', { piece: name, ...size });
}
