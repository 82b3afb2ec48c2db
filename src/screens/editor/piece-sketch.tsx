import { useId, useMemo, useRef } from 'preact/hooks';
import { checkOf } from '../../app/drafts/editor/check-of.ts';
import type { PieceEntry } from '../../app/drafts/editor/garment-form.ts';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import '../../ui/panel-map/panel-map.css';
import { PartDrawing } from '../../ui/panel-map/part-drawing.tsx';
import { clothPath } from '../../ui/panel-map/paths.ts';
import { rowAt } from '../../ui/panel-map/row-at.ts';
import { viewOf } from '../../ui/panel-map/view.ts';
import { say } from '../../words/say.ts';
import { isOpenAt, shownPart, toggleBand } from './changes.ts';

/** how high it is shown, CSS px; for the thickness of lines only */
const SIZE_PX = 150;

/**
 * The piece as it is typed, the open band lit; touching it opens a band as the band's own line does. While something
 * does not fit, the last drawing that did stands faded.
 */
export function PieceSketch({ entry }: { readonly entry: PieceEntry }) {
  const { plan } = checkOf(entry.form);
  const last = useRef(plan);
  if (plan !== undefined) last.current = plan;
  const parts = last.current?.parts;
  const id = useId();
  const svg = useRef<SVGSVGElement>(null);
  const shape = useMemo(() => parts && shapeOfPiece(parts), [parts]);
  const view = useMemo(() => shape && viewOf(shape.box, [], SIZE_PX), [shape]);
  const touched = (event: MouseEvent) => {
    const toMm = svg.current?.getScreenCTM()?.inverse();
    const at = toMm && new DOMPoint(event.clientX, event.clientY).matrixTransform(toMm);
    const row = at && shape && rowAt(shape, at.x, at.y);
    const section = row && parts?.[row.part]?.sections.findIndex(({ last: end }) => row.row <= end);
    if (section === undefined || entry.form.parts[row?.part ?? 0]?.sections[section] === undefined) return;
    shownPart.value = row?.part;
    toggleBand({ piece: entry.id, part: row?.part ?? 0, section });
  };
  return (
    <div class={plan ? 'edit-sketch' : 'edit-sketch edit-sketch-old'}>
      {parts && shape && view && (
        <div role="img" aria-label={say('ui.mapLabel', { piece: entry.form.name })}>
          <svg ref={svg} class="edit-sketch-svg" viewBox={view.viewBox} aria-hidden="true" onClick={touched}>
            {parts.map((part, i) => {
              const drawn = shape.parts[i];
              return (
                drawn && (
                  <PartDrawing
                    key={part.name}
                    part={part}
                    shape={drawn}
                    worked={0}
                    id={`${id}-${i}`}
                    pixelMm={view.pixelMm}
                  />
                )
              );
            })}
            {parts.flatMap((part, i) =>
              part.sections.map((section, k) => {
                const isOpen = isOpenAt({ piece: entry.id, part: i, section: k });
                const drawn = shape.parts[i];
                return (
                  <path
                    key={`${i}-${k}`}
                    class={isOpen ? 'edit-sketch-band edit-sketch-open' : 'edit-sketch-band'}
                    d={drawn ? clothPath(drawn, section.first, section.last) : ''}
                  />
                );
              }),
            )}
          </svg>
        </div>
      )}
      {!plan && <p class="edit-soft">{say('editor.noDrawing')}</p>}
    </div>
  );
}
