import type { Point } from '../shape/curve.ts';
import type { Design } from './design.ts';
import { openingPairs } from './neck-opening.ts';
import type { PanelCounts } from './panel-counts.ts';
import type { Panels } from './panels.ts';
import { placketStitches } from './placket.ts';
import { openingOf } from './which-opening.ts';

type Line = readonly Point[];

export interface DrawnPanel {
  readonly design: Design;
  readonly counts: PanelCounts;
  readonly panels: Panels;
  readonly which: 'back' | 'front';
  /** the shoulder at the right-hand side, from the arm to the neck, mm */
  readonly shoulder: Line;
  /** from the lower edge to the hem's upper one, mm */
  readonly hemMm: number;
}

const mirrored = (line: Line): Line => line.map(([x, y]): Point => [-x, y]);

/** Where a panel opens so that a head passes, mm from its middle and lower edge, right side facing; nothing where it does not. */
export function openingLines(drawn: DrawnPanel): readonly Line[] {
  const { shoulders, partsBack, partsFront, opensRaglan } = openingOf(drawn.design);
  const { shoulder, which } = drawn;
  // the wearer's left shoulder lies at the left of a back, and at the right of a front
  if (shoulders === 1) return [which === 'back' ? mirrored(shoulder) : shoulder];
  if (shoulders === 2) return [shoulder, mirrored(shoulder)];
  if (which === 'front') return partsFront ? placket(drawn) : [];
  return partsBack ? slit(drawn) : opensRaglan ? [raglan(drawn)] : [];
}

const heightOf = ({ counts, hemMm }: DrawnPanel, pair: number): number =>
  hemMm + ((pair - counts.pairs.hem) * 200) / counts.gauge.rows;

function slit(drawn: DrawnPanel): readonly Line[] {
  const { design, counts, panels } = drawn;
  const from = panels.back.neck?.edge.from;
  if (from === undefined) return [];
  return [
    [
      [0, heightOf(drawn, from - openingPairs(design, counts))],
      [0, heightOf(drawn, from)],
    ],
  ];
}

/** Both edges of a placket, above what is bound off between them. */
function placket(drawn: DrawnPanel): readonly Line[] {
  const { design, counts, panels } = drawn;
  const { neck } = panels.front;
  if (!neck) return [];
  const x = (placketStitches(design, counts, neck) * 50) / counts.gauge.stitches;
  const edge: Line = [
    [x, heightOf(drawn, neck.edge.from - openingPairs(design, counts))],
    [x, heightOf(drawn, neck.edge.from)],
  ];
  return [edge, mirrored(edge)];
}

function raglan(drawn: DrawnPanel): Line {
  const { design, counts, panels } = drawn;
  const edge = panels.sides.edges.at(-1);
  if (!edge) return [];
  const first = edge.at.length - openingPairs(design, counts);
  const line = edge.at.flatMap((at, pair): Point[] =>
    pair < first ? [] : [[(at * 100) / counts.gauge.stitches, heightOf(drawn, edge.from + pair + 1)]],
  );
  return mirrored(line);
}
