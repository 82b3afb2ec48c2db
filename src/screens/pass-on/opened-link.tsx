import { useEffect, useState } from 'preact/hooks';
import { keepFromNowOn } from '../../app/start/keep-wanted.ts';
import { ok } from '../../knit/fault.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { say } from '../../words/say.ts';
import { later } from '../later.tsx';
import { About } from './about-link.tsx';
import { type Designed, readDesign } from './designed.ts';
import { Keep } from './keep-link.tsx';

/** What drafts a design again or counts pieces in another gauge is fetched with the first link that comes, and then kept. */
const Fit = later(async () => (await import('./fit.tsx')).Fit);
const InHerGauge = later(async () => (await import('./in-her-gauge.tsx')).InHerGauge);

const fetchBoth = async (): Promise<boolean> =>
  (await Promise.all([Fit.fetch(), InHerGauge.fetch()])).every((there) => there);

/** A garment that came in a link: in her size where its design came with it, else in her gauge; else as it is. */
export function OpenedLink({ passed }: { readonly passed: PassedOn }) {
  const [designed, setDesigned] = useState<Designed | 'none' | 'away'>();
  useEffect(() => {
    void Promise.all([readDesign(passed), fetchBoth()]).then(([found, isThere]) => {
      setDesigned(isThere ? found : 'away');
      if (isThere) void keepFromNowOn('fitting');
    });
  }, [passed]);
  return (
    <div class="pass-on">
      <About garment={passed} />
      {designed === 'away' && (
        <>
          <p role="status">{say('passOn.fitsWithNetwork')}</p>
          <Keep mine={ok(passed)} />
        </>
      )}
      {designed === 'none' && <InHerGauge garment={passed} />}
      {typeof designed === 'object' && <Fit passed={passed} designed={designed} />}
    </div>
  );
}
