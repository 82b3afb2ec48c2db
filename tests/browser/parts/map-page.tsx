import { useState } from 'preact/hooks';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { Ladder } from '../../../src/ui/ladder/ladder.tsx';
import { rowsAhead } from '../../../src/ui/ladder/rows-ahead.ts';
import { PanelMap, type RowPlace } from '../../../src/ui/panel-map/panel-map.tsx';
import { PieceThumb } from '../../../src/ui/panel-map/piece-thumb.tsx';
import { PrintSheet } from '../../../src/ui/print/print-sheet.tsx';
import { Screen } from '../../../src/ui/screen/screen.tsx';

const rows = Number(new URLSearchParams(location.search).get('rows') ?? 40);

/** A scarf that tapers, as long as it is asked for. */
const scarf: Recipe = {
  name: 'Scarf',
  makes: 1,
  gauge: { stitches: 20, rows: 30 },
  parts: [
    {
      name: 'Scarf',
      from: { castOn: 60 },
      sections: [
        { name: 'rib', rows: 8, fabric: 'rib 1x1', needle: 3.5, shaping: [] },
        {
          name: 'garter',
          rows: rows - 8,
          fabric: 'garter',
          needle: 4,
          shaping: [{ kind: 'edge', edge: 'both', by: -1, rows: [5, 11, 17], inset: 1, lean: 'mirrored' }],
        },
      ],
      end: 'hold',
    },
  ],
};

const made = plan(scarf);
const parts: readonly PlannedPart[] = made.ok ? made.value.parts : [];

export function MapPage() {
  const [looked, setLooked] = useState<RowPlace>();
  const [worked, setWorked] = useState(10);
  const [part] = parts;
  return (
    <Screen title="Map">
      <button type="button" onClick={() => setWorked(worked + 1)}>
        One more row
      </button>
      <p data-looked={looked?.row}>{looked ? `Row ${looked.row}` : 'None'}</p>
      <PanelMap
        label="Scarf"
        parts={parts}
        worked={[worked]}
        current={0}
        looked={looked}
        onRead={setLooked}
        others={[{ name: 'Other scarf', isBefore: false, parts, worked: [20] }]}
      />
      {part && <Ladder rungs={rowsAhead(part.rows, worked)} onRead={(row) => setLooked({ part: 0, row })} />}
      <PieceThumb parts={parts} worked={[worked]} label="Scarf, small" />
      {rows <= 40 && <PrintSheet garment="Scarf" piece="Scarf" parts={parts} makes={1} />}
    </Screen>
  );
}
