import '../../ui/screen/columns.css';
import './pass-on.css';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Collected, collectLink } from '../../app/garments/collect-link.ts';
import { garmentInLink } from '../../app/garments/passing-on.ts';
import { hrefTo, type Route } from '../../app/routes.ts';
import type { Result } from '../../knit/fault.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { Cannot } from './cannot.tsx';
import { OpenedLink } from './opened-link.tsx';

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
type Read = Result<PassedOn> | Missing | 'reading' | 'stopped';

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
        <Codes of={read.of} missing={read.missing} />
        {say('passOn.partsMissing', { list: saysList(read.missing.map(String)) })}
      </Notice>
    );
  return read.ok ? (
    <OpenedLink passed={read.value} />
  ) : (
    <>
      <Cannot faults={read.faults} />
      <Button kind="main" wide href={hrefTo('workbasket')}>
        {say('passOn.toWorkbasket')}
      </Button>
    </>
  );
}

/** Each code as a tile: filled, it is read; open, it is still to be photographed. The words below say it too. */
const Codes = ({ of, missing }: { readonly of: number; readonly missing: readonly number[] }) => (
  <div class="pass-on-codes" aria-hidden="true">
    {Array.from({ length: of }, (_, i) => (
      <span key={i} class={missing.includes(i + 1) ? undefined : 'pass-on-code-read'}>
        {i + 1}
      </span>
    ))}
  </div>
);
