import { useMemo, useState } from 'preact/hooks';
import { inGauge } from '../../app/garments/in-gauge.ts';
import type { Gauge } from '../../knit/gauge.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import { HerSwatch } from './her-swatch.tsx';
import { Keep, saysChange } from './keep-link.tsx';

/** A garment that came without its design: every piece counted anew in the gauge of her swatch. */
export function InHerGauge({ garment }: { readonly garment: Garment }) {
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
