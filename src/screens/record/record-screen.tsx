import './record.css';
import { useState } from 'preact/hooks';
import { asMade } from '../../app/garments/as-made.ts';
import { keepGarment } from '../../app/garments/keep-garment.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo, type Route } from '../../app/routes.ts';
import type { GarmentView, MakeView, PieceView } from '../../app/state.ts';
import { readOr, store } from '../../app/store.ts';
import type { Fault } from '../../knit/fault.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { LogEntry } from '../../progress/log.ts';
import { makeRecord } from '../../progress/make-record.ts';
import type { GarmentRecord, PlaceRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { saysGrams } from '../../words/measures.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysDate, saysDuration } from '../../words/time.ts';
import { GarmentPage } from '../garment-page.tsx';
import { saysMake } from '../says-make.ts';
import { useFresh } from '../use-fresh.ts';
import { DesignAgain } from './design-again.tsx';

/** What was really knitted: read off the log, ready to be knitted again. */
export default function RecordScreen({ route }: { readonly route: Route }) {
  return (
    <GarmentPage route={route} title={say('record.title')}>
      {(view) => <WholeRecord view={view} />}
    </GarmentPage>
  );
}

function WholeRecord({ view }: { readonly view: GarmentView }) {
  const [entries, setEntries] = useState<readonly LogEntry[]>();
  const { id } = view.garment;
  useFresh(async () => setEntries(readOr(await (await store()).entriesOfGarment(id))), { garment: id });
  if (entries === undefined) return <p>{say('record.reading')}</p>;
  const makes = view.pieces.flatMap((piece) => piece.makes.map((make) => ({ piece, make })));
  const isBegun = ({ places }: MakeView) =>
    places.some(({ rows, id }) => rows > 0 && entries.some((e) => e.make === id));
  const waiting = makes.filter(({ make }) => !isBegun(make));
  return (
    <div class="record">
      <Shows what="record" />
      <div class="record-made">
        {makes
          .filter(({ make }) => isBegun(make))
          .map(({ piece, make }) => (
            <MakeCard
              key={`${piece.id} ${make.make}`}
              piece={piece}
              make={make}
              garment={view.garment}
              entries={entries}
            />
          ))}
      </div>
      <div class="record-more">
        {waiting.length > 0 && (
          <p>
            {say('record.waiting', {
              list: saysList(
                waiting.map(({ piece, make }) => saysMake(piece.name, '', make.make, piece.recipe)),
              ),
            })}
          </p>
        )}
        <Again view={view} />
        <DesignAgain design={view.garment.design} />
      </div>
    </div>
  );
}

interface MakeCardProps {
  readonly piece: PieceView;
  readonly make: MakeView;
  readonly garment: GarmentRecord;
  readonly entries: readonly LogEntry[];
}

function MakeCard({ piece, make, garment, entries }: MakeCardProps) {
  const title = saysMake(piece.name, '', make.make, piece.recipe);
  const taken = garment.taken?.find((t) => t.piece === piece.name && t.make === make.make);
  return (
    <Card label={title}>
      <h2>{title}</h2>
      {make.places.map((place, i) => {
        const part = make.parts[i];
        return (
          part &&
          place.rows > 0 && (
            <PartLines
              key={place.id}
              part={part}
              place={place}
              entries={entries}
              alone={make.places.length === 1}
            />
          )
        );
      })}
      {taken && <p>{say('record.took', { grams: saysGrams(taken.grams) })}</p>}
    </Card>
  );
}

interface PartLinesProps {
  readonly part: PlannedPart;
  readonly place: PlaceRecord;
  readonly entries: readonly LogEntry[];
  readonly alone: boolean;
}

function PartLines({ part, place, entries, alone }: PartLinesProps) {
  const record = makeRecord(place.id, entries);
  const { from, to } = record;
  const worked = part.rows.slice(0, place.rows);
  const needles = [...new Set(worked.map((row) => row.needle))].map(saysNeedle);
  return (
    <>
      {!alone && <h3>{part.name}</h3>}
      {place.rows > 0 && (
        <ul class="record-lines">
          <li>{say('record.rows', { rows: place.rows, total: place.total })}</li>
          {from !== undefined && to !== undefined && <li>{saysDays(from, to)}</li>}
          {record.workedMs !== undefined && (
            <li>{say('record.time', { time: saysDuration(record.workedMs) })}</li>
          )}
          {needles.length > 0 && <li>{say('record.needles', { list: saysList(needles) })}</li>}
          {record.ripped > 0 && <li>{say('record.ripped', { count: record.ripped })}</li>}
          {record.reworked > 0 && <li>{say('record.reworked', { count: record.reworked })}</li>}
          {record.checked.length > 0 && (
            <li>
              {say('record.checked', {
                count: record.checked.length,
                list: saysList(record.checked.map(String)),
              })}
            </li>
          )}
          {record.notes.map((note) => (
            <li key={`${note.row} ${note.text}`}>{say('record.note', note)}</li>
          ))}
        </ul>
      )}
    </>
  );
}

const saysDays = (from: number, to: number): string =>
  saysDate(from) === saysDate(to)
    ? say('record.day', { from: saysDate(from) })
    : say('record.days', { from: saysDate(from), to: saysDate(to) });

function Again({ view }: { readonly view: GarmentView }) {
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const again = async () => {
    const kept = await keepGarment(asMade(view, say('record.againName', { garment: view.garment.name })));
    if (kept.ok) goTo(hrefTo('garment', { garment: kept.value }));
    else setFaults(kept.faults);
  };
  return (
    <div>
      <p>{say('record.againHelp')}</p>
      <Button icon="plus" onPress={() => void again()}>
        {say('record.again')}
      </Button>
      {faults.length > 0 && (
        <Notice kind="fault" title={say('record.cannot')} live>
          {faults.map((fault) => (
            <p key={fault.code}>{saysFault(fault)}</p>
          ))}
        </Notice>
      )}
    </div>
  );
}
