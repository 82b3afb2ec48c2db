import { useEffect, useMemo } from 'preact/hooks';
import { asItStands } from '../../app/garments/as-it-stands.ts';
import type { GarmentView } from '../../app/state.ts';
import { finished } from '../../knit/making-up/finished.ts';
import { makingUpOf } from '../../knit/making-up/making-up.ts';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { FinishedLines } from '../making-up/made-up.tsx';

interface FinishedSizeProps {
  readonly view: GarmentView;
  /** hears the two that she asks for first, for the line that is in sight while the rest is folded */
  readonly onSays: (says: string) => void;
}

/** What the garment measures when it is made up; of pieces that are sewn to nothing, what each measures. */
export function FinishedSize({ view, onSays }: FinishedSizeProps) {
  const measures = useMemo(() => {
    const garment = asItStands(view);
    return finished(makingUpOf(garment).worked, garment);
  }, [view]);
  const { chest, length } = measures;
  const isWorn = chest !== undefined && length !== undefined;
  useEffect(() => {
    if (isWorn) onSays(say('garment.finishedSays', { round: saysLength(chest), length: saysLength(length) }));
    else onSays('');
  }, [chest, length]);
  if (isWorn) return <FinishedLines measures={measures} />;
  return (
    <ul>
      {view.pieces.map(({ id, name, makes }) => {
        const box = shapeOfPiece(makes[0]?.parts ?? []).box;
        const size = { width: saysLength(box.width), height: saysLength(box.height) };
        return <li key={id}>{say('garment.pieceSize', { piece: name, ...size })}</li>;
      })}
    </ul>
  );
}
