import { useEffect, useMemo, useState } from 'preact/hooks';
import { inGauge } from '../../app/garments/in-gauge.ts';
import { keepFromNowOn } from '../../app/start/keep-wanted.ts';
import type { Gauge } from '../../knit/gauge.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { say } from '../../words/say.ts';
import { later } from '../later.tsx';
import { About } from './about-link.tsx';
import { type Designed, readDesign } from './designed.ts';
import { HerSwatch } from './her-swatch.tsx';
import { Keep, saysChange } from './keep-link.tsx';

/** What drafts a design again is fetched with the first one that comes, and then kept. */
const Fit = later(async () => (await import('./fit.tsx')).Fit);

/** A garment that came in a link: in her size where its design came with it, else in her gauge. */
export function OpenedLink({ passed }: { readonly passed: PassedOn }) {
  const [designed, setDesigned] = useState<Designed | 'none' | 'away'>();
  useEffect(() => {
    void readDesign(passed).then(async (found) => {
      const isAway = found !== 'none' && !(await Fit.fetch());
      setDesigned(isAway ? 'away' : found);
      if (found !== 'none' && !isAway) void keepFromNowOn('fitting');
    });
  }, [passed]);
  return (
    <div class="pass-on">
      <About garment={passed} />
      {designed === 'away' && <p role="status">{say('passOn.needsNetwork')}</p>}
      {(designed === 'none' || designed === 'away') && <InGauge garment={passed} />}
      {typeof designed === 'object' && <Fit passed={passed} designed={designed} />}
    </div>
  );
}

function InGauge({ garment }: { readonly garment: Garment }) {
  const asked = garment.pieces.find((piece) => piece.gauge)?.gauge;
  const [gauge, setGauge] = useState<Partial<Gauge>>(asked ?? {});
  const mine = useMemo(() => inGauge(garment, asked, gauge), [garment, asked, gauge]);
  return (
    <>
      {asked && (
        <HerSwatch
          asked={asked}
          gauge={gauge}
          onChange={setGauge}
          says={mine.ok ? saysChange(garment, mine.value) : undefined}
        />
      )}
      <Keep mine={mine} />
    </>
  );
}
