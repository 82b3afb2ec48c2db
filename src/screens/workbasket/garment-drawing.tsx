import { useEffect, useRef, useState } from 'preact/hooks';
import { drawings } from '../../app/garments/drawings.ts';
import { openDrawing } from '../../app/garments/open-garments.ts';
import type { GarmentView } from '../../app/state.ts';
import type { GarmentId } from '../../progress/log.ts';
import { PieceThumb } from '../../ui/panel-map/piece-thumb.tsx';

export interface GarmentDrawingProps {
  readonly garment: GarmentId;
  /** rows worked and when: the drawing is read again when they change */
  readonly seen: string;
  readonly label: string;
}

/** All pieces of a garment in their shapes, to one scale, filled as far as they are knitted; read when it comes into sight. */
export function GarmentDrawing({ garment, seen, label }: GarmentDrawingProps) {
  const box = useRef<HTMLDivElement>(null);
  const inSight = useInSight(box);
  useEffect(() => {
    if (inSight) void openDrawing(garment);
  }, [inSight, garment, seen]);
  const view = drawings.value.get(garment);
  return (
    <div ref={box} class="garment-drawing" role="img" aria-label={label}>
      {view && <Pieces view={view} />}
    </div>
  );
}

function Pieces({ view }: { readonly view: GarmentView }) {
  const makes = view.pieces.flatMap((piece) =>
    piece.makes.map((make) => ({ key: `${piece.id}-${make.make}`, make })),
  );
  const tallestMm = Math.max(1, ...makes.map(({ make }) => heightMm(make.parts)));
  return (
    <>
      {makes.map(({ key, make }) => (
        <PieceThumb
          key={key}
          parts={make.parts}
          worked={make.places.map((place) => place.rows)}
          tallestMm={tallestMm}
        />
      ))}
    </>
  );
}

const heightMm = (parts: GarmentView['pieces'][number]['makes'][number]['parts']): number =>
  Math.max(0, ...parts.map((part) => part.rows.at(-1)?.height ?? 0)) -
  Math.min(...parts.map((part) => part.base), 0);

function useInSight(box: { readonly current: HTMLElement | null }): boolean {
  const [inSight, setInSight] = useState(false);
  useEffect(() => {
    if (!box.current) return;
    const watch = new IntersectionObserver((entries) => {
      if (entries.some((entry) => entry.isIntersecting)) {
        setInSight(true);
        watch.disconnect();
      }
    });
    watch.observe(box.current);
    return () => watch.disconnect();
  }, [box]);
  return inSight;
}
