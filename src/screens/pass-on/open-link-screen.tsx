import './pass-on.css';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Collected, collectLink } from '../../app/garments/collect-link.ts';
import { inGauge } from '../../app/garments/in-gauge.ts';
import { keepGarment } from '../../app/garments/keep-garment.ts';
import { garmentInLink } from '../../app/garments/passing-on.ts';
import { piecesInLink } from '../../app/garments/pieces-in-link.ts';
import { goInstead } from '../../app/navigate.ts';
import { hrefTo, type Route } from '../../app/routes.ts';
import type { Fault, Result } from '../../knit/fault.ts';
import type { Gauge } from '../../knit/gauge.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { PieceThumb } from '../../ui/panel-map/piece-thumb.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { saysFabric } from '../../words/craft.ts';
import { saysFault } from '../../words/fault.ts';
import { gaugeSpanMm, saysLength } from '../../words/measures.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';

/** A garment that came in a link: shown first, turned to her swatch, and kept only when she says so. */
export default function OpenLinkScreen({ route }: { readonly route: Route }) {
  const text = route.at.text ?? '';
  const [read, setRead] = useState<Read>('reading');
  const stop = useRef(() => {});
  useEffect(() => {
    const collected = collectLink(text);
    if (!('text' in collected)) {
      setRead(collected);
      return undefined;
    }
    const reading = garmentInLink(collected.text);
    stop.current = reading.stop;
    let isShown = true;
    void reading.garment.then((garment) => isShown && setRead(garment ?? 'stopped'));
    return () => {
      isShown = false;
      reading.stop();
      setRead('reading');
    };
  }, [text]);
  const name = typeof read === 'object' && 'ok' in read && read.ok ? read.value.name : undefined;
  const title = name ?? say('passOn.openTitle');
  useArrival(title);
  const back = { href: hrefTo('workbasket'), label: say('passOn.toWorkbasket') };
  return (
    <Screen title={title} over={name && say('passOn.openTitle')} back={back}>
      <ReadLink read={read} stop={() => stop.current()} />
    </Screen>
  );
}

type Missing = Exclude<Collected, { readonly text: string }>;
type Read = Result<Garment> | Missing | 'reading' | 'stopped';

function ReadLink({ read, stop }: { readonly read: Read; readonly stop: () => void }) {
  if (read === 'reading')
    return (
      <p role="status">
        {say('passOn.reading')} <Button onPress={stop}>{say('passOn.stop')}</Button>
      </p>
    );
  if (read === 'stopped')
    return (
      <Notice kind="note" title={say('passOn.stopped')} live>
        {say('passOn.stoppedHelp')}
      </Notice>
    );
  if ('missing' in read)
    return (
      <Notice kind="note" title={say('passOn.partRead', { n: read.n, of: read.of })} live>
        {say('passOn.partsMissing', { list: saysList(read.missing.map(String)) })}
      </Notice>
    );
  return read.ok ? <Opened garment={read.value} /> : <Cannot faults={read.faults} />;
}

const Cannot = ({ faults }: { readonly faults: readonly Fault[] }) => (
  <Notice kind="fault" title={say('passOn.cannot')}>
    {faults.map((fault) => (
      <p key={fault.code}>{saysFault(fault)}</p>
    ))}
  </Notice>
);

/** A gauge is kept over 100 mm and typed over what she measures. */
const toType = (per100: number | undefined): number | undefined =>
  per100 === undefined ? undefined : Math.round(per100 * gaugeSpanMm()) / 100;
const typed = (count: number | undefined): number => ((count ?? 0) * 100) / gaugeSpanMm();

