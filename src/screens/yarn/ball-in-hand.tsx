import { useState } from 'preact/hooks';
import type { GarmentView } from '../../app/state.ts';
import { gaugeIn, type PlannedPart } from '../../knit/piece/planned.ts';
import { type LastBall, lastBall } from '../../knit/yarn/last-ball.ts';
import { heldMetresPerGram, yarnPerStitch } from '../../knit/yarn/per-stitch.ts';
import { Card } from '../../ui/card/card.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysGrams } from '../../words/measures.ts';
import { say } from '../../words/say.ts';

interface InWork {
  readonly id: string;
  readonly label: string;
  readonly part: PlannedPart;
  readonly rows: number;
}

/** Grams on the scales against the rows left. */
export function BallInHand({ view }: { readonly view: GarmentView }) {
  const inWork = makesInWork(view);
  const [chosen, choose] = useState(inWork[0]?.id ?? '');
  const [grams, weigh] = useState<number | undefined>(undefined);
  const make = inWork.find((m) => m.id === chosen) ?? inWork[0];
  return (
    <Card label={say('yarn.ball')}>
      <h2>{say('yarn.ball')}</h2>
      {make === undefined ? (
        <p>{say('yarn.noneInWork')}</p>
      ) : (
        <>
          <p>{say('yarn.ballHint')}</p>
          <div class="yarn-pair">
            <SelectField
              label={say('yarn.ballMake')}
              value={make.id}
              options={inWork.map(({ id, label }) => ({ value: id, label }))}
              onChange={choose}
            />
            <NumberField
              label={say('yarn.ballLeft')}
              unit={say('yarn.unitGrams')}
              bare
              decimals
              min={0}
              value={grams}
              onChange={weigh}
            />
          </div>
          {grams !== undefined && <Verdict view={view} make={make} grams={grams} />}
        </>
      )}
    </Card>
  );
}

function makesInWork({ pieces }: GarmentView): InWork[] {
  return pieces.flatMap((piece) =>
    piece.makes.flatMap(({ make, parts, places }) =>
      places.flatMap((place, i): InWork[] => {
        const part = parts[i];
        if (part === undefined || place.rows >= place.total) return [];
        const no = piece.makes.length > 1 ? ` ${make}` : '';
        const label = part.name === piece.name ? `${piece.name}${no}` : `${piece.name}${no}: ${part.name}`;
        return [{ id: place.id, label, part, rows: place.rows }];
      }),
    ),
  );
}

function Verdict({
  view,
  make,
  grams,
}: {
  readonly view: GarmentView;
  readonly make: InWork;
  readonly grams: number;
}) {
  const found = judge(view, make, grams);
  if (found === undefined) return <Notice kind="note" title={say('yarn.ballUnknown')} live />;
  const figures = { part: make.label, grams: saysGrams(found.needed) };
  if (found.enough) return <Notice kind="done" title={say('yarn.ballEnough', figures)} live />;
  const title =
    found.lastRow === undefined
      ? say('yarn.ballNone', figures)
      : say('yarn.ballLasts', { ...figures, row: found.lastRow });
  return (
    <Notice kind="warning" title={title} live>
      {found.joinAt !== undefined && <p>{say('yarn.ballJoin', { row: found.joinAt })}</p>}
    </Notice>
  );
}

/** Undefined while the ball's weight or length is not known. */
function judge({ garment }: GarmentView, { part, rows }: InWork, grams: number): LastBall | undefined {
  const yarn = garment.yarns?.[0];
  const perGram = yarn && heldMetresPerGram(yarn);
  if (perGram === undefined) return undefined;
  const section = part.rows[rows]?.section ?? 0;
  const fabric = part.sections[section]?.fabric ?? 'stocking';
  const { mm } = yarnPerStitch(fabric, gaugeIn(part, section), garment.swatches, yarn);
  const mmPerGram = perGram * 1000;
  return lastBall(part, rows, grams, mm / mmPerGram, mmPerGram);
}
