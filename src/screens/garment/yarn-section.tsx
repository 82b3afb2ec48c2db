import { hrefTo } from '../../app/routes.ts';
import type { Swatch, Yarn } from '../../knit/piece/garment.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { saysFabric } from '../../words/craft.ts';
import { saysGrams, saysLength, saysYarnLength } from '../../words/measures.ts';
import { saysNeedle } from '../../words/needle.ts';
import { say } from '../../words/say.ts';
import { Photo } from './photo.tsx';

/** What it is made of, and the swatches its numbers rest on. */
export function YarnSection({ garment }: { readonly garment: GarmentRecord }) {
  const { yarns = [], swatches = [] } = garment;
  return (
    <section class="yarn">
      {yarns.length === 0 && <p>{say('garment.noYarn')}</p>}
      <ul role="list" class="yarn-list">
        {yarns.map((yarn) => (
          <li key={`${yarn.name} ${yarn.colour} ${yarn.dyeLot}`}>
            <strong>{yarn.name}</strong>
            <span class="garment-small">{saysYarn(yarn)}</span>
          </li>
        ))}
      </ul>
      <Button icon="yarn" href={hrefTo('yarn', { garment: garment.id })}>
        {say('garment.toYarn')}
      </Button>
      <Photo garment={garment} />
      {swatches.length > 0 && (
        <>
          <h3>{say('garment.swatch')}</h3>
          <ul role="list" class="yarn-list">
            {swatches.map((swatch) => (
              <li key={`${swatch.fabric} ${swatch.needle}`}>{saysSwatch(swatch)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function saysYarn({ fibre, colour, dyeLot, grams, metres, balls }: Yarn): string {
  const ball =
    grams !== undefined && metres !== undefined
      ? say('garment.ballOf', { grams: saysGrams(grams), length: saysYarnLength(metres) })
      : undefined;
  const facts = [
    fibre,
    colour,
    dyeLot === undefined ? undefined : say('garment.dyeLot', { lot: dyeLot }),
    balls === undefined ? undefined : say('garment.balls', { count: balls }),
    ball,
  ];
  return facts.filter(Boolean).join(' · ');
}

const saysSwatch = ({ fabric, needle, stitches, widthMm, rows, heightMm }: Swatch): string =>
  say('garment.swatchLine', {
    fabric: saysFabric(fabric),
    needle: saysNeedle(needle),
    stitches,
    width: saysLength(widthMm),
    rows,
    height: saysLength(heightMm),
  });
