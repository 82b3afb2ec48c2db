import { useEffect, useState } from 'preact/hooks';
import type { Reading } from '../../app/in-hand/reading.ts';
import { ownWordsOf } from '../../app/in-hand/row-now.ts';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import type { Side } from '../../knit/row/step.ts';
import { stitchesNamed } from '../../knit/row/stitches-of-steps.ts';
import type { StitchName } from '../../knit/stitch.ts';
import { Shows } from '../../ui/screen/shows.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { saysEdge, saysShaping, saysSide } from '../../words/craft.ts';
import type { Gloss } from '../../words/gloss.ts';
import { heldTogether, saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { openGlossary } from '../../words/stitch-glossary.ts';

export interface LegendSheetProps extends Reading {
  readonly open: boolean;
  readonly onClose: () => void;
}

/**
 * What the row's abbreviations mean and how the stitches are made, below its words, which the sheet may lie on; the
 * glossary is loaded when it is asked for.
 */
export function LegendSheet({ part, row, open, onClose }: LegendSheetProps) {
  const [gloss, setGloss] = useState<(name: StitchName | Side) => Gloss>();
  const { language, terms } = speech.value;
  useEffect(() => {
    if (open) void openGlossary().then((found) => setGloss(() => found));
  }, [open, language, terms]);
  return (
    <Sheet open={open} title={say('knitting.legend')} onClose={onClose}>
      <Shows what="legend" />
      <p class="legend-row" dir="auto">
        {heldTogether(ownWordsOf(part, row) ?? saysRow(row.steps))}
      </p>
      <dl class="legend">
        {gloss && (
          <>
            {stitchesNamed(row.steps).map((name) => (
              <Entry
                key={name}
                short={saysRow([{ work: name, times: 1 }], 'abbreviated')}
                gloss={gloss(name)}
              />
            ))}
            <Entry short={saysSide(row.side)} gloss={gloss(row.side)} />
            <WhichEdge row={row} />
          </>
        )}
      </dl>
    </Sheet>
  );
}

/** The row says where in it she shapes; which edge of the piece that is, is said here. */
function WhichEdge({ row }: { readonly row: PlannedRow }) {
  const edges = new Set(row.shaping.map(({ edge }) => edge));
  const [edge] = edges;
  if (edges.size !== 1 || (edge !== 'left' && edge !== 'right')) return null;
  return (
    <div>
      <dt>
        <strong>{saysShaping(row)}</strong>
      </dt>
      <dd>{say('lap.ofThePiece', { edge: saysEdge(edge) })}</dd>
    </div>
  );
}

function Entry({ short, gloss }: { readonly short: string; readonly gloss: Gloss }) {
  return (
    <div>
      <dt>
        <strong>{short}</strong> {gloss.name}
      </dt>
      <dd>{gloss.how}</dd>
    </div>
  );
}