function Opened({ garment }: { readonly garment: Garment }) {
  const asked = garment.pieces.find((piece) => piece.gauge)?.gauge;
  const [gauge, setGauge] = useState<Partial<Gauge>>(asked ?? {});
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [busy, setBusy] = useState(false);
  const mine = useMemo(() => inGauge(garment, asked, gauge), [garment, asked, gauge]);
  const keep = async () => {
    if (!mine.ok) return;
    setBusy(true);
    const kept = await keepGarment(mine.value);
    setBusy(false);
    if (kept.ok) goInstead(hrefTo('garment', { garment: kept.value }));
    else setFaults(kept.faults);
  };
  const length = saysLength(gaugeSpanMm());
  return (
    <div class="pass-on">
      <About garment={garment} />
      {asked && (
        <Card label={say('passOn.yourSwatch')}>
          <h2>{say('passOn.yourSwatch')}</h2>
          <p>
            {say('passOn.openGauge', {
              stitches: toType(asked.stitches) ?? 0,
              rows: toType(asked.rows) ?? 0,
              length,
            })}
          </p>
          {asked.fabric && <p>{say('gauge.in', { fabric: saysFabric(asked.fabric) })}</p>}
          <p>{say('passOn.yourSwatchHint')}</p>
          <NumberField
            label={say('passOn.swatchStitches', { length })}
            decimals
            min={1}
            value={toType(gauge.stitches)}
            onChange={(v) => setGauge({ ...gauge, stitches: typed(v) })}
          />
          <NumberField
            label={say('passOn.swatchRows', { length })}
            decimals
            min={1}
            value={toType(gauge.rows)}
            onChange={(v) => setGauge({ ...gauge, rows: typed(v) })}
          />
          {mine.ok && <p aria-live="polite">{saysChange(garment, mine.value)}</p>}
        </Card>
      )}
      {!mine.ok && <Cannot faults={mine.faults} />}
      {faults.length > 0 && <Cannot faults={faults} />}
      <Button kind="main" disabled={!mine.ok || busy} onPress={() => void keep()}>
        {say(busy ? 'passOn.keeping' : 'passOn.keep')}
      </Button>
    </div>
  );
}

function About({ garment }: { readonly garment: Garment }) {
  const list = saysList(garment.pieces.map((piece) => piece.name));
  return (
    <div>
      <p>{say('passOn.openPieces', { count: garment.pieces.length, list })}</p>
      <Pictures garment={garment} />
      <ToSwatch garment={garment} />
      {garment.credits && <p>{say('passOn.openCredits', { credits: garment.credits })}</p>}
      {garment.licence && <p>{say('passOn.openLicence', { licence: garment.licence })}</p>}
      {garment.notes && <p>{garment.notes}</p>}
    </div>
  );
}

/** Each piece in its shape, with its size as it is planned. */
function Pictures({ garment }: { readonly garment: Garment }) {
  const drawn = useMemo(
    () => piecesInLink(garment).map((piece) => ({ ...piece, box: shapeOfPiece(piece.parts).box })),
    [garment],
  );
  const tallestMm = Math.max(0, ...drawn.map(({ box }) => box.height));
  return (
    <ul role="list" class="pass-on-pieces">
      {drawn.map(({ name, parts, box }) => (
        <li key={name}>
          <PieceThumb parts={parts} worked={parts.map((part) => part.rows.length)} tallestMm={tallestMm} />
          <span>
            <strong>{name}</strong>
            <br />
            {say('passOn.size', { width: saysLength(box.width), height: saysLength(box.height) })}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** In which fabric and on which needle a swatch is worth knitting: what the rows are in, most of them first. */
function ToSwatch({ garment }: { readonly garment: Garment }) {
  const rows = new Map<string, number>();
  for (const section of garment.pieces.flatMap(({ parts }) => parts.flatMap((part) => part.sections))) {
    const what = say('passOn.swatchIn', {
      fabric: saysFabric(section.fabric),
      needle: saysNeedle(section.needle),
    });
    rows.set(what, (rows.get(what) ?? 0) + section.rows);
  }
  const list = [...rows].sort((a, b) => b[1] - a[1]).map(([what]) => what);
  return (
    <>
      <h2>{say('passOn.toSwatch')}</h2>
      <ul>
        {list.map((what) => (
          <li key={what}>{what}</li>
        ))}
      </ul>
    </>
  );
}

const firstCastOn = (garment: Garment): number => {
  const from = garment.pieces[0]?.parts[0]?.from;
  return from && 'castOn' in from ? from.castOn : 0;
};

function saysChange(garment: Garment, mine: Garment): string {
  const was = firstCastOn(garment);
  const stitches = firstCastOn(mine);
  const same = mine.pieces.every((piece, i) => piece === garment.pieces[i]);
  return same || was === stitches ? say('passOn.asItIs') : say('passOn.changed', { stitches, was });
}
