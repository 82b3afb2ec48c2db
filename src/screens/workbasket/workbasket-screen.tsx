import './workbasket.css';
import { onShelf, type Shelf, shelves } from '../../app/garments/basket.ts';
import { openBasket } from '../../app/garments/open-garments.ts';
import { hrefTo } from '../../app/routes.ts';
import { type BasketEntry, basket, lastKnitted, missing, readFault } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { useFresh } from '../use-fresh.ts';
import { DraftCards } from './draft-cards.tsx';
import { GarmentCard } from './garment-card.tsx';
import { KeptFile } from './kept-file.tsx';
import { Missing } from './missing.tsx';
import { QuietLine, useQuietLine } from './quiet-line.ts';
import { RowInHand } from './row-in-hand.tsx';
import { UpdateNotice } from './update-notice.tsx';
import { useWayBack, WayBack } from './way-back.ts';
import { WaysToBegin } from './ways-to-begin.tsx';

const shelfTitles = {
  'on the needles': 'workbasket.onNeedles',
  resting: 'workbasket.resting',
  'to begin': 'workbasket.toBegin',
  finished: 'workbasket.finished',
} as const satisfies Readonly<Record<Shelf, string>>;

export default function WorkbasketScreen() {
  useFresh(openBasket, {});
  useWayBack();
  useQuietLine();
  const fault = readFault.value;
  useArrival(
    say('workbasket.title'),
    fault !== undefined || basket.value !== undefined || missing.value !== undefined,
  );
  // before what is told: her row stands where she looks for it, and no notice pushes its key over its words
  const isThere = !fault && missing.value === undefined && basket.value?.length !== 0;
  const top = isThere ? lastKnitted.value : undefined;
  return (
    <Screen
      title={say('workbasket.title')}
      actions={<IconButton icon="settings" label={say('workbasket.settings')} href={hrefTo('settings')} />}
    >
      {top && <RowInHand now={top} />}
      <UpdateNotice />
      <WayBack />
      <KeptFile />
      {fault ? <Unread sentence={saysFault(fault)} /> : <Basket />}
      {!fault && missing.value === undefined && basket.value && (
        <QuietLine isEmpty={basket.value.length === 0} />
      )}
    </Screen>
  );
}

function Basket() {
  const entries = basket.value;
  const top = lastKnitted.value;
  const now = Date.now();
  if (missing.value !== undefined) return <Missing known={missing.value} />;
  if (entries?.length === 0) return <Empty />;
  return (
    <>
      {entries &&
        shelves.map((shelf) => (
          <ShelfOf key={shelf} shelf={shelf} entries={onShelf(shelf, entries, now, top?.place.garment)} />
        ))}
      <DraftCards />
      {entries && (
        <section class="shelf shelf-ways">
          <Shows what="ways" />
          <h2>{say('workbasket.anotherOne')}</h2>
          <WaysToBegin sample={!entries.some(({ garment }) => garment.id === 'sample')} />
        </section>
      )}
    </>
  );
}

function ShelfOf({ shelf, entries }: { readonly shelf: Shelf; readonly entries: readonly BasketEntry[] }) {
  if (entries.length === 0) return null;
  return (
    <section class="shelf">
      <h2>{say(shelfTitles[shelf])}</h2>
      <ul role="list" class="shelf-list">
        {entries.map((entry) => (
          <li key={entry.garment.id}>
            <GarmentCard entry={entry} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Empty() {
  return (
    <>
      <div class="empty">
        <p>{say('workbasket.empty')}</p>
        <p>{say('workbasket.emptyHow')}</p>
      </div>
      <DraftCards />
      <WaysToBegin sample />
    </>
  );
}

/** A basket that could not be read is not an empty one. */
function Unread({ sentence }: { readonly sentence: string }) {
  const actions = <Button onPress={() => location.reload()}>{say('workbasket.reload')}</Button>;
  return (
    <Notice kind="fault" title={say('workbasket.readFailed')} actions={actions} live>
      <p>{sentence}</p>
      <p>{say('workbasket.readFailedHelp')}</p>
    </Notice>
  );
}
