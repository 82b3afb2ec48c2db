import { useState } from 'preact/hooks';
import { setPlace } from '../../app/in-hand/count.ts';
import { knownFrom } from '../../app/in-hand/known.ts';
import type { InHand } from '../../app/state.ts';
import { ridgeAt, rowOfRidge } from '../../knit/piece/ridges.ts';
import { type RipBack, ripBack } from '../../knit/piece/rip-back.ts';
import { Button } from '../../ui/button/button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysNeeded } from '../../words/count.ts';
import { saysSide } from '../../words/craft.ts';
import { saysFault } from '../../words/fault.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysList, saysNumber } from '../../words/numbers.ts';
import { saysRidgesIn, saysRowRidge } from '../../words/ridge.ts';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import type { CountPageProps } from './count-page.ts';
import { WaysLeft } from './ways-left.tsx';

/** Where to, what comes off, what is on the needle then; and the place follows once it is done. */
export function RipPage({ now, entries, query }: CountPageProps) {
  const { rows } = now.place;
  const { firm, lifelines } = knownFrom(entries, now.part);
  const asked = query.get('to');
  const below = lifelines.filter((row) => row < rows).reverse();
  const ground = firm !== undefined && firm.row < rows ? firm.row : undefined;
  const [to, setTo] = useState<number | undefined>(
    asked === null ? (below[0] ?? ground ?? Math.max(0, rows - 2)) : Number(asked),
  );
  const [done, setDone] = useState<RipBack>();
  const ridge = ridgeAt(now.part, rows);
  if (done) return <Ripped now={now} done={done} />;
  if (rows === 0)
    return (
      <>
        <WaysLeft now={now} />
        <Notice kind="note">{say('count.ripNothing')}</Notice>
      </>
    );
  return (
    <>
      <WaysLeft now={now} />
      {below.map((row) => (
        <Button key={row} icon="lifeline" wide onPress={() => setTo(row)}>
          {say('count.ripLifeline', { row })}
        </Button>
      ))}
      {ground !== undefined && (
        <Button icon="flag" wide onPress={() => setTo(ground)}>
          {say('count.ripFirm', { row: ground })}
        </Button>
      )}
      <NumberField
        label={say('count.ripTo')}
        hint={say('count.ripToHint', { rows: saysRowRidge(now.part, rows) })}
        min={0}
        max={rows}
        needs={saysNeeded(0, rows)}
        value={to}
        onChange={setTo}
      />
      {ridge !== undefined && (
        <NumberField
          label={say('count.ripToRidges')}
          min={0}
          max={ridge}
          needs={saysNeeded(0, ridge)}
          value={to === undefined ? undefined : (ridgeAt(now.part, to) ?? 0)}
          onChange={(ridges) => setTo(ridges === undefined ? undefined : rowOfRidge(now.part, rows, ridges))}
        />
      )}
      {to !== undefined && <Preview now={now} to={to} lifelines={lifelines} onDone={setDone} />}
    </>
  );
}

interface PreviewProps {
  readonly now: InHand;
  readonly to: number;
  readonly lifelines: readonly number[];
  readonly onDone: (done: RipBack) => void;
}

function Preview({ now, to, lifelines, onDone }: PreviewProps) {
  const made = ripBack(now.part, now.place.rows, { to }, lifelines);
  if (!made.ok) {
    return (
      <Notice kind="warning" live>
        {made.faults.map(saysFault).join(' ')}
      </Notice>
    );
  }
  const rip = made.value;
  const finish = () => void setPlace(to, 'rip back').then((stored) => stored && onDone(rip));
  return (
    <section class="card card-place count-card" role="status">
      <p class="count-big">
        {say('count.ripPull', { count: rip.rows, ridges: saysRidgesIn(now.part, to, now.place.rows) })}
      </p>
      <p class="count-big">
        <strong>{say('count.ripCount', { count: rip.count })}</strong>
      </p>
      {rip.uncertain > 0 && <p>{say('count.ripUncertain', { count: rip.uncertain })}</p>}
      {rip.next && (
        <p>
          {say('count.ripNext', {
            row: saysRowRidge(now.part, rip.next.n),
            side: saysSide(rip.nextSide, true),
          })}
        </p>
      )}
      <Needle mm={rip.needle} />
      {rip.shaping.length > 0 && (
        <p>
          {say('count.ripShaping', {
            count: rip.shaping.length,
            list: saysList(rip.shaping.map((row) => saysNumber(row))),
          })}
        </p>
      )}
      {rip.groups.length > 0 && (
        <p>{say('count.ripGroups', { count: rip.groups.reduce((sum, group) => sum + group.stitches, 0) })}</p>
      )}
      <p class="count-soft">{say('count.ripYarn', { stitches: rip.stitches })}</p>
      {rip.stops
        .filter((stop) => stop.row !== to)
        .map((stop) => (
          <p key={stop.why + stop.row}>
            {say(stop.why === 'lifeline' ? 'count.ripStopLifeline' : 'count.ripStopPlain', { row: stop.row })}
          </p>
        ))}
      <Button kind="main" icon="rip" wide onPress={finish}>
        {say('count.ripDone')}
      </Button>
    </section>
  );
}

/** Below a change of needle the other one comes again; no card before the row says so, since no row changes it. */
const Needle = ({ mm }: { readonly mm: number | undefined }) =>
  mm === undefined ? null : (
    <p>
      <strong>{say('count.ripNeedle', { needle: saysNeedle(mm) })}</strong>
    </p>
  );

function Ripped({ now, done }: { readonly now: InHand; readonly done: RipBack }) {
  return (
    <>
      <Notice kind="done" live>
        {say('count.ripSaid', { rows: done.to, count: done.count })}
        <Needle mm={done.needle} />
      </Notice>
      <Button kind="main" wide href={hrefToMake(now.make)}>
        {say('count.backToRow')}
      </Button>
    </>
  );
}
