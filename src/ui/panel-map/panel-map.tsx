import './panel-map.css';
import type { ComponentChildren } from 'preact';
import { useId, useMemo, useRef } from 'preact/hooks';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { saysShaping, saysSide, saysStitches } from '../../words/craft.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { Holder, Needle } from '../needle/needle.tsx';
import { MakeName, OtherMakes } from './other-makes.tsx';
import { type PieceShape, shapeOfPiece } from './outline-of.ts';
import { PartDrawing } from './part-drawing.tsx';
import { rowPath } from './paths.ts';
import { heightAt, lineOf, placeOnLine, type RowPlace, rowAt } from './row-at.ts';
import { scaleBarMm } from './scale.ts';
import { type OtherMake, viewOf } from './view.ts';

export type { RowPlace } from './row-at.ts';
export type { OtherMake } from './view.ts';

export interface PanelMapProps {
  /** the piece's name */
  readonly label: string;
  readonly parts: readonly PlannedPart[];
  /** rows worked, by part */
  readonly worked: readonly number[];
  /** index of the part in hand; a needle lies at its place */
  readonly current?: number | undefined;
  /** which make it is, said where others stand beside it */
  readonly name?: string;
  /** other makes of the piece, drawn beside as outlines */
  readonly others?: readonly OtherMake[] | undefined;
  /** the row that is read at the moment */
  readonly looked?: RowPlace | undefined;
  /** a row was tapped, or reached by the arrow keys; without it the map is only a picture */
  readonly onRead?: ((place: RowPlace) => void) | undefined;
  /** drawn over the cloth, below the needle; to its measure */
  readonly over?: ComponentChildren;
  /** how high it will be shown, CSS px; for the thickness of lines only */
  readonly sizePx?: number | undefined;
}

/**
 * A piece drawn to scale from its plan, filled up to the place, with the side that faces her: on a wrong-side row turned
 * over as the cloth is. Needs the catalogues 'ui' and 'craft'.
 */
export function PanelMap(props: PanelMapProps) {
  const { label, parts, worked, current, others = [], looked, onRead, over, name, sizePx = 320 } = props;
  const id = useId();
  const drawn = useRef<SVGGElement>(null);
  const shape = useMemo(() => shapeOfPiece(parts), [parts]);
  const view = useMemo(() => viewOf(shape.box, others, sizePx), [shape, others, sizePx]);
  const { pixelMm } = view;
  // by the row in hand, as yarn and arrow are: of a row that is only read its line alone tells
  const turned = current !== undefined && parts[current]?.rows[worked[current] ?? 0]?.side === 'WS';
  const bar = scaleBarMm(shape.box.width, speech.value.units);
  const read = (place: RowPlace | undefined) => place && onRead?.(place);
  const tapped = (event: MouseEvent) => read(placeTapped(event, drawn.current, shape));
  return (
    <figure class="map">
      <MapFrame label={label} parts={parts} at={looked ?? placeNow(parts, worked, current)} onRead={onRead}>
        <svg class="map-svg" viewBox={view.viewBox} aria-hidden="true" onClick={tapped}>
          <OtherMakes others={others} view={view} />
          {others.length > 0 && name && <MakeName name={name} box={shape.box} view={view} />}
          <g
            ref={drawn}
            transform={turned ? `translate(${2 * shape.box.x + shape.box.width})scale(-1 1)` : undefined}
          >
            {parts.map((part, i) => (
              <PartDrawing
                key={part.name}
                part={part}
                shape={shape.parts[i] as PieceShape['parts'][number]}
                worked={worked[i] ?? 0}
                id={`${id}-${i}`}
                pixelMm={pixelMm}
                turned={turned}
              />
            ))}
            {over}
            {looked && <LookedRow shape={shape} place={looked} pixelMm={pixelMm} />}
            {current !== undefined && (
              <Place
                shape={shape}
                of={parts[current]}
                part={current}
                worked={worked[current] ?? 0}
                pixelMm={pixelMm}
              />
            )}
          </g>
          <path
            class="map-scale"
            d={`M${view.box.x} ${view.scaleY - 4 * pixelMm}v${4 * pixelMm}h${bar}v${-4 * pixelMm}`}
          />
        </svg>
      </MapFrame>
      <figcaption class="map-caption">
        {say('ui.scale', { length: saysLength(bar) })}
        {turned && ` · ${saysSide('WS', true)}`}
      </figcaption>
    </figure>
  );
}

