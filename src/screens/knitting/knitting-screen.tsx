import './knitting.css';
import { useEffect, useId, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { lookAtRow, openMake } from '../../app/intents/knit.ts';
import { hrefTo, makeAt, type Route } from '../../app/routes.ts';
import { settings } from '../../app/settings.ts';
import {
  garmentInHand,
  type InHand,
  inHand,
  locked,
  looking,
  readFault,
  restDue,
  rowNow,
  storedRows,
} from '../../app/state.ts';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { LiveRegion } from '../../ui/live/live-region.tsx';
import { ProgressBar } from '../../ui/progress/progress-bar.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import {
  Ahead,
  LegendSheet,
  LengthNotice,
  NothingHere,
  PartEnd,
  PlaceMap,
  RestNotice,
  RowNotes,
  RowsSheet,
  ToolsSheet,
  useNothingHere,
  useRestAfterPaint,
} from './after-paint.ts';
import { Late } from './late.tsx';
import { PadFoot } from './pad-foot.tsx';
import { RowCard } from './row-card.tsx';
import { saysMakeInHand, saysSection, saysWholeRow } from './says-place.ts';
import { SetUp } from './set-up.tsx';
import { useDevices, useVoice } from './use-devices.ts';

export default function KnittingScreen({ route }: { readonly route: Route }) {
  useRestAfterPaint();
  const make = makeAt(route);
  const asked = route.query.get('row');
  // asked for before the frame is painted, not after it
  useLayoutEffect(() => {
    void openMake(make).then(() => lookAtRow(asked === null ? undefined : Number(asked)));
    return leave;
  }, [make, asked]);
  const now = inHand.value;
  const isNothing = now === null || readFault.value !== undefined;
  useNothingHere(isNothing);
  if (isNothing) return <NothingHere fault={readFault.value} />;
  return now?.make === make ? <Knitting now={now} /> : <div class="knitting-waits" />;
}

function leave(): void {
  lookAtRow(undefined);
  locked.value = false;
}

function Knitting({ now }: { readonly now: InHand }) {
  const [sheet, setSheet] = useState<SheetName>();
  const map = useRef<HTMLDivElement>(null);
  const rowId = useId();
  const title = useTitle(now);
  useGarmentAfterPaint(now);
  const read = looking.value === undefined ? rowNow.value : now.part.rows[looking.value - 1];
  const spoken = read ? saysWholeRow(now.part, read) : say('knitting.announceEnd', { part: title });
  useArrival(`${title} · ${now.garment.name}`);
  useDevices(title);
  useVoice(spoken, storedRows.value);
  const sheets = useSheets({
    now,
    row: read,
    sentence: spoken,
    open: sheet,
    onClose: () => setSheet(undefined),
  });
  // what stays as it is from row to row is not gone through again with each
  const keys = useMemo(() => <HeadKeys onTools={() => setSheet('tools')} />, []);
  const foot = useMemo(() => <PadFoot rowId={rowId} onRows={() => setSheet('rows')} />, []);
  return (
    <div class={`knitting knitting-${settings.value.hand}${locked.value ? ' knitting-locked' : ''}`}>
      <Screen
        title={title}
        over={now.garment.name}
        back={locked.value ? undefined : backTo(now)}
        actions={keys}
        foot={foot}
      >
        <LiveRegion text={spoken} again={storedRows.value} />
        {restDue.value && <RestNotice />}
        <Progress now={now} />
        {now.place.rows === 0 && looking.value === undefined && <SetUp part={now.part} />}
        {read ? (
          <RowCard
            part={now.part}
            row={read}
            worked={now.place.rows}
            id={rowId}
            onMap={() => map.current?.scrollIntoView({ behavior: 'smooth' })}
            onLegend={() => setSheet('legend')}
          />
        ) : (
          <PartEnd now={now} title={title} />
        )}
        {looking.value === undefined && <LengthNotice />}
        {read && <RowNotes now={now} row={read.n} />}
        {read && <Late value={read}>{(row) => <Ahead part={now.part} row={row} />}</Late>}
        <div ref={map}>
          <Late value={now} frames={5}>
            {(at) => <PlaceMap now={at} />}
          </Late>
        </div>
      </Screen>
      {sheets}
    </div>
  );
}

type SheetName = 'rows' | 'tools' | 'legend';

interface SheetsProps {
  readonly now: InHand;
  readonly row: PlannedRow | undefined;
  readonly sentence: string;
  readonly open: SheetName | undefined;
  readonly onClose: () => void;
}

/** While none is open a new row does not draw them anew. */
function useSheets(props: SheetsProps) {
  const { now, row, sentence, open, onClose } = props;
  return useMemo(
    () => (
      <>
        <RowsSheet now={now} open={open === 'rows'} onClose={onClose} />
        {row && <LegendSheet row={row} open={open === 'legend'} onClose={onClose} />}
        <ToolsSheet open={open === 'tools'} sentence={sentence} onClose={onClose} />
      </>
    ),
    open === undefined ? [] : [now, row, sentence, open],
  );
}

const backTo = ({ place, garment }: InHand) => ({
  href: hrefTo('garment', { garment: place.garment }),
  label: say('knitting.backTo', { garment: garment.name }),
});

/** The copies of a piece are known only once the garment is read. */
function useTitle(now: InHand): string {
  const view = garmentInHand.value;
  const piece =
    view?.garment.id === now.place.garment ? view.pieces.find(({ id }) => id === now.place.piece) : undefined;
  return saysMakeInHand(now.part, now.place, piece?.makes.length);
}

/** The rest of the garment is read when the row is on the screen, and again at the end of a part. */
function useGarmentAfterPaint(now: InHand): void {
  const { garment, rows, total } = now.place;
  const done = rows >= total;
  useEffect(() => {
    const frame = requestAnimationFrame(() => setTimeout(() => void openRest(garment)));
    return () => cancelAnimationFrame(frame);
  }, [garment, done]);
}

const openRest = async (garment: string): Promise<void> =>
  (await import('../../app/intents/garments.ts')).openGarmentInHand(garment);

function HeadKeys({ onTools }: { readonly onTools: () => void }) {
  if (locked.value) return null;
  const lock = () => {
    locked.value = true;
  };
  return (
    <>
      <IconButton icon="lock" label={say('knitting.lock')} onPress={lock} />
      <IconButton icon="more" label={say('knitting.tools')} onPress={onTools} />
    </>
  );
}

function Progress({ now }: { readonly now: InHand }) {
  const { rows, total } = now.place;
  const row = rowNow.value;
  const left = total - rows - 1;
  return (
    <div class="knitting-progress">
      {row && (
        <p class="knitting-row">
          <strong>{say('knitting.rowOf', { row: row.n, rows: total })}</strong>
          <span>
            {saysSection(now.part, row)} ·{' '}
            {left === 0 ? say('knitting.lastRow') : say('knitting.toGo', { count: left })}
          </span>
        </p>
      )}
      <Late value={now} firstNow frames={2}>
        {strip}
      </Late>
    </div>
  );
}

/** It grows by a hair with each row, and is looked at seldom. */
const strip = ({ part, place: { rows, total } }: InHand) => (
  <ProgressBar
    label={part.name}
    valueText={say('knitting.rowOf', { row: rows, rows: total })}
    value={rows}
    max={total}
    marks={part.sections.slice(1).map(({ first }) => first - 1)}
  />
);
