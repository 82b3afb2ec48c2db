import { useEffect, useMemo, useState } from 'preact/hooks';
import { inGauge } from '../../app/garments/in-gauge.ts';
import type { Gauge } from '../../knit/gauge.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { Shows } from '../../ui/screen/shows.tsx';
import { About } from './about-link.tsx';
import { type Designed, readDesign } from './designed.ts';
import { Fit } from './fit.tsx';
import { HerSwatch } from './her-swatch.tsx';
import { Keep, saysChange } from './keep-link.tsx';

/** A garment that came in a link: in her size where its design came with it, else in her gauge. */
export function OpenedLink({ passed }: { readonly passed: PassedOn }) {
  const [designed, setDesigned] = useState<Designed | 'none'>();
  const [hers, setHers] = useState(passed);
  useEffect(() => {
    void readDesign(passed).then(setDesigned);
  }, [passed]);
  return (
    <div class="pass-on pass-on-opened">
      <Shows what="opened-link" />
      <About garment={hers} />
      <div class="pass-on-hers">
        {designed === 'none' && <InGauge garment={passed} onMade={setHers} />}
        {typeof designed === 'object' && <Fit passed={passed} designed={designed} onMade={setHers} />}
      </div>
    </div>
  );
}

interface InGaugeProps {
  readonly garment: PassedOn;
  /** what it comes to in her gauge: that is drawn */
  readonly onMade: (garment: PassedOn) => void;
}

function InGauge({ garment, onMade }: InGaugeProps) {
  const asked = garment.pieces.find((piece) => piece.gauge)?.gauge;
  const [gauge, setGauge] = useState<Partial<Gauge>>(asked ?? {});
  const mine = useMemo(() => inGauge(garment, asked, gauge), [garment, asked, gauge]);
  useEffect(() => onMade(mine.ok ? mine.value : garment), [mine, garment, onMade]);
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