interface MapFrameProps {
  readonly label: string;
  readonly parts: readonly PlannedPart[];
  readonly at: RowPlace;
  readonly onRead: PanelMapProps['onRead'];
  readonly children: ComponentChildren;
}

/** A slider over all rows: arrow keys, page keys, and a screen reader's own gestures walk the rows. */
function MapFrame({ label, parts, at, onRead, children }: MapFrameProps) {
  const name = say('ui.mapLabel', { piece: label });
  const counts = parts.map((part) => part.rows.length);
  const rows = counts.reduce((sum, count) => sum + count, 0);
  if (!onRead || rows === 0) {
    return (
      <div role="img" aria-label={name}>
        {children}
      </div>
    );
  }
  const line = lineOf(counts, at);
  const keyed = (event: KeyboardEvent) => {
    const to = event.key === 'Enter' ? line : lineAfterKey(event.key, line, rows);
    if (to === undefined) return;
    event.preventDefault();
    onRead(placeOnLine(counts, Math.min(rows, Math.max(1, to))));
  };
  return (
    <div
      class="map-frame"
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-description={say('ui.mapKeys')}
      aria-orientation="vertical"
      aria-valuemin={1}
      aria-valuemax={rows}
      aria-valuenow={line}
      aria-valuetext={rowName(parts, at)}
      onKeyDown={keyed}
    >
      {children}
    </div>
  );
}

function lineAfterKey(key: string, line: number, rows: number): number | undefined {
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: line + 1,
    ArrowRight: line + 1,
    ArrowDown: line - 1,
    ArrowLeft: line - 1,
    PageUp: line + 10,
    PageDown: line - 10,
    Home: 1,
    End: rows,
  };
  return steps[key];
}

function rowName(parts: readonly PlannedPart[], { part, row }: RowPlace): string {
  const planned = parts[part]?.rows[row - 1];
  if (!planned) return '';
  const figures = { part: parts[part]?.name ?? '', row, stitches: saysStitches(planned.after) };
  // of the piece as it is drawn, not of the row as it is worked
  const shaping = saysShaping({ shaping: planned.shaping, steps: planned.steps });
  return shaping ? say('ui.mapRowShaping', { ...figures, shaping }) : say('ui.mapRow', figures);
}

/** The row in hand; the last one when all are worked. */
function placeNow(parts: readonly PlannedPart[], worked: readonly number[], current = 0): RowPlace {
  const rows = parts[current]?.rows.length ?? 0;
  return { part: current, row: Math.min(rows, (worked[current] ?? 0) + 1) };
}

function placeTapped(event: MouseEvent, drawn: SVGGElement | null, shape: PieceShape): RowPlace | undefined {
  const toMm = drawn?.getScreenCTM()?.inverse();
  if (!toMm) return undefined;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(toMm);
  return rowAt(shape, at.x, at.y);
}

interface MarkProps {
  readonly shape: PieceShape;
  readonly pixelMm: number;
}

function LookedRow({ shape, place, pixelMm }: MarkProps & { readonly place: RowPlace }) {
  const row = shape.parts[place.part]?.rows[place.row - 1];
  return row ? <path class="map-looked" d={rowPath(row, 4 * pixelMm)} /> : null;
}

interface PlaceProps extends MarkProps {
  readonly of: PlannedPart | undefined;
  /** index of the part */
  readonly part: number;
  readonly worked: number;
}

/**
 * The place: the needle, as the row that comes next is begun, drawn from the right side and turned with the map; after the last
 * row a holder, or nothing where no stitch is left.
 */
function Place({ shape, of, part, worked, pixelMm }: PlaceProps) {
  const drawn = shape.parts[part];
  const row = drawn?.rows[Math.min(Math.max(0, worked - 1), drawn.rows.length - 1)];
  if (!drawn || !row) return null;
  const [left, right] = worked <= 0 ? [row.left0, row.right0] : [row.left1, row.right1];
  const next = of?.rows[worked];
  if (!next && of?.left === 0) return null;
  if (!next && of?.end === 'hold')
    return <Holder left={left} right={right} y={heightAt(drawn, worked)} pixel={NEEDLE * pixelMm} />;
  return (
    <Needle
      left={left}
      right={right}
      y={heightAt(drawn, worked)}
      from={next && (next.side === 'RS' ? 'right' : 'left')}
      pixel={NEEDLE * pixelMm}
    />
  );
}

/** Its size here, of that in her lap. */
const NEEDLE = 0.7;
