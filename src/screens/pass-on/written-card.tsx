import { useMemo } from 'preact/hooks';
import { inColours } from '../../app/garments/coloured-makes.ts';
import { garmentOf } from '../../app/garments/garment-of.ts';
import { hrefTo } from '../../app/routes.ts';
import { ok } from '../../knit/fault.ts';
import { workSize } from '../../knit/written/work-size.ts';
import { writeSizes } from '../../knit/written/write-sizes.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { numberBeside } from '../../words/number-beside.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { useWrittenIn, WrittenIn } from './written-in.tsx';
import { WrittenKeys } from './written-text.tsx';

/** The whole garment in standard wording, in the language that she chooses. */
export function WrittenCard({
  garment,
  tell,
}: {
  readonly garment: GarmentRecord;
  readonly tell: (text: string) => void;
}) {
  const { units } = speech.value;
  const chosen = useWrittenIn();
  const { words } = chosen;
  const worked = useMemo(() => {
    const size = workSize('', garmentOf(garment));
    return size.ok ? ok(inColours(garment, size.value)) : size;
  }, [garment]);
  const written = useMemo(
    () =>
      worked.ok && words ? writeSizes([worked.value], { words, units, needle: numberBeside }) : undefined,
    [worked, words, units],
  );
  if (!worked.ok || !words || !written?.ok) return null;
  // what it needs, not what she has
  const { balls } = worked.value.yarn;
  return (
    <Card label={say('passOn.written')}>
      <h2>{say('passOn.written')}</h2>
      <p>{say('passOn.writtenHint')}</p>
      {balls !== undefined && <p>{say('passOn.writtenBalls', { count: balls })}</p>}
      <WrittenIn {...chosen} />
      <WrittenKeys name={garment.name} text={written.value} tell={tell} />
      <details>
        <summary>{say('passOn.seeWritten')}</summary>
        <textarea
          class="pass-on-link"
          readOnly
          rows={12}
          value={written.value}
          lang={words.tag}
          aria-label={say('passOn.written')}
        />
      </details>
      {garment.design !== undefined && (
        <>
          <p>{say('passOn.inSizesHint')}</p>
          <Button href={`${hrefTo('passOn', { garment: garment.id })}?sizes`}>{say('passOn.inSizes')}</Button>
        </>
      )}
    </Card>
  );
}
