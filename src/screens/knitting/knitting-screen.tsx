import './knitting.css';
import './room.css';
import { computed } from '@preact/signals';
import { useId, useLayoutEffect, useState } from 'preact/hooks';
import { lookAtRow, openMake } from '../../app/in-hand/knit.ts';
import { keyInHand } from '../../app/in-hand/make-in-hand.ts';
import {
  atStart,
  isLooking,
  noSuchMake,
  partInHand,
  type Reading,
  reading,
  summaryInHand,
  toWork,
} from '../../app/in-hand/reading.ts';
import { hrefTo, makeAt, type Route } from '../../app/routes.ts';
import { settings } from '../../app/settings/settings.ts';
import { garmentInHand, type InHand, inHand, locked, readFault, storedRows } from '../../app/state.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { Late } from '../../pace/late.tsx';
import { type MakeId, parseMakeKey } from '../../progress/log.ts';
import type { GarmentSummary } from '../../store/records.ts';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { LiveRegion } from '../../ui/live/live-region.tsx';
import { ProgressBar } from '../../ui/progress/progress-bar.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import {
  Ahead,
  BeforeRow,
  LengthNotice,
  NothingHere,
  OverRow,
  PartEnd,
  PlaceMap,
  ReadAhead,
  ReadNotes,
  Sheets,
  useNothingHere,
  useRestAfterPaint,
} from './after-paint.ts';
import { PadFoot } from './pad-foot.tsx';
import { RowCard, saysRowOf } from './row-card.tsx';
import { saysMakeInHand, saysReading, saysSection } from './says-place.ts';
import { SetUp } from './set-up.tsx';
import type { SheetName } from './sheets.tsx';
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
  const isNothing = noSuchMake.value || readFault.value !== undefined;
  useNothingHere(isNothing);
  if (isNothing) return <NothingHere fault={readFault.value} />;
  const id = keyInHand.value === make ? parseMakeKey(make) : undefined;
  const part = partInHand.value;
  const garment = summaryInHand.value;
  if (!id || !part || !garment) return <div class="knitting-waits" />;
  return <Knitting id={id} part={part} garment={garment} />;
}

function leave(): void {
  lookAtRow(undefined);
  locked.value = false;
}

interface KnittingProps {
  readonly id: MakeId;
  readonly part: PlannedPart;
  readonly garment: GarmentSummary;
}

/** The frame of it all. It is not drawn anew with a row: what a row changes hears of it by itself. */
function Knitting({ id, part, garment }: KnittingProps) {
  const [sheet, setSheet] = useState<SheetName>();
  const rowId = useId();
  const title = useTitle(id, part);
  useArrival(`${title} · ${garment.name}`);
  useDevices(title);
  const back = {
    href: hrefTo('garment', { garment: id.garment }),
    label: say('knitting.backTo', { garment: garment.name }),
  };
  return (
    <div class={`knitting knitting-${settings.value.hand}${locked.value ? ' knitting-locked' : ''}`}>
      <Screen
        title={title}
        over={garment.name}
        back={locked.value ? undefined : back}
        actions={<HeadKeys onTools={() => setSheet('tools')} />}
        foot={<PadFoot rowId={rowId} onRows={() => setSheet('rows')} />}
      >
        <Spoken title={title} />
        <OverRow />
        <Progress />
        <Late of={before} firstNow turn="set-up">
          {(of) => <SetUp part={of} />}
        </Late>
        <RowInHand title={title} id={rowId} onLegend={() => setSheet('legend')} />
        {!isLooking.value && <LengthNotice />}
        <Late of={inHand} turn="notes">
          {(now) => <ReadNotes now={now} />}
        </Late>
        <Ahead />
        <div>
          <Late of={inHand} turn="map">
            {(at) => <PlaceMap now={at} />}
          </Late>
        </div>
      </Screen>
      <Sheets open={sheet} title={title} onClose={() => setSheet(undefined)} />
    </div>
  );
}

/** The part before its first row. What goes with that row moves all that lies below it: not in the row's own frame. */
const before = computed(() => (atStart.value && !isLooking.value ? partInHand.value : undefined));

/** By the live region, and by a voice where she wants one. Not late: a phone in a pocket paints no frame. */
function Spoken({ title }: { readonly title: string }) {
  const text = saysReading(reading.value, title);
  const stored = storedRows.value;
  useVoice(text, stored);
  return <LiveRegion text={text} again={stored} />;
}

interface RowInHandProps {
  readonly title: string;
  readonly id: string;
  readonly onLegend: () => void;
}

function RowInHand({ title, id, onLegend }: RowInHandProps) {
  const read = toWork.value;
  if (!read) return inHand.value ? <PartEnd now={inHand.value} title={title} /> : null;
  return (
    <div class="row-place">
      <ReadAhead />
      <BeforeRow read={read} />
      <RowCard part={read.part} row={read.row} id={id} onLegend={onLegend} />
    </div>
  );
}

/** The copies of a piece are known only once the garment is read. */
function useTitle({ garment, piece, make }: MakeId, part: PlannedPart): string {
  const view = garmentInHand.value;
  const known = view?.garment.id === garment ? view.pieces.find(({ id }) => id === piece) : undefined;
  return saysMakeInHand(part, make, known?.recipe);
}

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

/** Which row is read, and where in the part that is; the strip shows the place. */
function Progress() {
  const read = reading.value;
  return (
    <div class="knitting-progress">
      {read && (
        <div class="knitting-row">
          <strong>{saysRowOf(read.part, read.row)}</strong>
          <span>
            {saysSection(read.part, read.row)} · {isLooking.value ? say('knitting.onlyRead') : saysToGo(read)}
          </span>
        </div>
      )}
      <Late of={inHand} firstNow turn="progress">
        {(now) => <Strip {...now} />}
      </Late>
    </div>
  );
}

/** Of the section whose name stands before it: what is left of the part its number tells. */
function saysToGo({ part, row }: Reading): string {
  const left = (part.sections[row.section]?.last ?? 0) - row.n;
  return left > 0 ? say('knitting.toGo', { count: left }) : say('knitting.lastRow');
}

/** It grows by a hair with each row, and is looked at seldom. */
const Strip = ({ part, place: { rows, total } }: InHand) => (
  <ProgressBar
    label={part.name}
    valueText={say('knitting.rowOf', { row: rows, rows: total })}
    value={rows}
    max={total}
    marks={part.sections.slice(1).map(({ first }) => first - 1)}
  />
);
