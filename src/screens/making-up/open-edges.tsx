import { useMemo } from 'preact/hooks';
import { Boundaries, type Rest } from '../../knit/making-up/boundary-of.ts';
import type { Stretch } from '../../knit/making-up/joint.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { edgePath, edgeRuns } from '../../ui/panel-map/edge-line.ts';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { clothPath } from '../../ui/panel-map/paths.ts';
import { asDrawn } from './draw-together.ts';

/** An edge that nothing is joined to, by its number in the list. */
export interface OpenEdge {
  readonly rest: Rest;
  readonly stretch: Stretch;
}

interface OpenEdgesProps {
  readonly open: readonly OpenEdge[];
  /** by their numbers */
  readonly chosen: readonly number[];
  readonly garment: StandingGarment;
  readonly onPick: (edge: number) => void;
}

/** The pieces with the edges that nothing is joined to, to be touched; the list beside it says the same. */
export function OpenEdges({ open, chosen, garment, onPick }: OpenEdgesProps) {
  const drawn = useMemo(() => drawnPieces(open, garment), [open, garment]);
  return (
    <div class="join-drawings" aria-hidden="true">
      {drawn.map(({ key, name, parts, shape, edges }) => {
        const { x, y, width, height } = shape.box;
        const air = 0.08 * Math.max(width, height);
        const view = [x - air, y - air, width + 2 * air, height + 2 * air];
        return (
          <div class="join-piece" key={key}>
            <svg viewBox={view.map((n) => n.toFixed(1)).join(' ')}>
              {shape.parts.map((part, i) => (
                <path class="together-cloth" key={parts[i]?.name} d={clothPath(part)} />
              ))}
              {edges.map(({ edge, path }) => (
                // biome-ignore lint/a11y/noStaticElementInteractions: for the finger; keys and readers have the list below
                <g key={edge} onClick={() => onPick(edge)}>
                  <path class="join-touch" d={path} />
                  <path class={chosen.includes(edge) ? 'together-hand' : 'join-open'} d={path} />
                </g>
              ))}
            </svg>
            <span>{name}</span>
          </div>
        );
      })}
    </div>
  );
}

function drawnPieces(open: readonly OpenEdge[], garment: StandingGarment) {
  const boundaries = new Boundaries(garment);
  return garment.pieces.flatMap(({ recipe, makes }) =>
    makes.flatMap(({ make, parts }) => {
      const own = open.flatMap(({ stretch }, edge) =>
        stretch.piece === recipe.name && stretch.make === make ? [{ stretch, edge }] : [],
      );
      if (own.length === 0) return [];
      const shape = shapeOfPiece(parts);
      const edges = own.flatMap(({ stretch, edge }) => {
        const laid = boundaries.lay(stretch);
        const part = laid && shape.parts[parts.findIndex(({ name }) => name === laid.part.name)];
        return part ? [{ edge, path: edgePath(edgeRuns(part, asDrawn(laid))) }] : [];
      });
      return [{ key: `${recipe.name} ${make}`, name: recipe.name, parts, shape, edges }];
    }),
  );
}
