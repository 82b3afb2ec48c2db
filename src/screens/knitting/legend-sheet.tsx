import { useEffect, useState } from 'preact/hooks';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import type { StitchName } from '../../knit/stitch.ts';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { type Gloss, openGlossary, stitchesIn } from '../../words/stitch-glossary.ts';

export interface LegendSheetProps {
  readonly row: PlannedRow;
  readonly open: boolean;
  readonly onClose: () => void;
}

/** What the row's abbreviations mean and how the stitches are made; the glossary is loaded when it is asked for. */
export function LegendSheet({ row, open, onClose }: LegendSheetProps) {
  const [gloss, setGloss] = useState<(name: StitchName) => Gloss>();
  useEffect(() => {
    if (open) void openGlossary().then((found) => setGloss(() => found));
  }, [open]);
  return (
    <Sheet open={open} title={say('knitting.legend')} onClose={onClose}>
      <dl class="legend">
        {gloss &&
          stitchesIn(row.steps).map((name) => (
            <div key={name}>
              <dt>
                <strong>{saysRow([{ work: name, times: 1 }], 'abbreviated')}</strong> {gloss(name).name}
              </dt>
              <dd>{gloss(name).how}</dd>
            </div>
          ))}
      </dl>
    </Sheet>
  );
}
