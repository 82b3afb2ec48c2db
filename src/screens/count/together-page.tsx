import { useState } from 'preact/hooks';
import { notesInHand } from '../../app/in-hand/before-row.ts';
import { finishRows, undoOn } from '../../app/in-hand/count.ts';
import { garmentInHand, type InHand } from '../../app/state.ts';
import { changesBefore } from '../../knit/piece/before-row.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { togetherOrder } from '../../knit/piece/together.ts';
import { coloursOf, isStriped } from '../../knit/yarn/stripes.ts';
import type { MakeKey } from '../../progress/log.ts';
import type { PlaceRecord } from '../../store/records.ts';
import type { RowMeant } from '../../store/store.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysShaping, saysSide, saysStitches } from '../../words/craft.ts';
import { saysFault } from '../../words/fault.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysNumber } from '../../words/numbers.ts';
import { saysRidge } from '../../words/ridge.ts';
import { heldTogether, saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { saysMark } from '../knitting/before-row.tsx';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';
import type { CountPageProps } from './count-page.ts';
import { ReadNotes } from './read-notes.ts';

interface Fellow {
  readonly key: MakeKey;
  readonly name: string;
  readonly part: PlannedPart;
  /** all parts of the make */
  readonly parts: readonly PlannedPart[];
  readonly place: PlaceRecord;
}

/** Two makes on one needle: each row in the order in which the needle meets them, one tap each or one for both. */
export function TogetherPage({ now, query }: CountPageProps) {
  const all = fellows();
  const others = all.filter(
    (one) => one.key !== now.make && one.place.rows < one.place.total && !growsFromOther(now, one),
  );
  const [chosen, setChosen] = useState(query.get('with') ?? nearest(now, others)?.key ?? '');
  const own = all.find(({ key }) => key === now.make);
  const other = others.find(({ key }) => key === chosen);
  if (!own || others.length === 0) return <Notice kind="note">{say('count.togetherNone')}</Notice>;
  return (
    <>
      <SelectField
        label={say('count.togetherWith')}
        value={chosen}
        options={others.map(({ key, name }) => ({ value: key, label: name }))}
        onChange={setChosen}
      />
      <ReadNotes now={now} />
      {other && <Needle pair={inNeedleOrder(own, other)} />}
    </>
  );
}

function fellows(): readonly Fellow[] {
  const pieces = garmentInHand.value?.pieces ?? [];
  return pieces.flatMap((piece) =>
    piece.makes.flatMap(({ parts, places, make }) =>
      parts.flatMap((part, i): Fellow[] => {
        const place = places[i];
        return place
          ? [{ key: place.id, name: saysMake(piece.name, part.name, make, piece.recipe), part, parts, place }]
          : [];
      }),
    ),
  );
}

/** Of one copy, a part and what grows from it are never on a needle at once; two shoulders are. */
const growsFromOther = ({ place, part }: InHand, other: Fellow): boolean =>
  other.place.piece === place.piece && other.place.make === place.make && other.part.parent !== part.parent;

/** The other copy of the same part, else another part of the same piece that begins as it does. */
function nearest(now: InHand, others: readonly Fellow[]): Fellow | undefined {
  const { piece, part, make } = now.place;
  const isCopy = (one: Fellow) => one.place.piece === piece && one.place.part === part;
  const isBeside = (one: Fellow) =>
    one.place.piece === piece && one.place.make === make && one.part.parent === now.part.parent;
  return others.find(isCopy) ?? others.find(isBeside) ?? others[0];
}

/** A row of it as it is shown. */
const meant = ({ key, place }: Fellow, row: number): RowMeant => ({ key, row, plan: place.plan });

/** With the right side facing the lower number lies at the right end. */
const inNeedleOrder = (a: Fellow, b: Fellow): readonly [Fellow, Fellow] =>
  a.place.part * 100 + a.place.make <= b.place.part * 100 + b.place.make ? [a, b] : [b, a];

/** What is done or known before a row of it, its colour and her notes on it. */
function saysBeside({ part, parts, place }: Fellow, row: PlannedRow): readonly string[] {
  const garment = garmentInHand.value?.garment;
  const colour =
    garment && isStriped(garment)
      ? coloursOf(garment, place.piece, parts, part, place.make)(row.n)
      : undefined;
  const notes =
    notesInHand.value?.notes.filter((note) => note.row === row.n && note.make === place.make) ?? [];
  return [
    ...changesBefore(part, row)
      .filter(({ kind }) => kind === 'needle')
      .map(saysMark),
    ...(colour === undefined ? [] : [say('lap.colour', { colour })]),
    ...notes.map(({ text }) => text),
  ].filter((said) => said !== '');
}

function Needle({ pair }: { readonly pair: readonly [Fellow, Fellow] }) {
  const order = togetherOrder(pair.map(({ part, place }) => ({ part, rows: place.rows })));
  const [behind, ahead] = [...pair].sort((a, b) => a.place.rows - b.place.rows) as [Fellow, Fellow];
  if (!order.ok && order.faults[0]?.code === 'not level') return <Apart behind={behind} ahead={ahead} />;
  if (!order.ok) {
    return (
      <Notice kind="warning" live>
        {order.faults.map(saysFault).join(' ')}
      </Notice>
    );
  }
  const { steps, side, level } = order.value;
  return (
    <>
      <p role="status">
        <strong>{say('count.togetherSide', { side: saysSide(side, true) })}</strong>{' '}
        {!level && say('count.togetherHalf', { behind: behind.name, ahead: ahead.name })}
      </p>
      <div class="count-pair">
        <Shows what="count-pair" />
        {steps.map(({ make, row }) => {
          const fellow = pair[make] as Fellow;
          const shaping = saysShaping(row);
          return (
            <Card key={fellow.key} tone={shaping === '' ? 'place' : 'shaping'} label={fellow.name}>
              <div class="count-card">
                <h2>{fellow.name}</h2>
                {shaping !== '' && <p>{shaping}</p>}
                <p class="count-soft">
                  {[saysNeedle(row.needle), saysRidge(fellow.part, row.n)].filter(Boolean).join(' · ')}
                </p>
                {saysBeside(fellow, row).map((said) => (
                  <p key={said}>
                    <strong>{said}</strong>
                  </p>
                ))}
                <p class="count-big" dir="auto">
                  {heldTogether(saysRow(row.steps))}
                </p>
                <p>
                  <strong class="count-after" aria-hidden="true">
                    {saysNumber(row.after)}
                  </strong>{' '}
                  <span class="count-soft" aria-hidden="true">
                    {say('knitting.afterRow', { count: row.after })}
                  </span>
                  <span class="spoken">{saysStitches(row.after)}</span>
                </p>
                <Button icon="check" wide onPress={() => void finishRows([meant(fellow, row.n)])}>
                  {say('count.togetherDone', { row: row.n, what: fellow.name })}
                </Button>
              </div>
            </Card>
          );
        })}
      </div>
      {level && steps.length > 1 && (
        <div class="count-bar">
          <Shows what="count-bar" />
          <Button
            kind="main"
            wide
            onPress={() => void finishRows(steps.map(({ make, row }) => meant(pair[make] as Fellow, row.n)))}
          >
            {say('count.togetherBoth')}
          </Button>
        </div>
      )}
      {pair
        .filter(({ place }) => place.rows > 0)
        .map(({ key, name, place }) => (
          <Button key={key} kind="quiet" icon="undo" onPress={() => void undoOn(place)}>
            {say('count.togetherUndo', { what: name })}
          </Button>
        ))}
    </>
  );
}

/** Too far apart for one needle, as after one of them was ripped back: which is to be knitted, and the way to its row. */
const Apart = ({ behind, ahead }: { readonly behind: Fellow; readonly ahead: Fellow }) => (
  <>
    <Notice kind="warning" live>
      {say('count.togetherApart', {
        behind: behind.name,
        ahead: ahead.name,
        rows: ahead.place.rows - behind.place.rows,
      })}
    </Notice>
    <Button icon="needle" href={hrefToMake(behind.key)}>
      {say('count.togetherAlone', { row: behind.place.rows + 1, what: behind.name })}
    </Button>
  </>
);
