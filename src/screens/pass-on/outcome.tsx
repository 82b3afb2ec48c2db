import { useState } from 'preact/hooks';
import type { DraftedSize } from '../../app/garments/in-sizes.ts';
import { type Point, points, toMend } from '../../knit/written/look-through.ts';
import { type LengthUnits, lengthUnits, saysLengthIn } from '../../knit/written/says-length.ts';
import { writeSizes } from '../../knit/written/write-sizes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { numberBeside } from '../../words/number-beside.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { glued } from './glued.ts';
import { Pictures } from './pictures.tsx';
import { useWrittenIn, WrittenIn } from './written-in.tsx';
import { WrittenKeys } from './written-text.tsx';

interface OutcomeProps {
  readonly name: string;
  readonly drafted: readonly DraftedSize[];
  readonly tell: (text: string) => void;
}

/** All sizes, in the choice of one. */
const ALL = '';

/** The pattern of all sizes, or of one for whoever knits it, as it goes on paper. */
export function Outcome({ name, drafted, tell }: OutcomeProps) {
  const chosen = useWrittenIn();
  const { words } = chosen;
  const [units, setUnits] = useState<LengthUnits>(speech.value.units);
  const [only, setOnly] = useState(ALL);
  const [boxes, setBoxes] = useState(false);
  const all = drafted.flatMap((one) => (one.worked.ok ? [one.worked.value] : []));
  const one = all.filter(({ size }) => size === only);
  const worked = one.length > 0 ? one : all;
  if (!words) return null;
  const written = writeSizes(worked, { words, units, needle: numberBeside });
  if (!written.ok) return null;
  return (
    <Card label={say('passOn.written')}>
      <div class="no-print pass-on">
        <h2>{say('passOn.written')}</h2>
        {all.length > 1 && (
          <SelectField
            label={say('passOn.onPaper')}
            value={only}
            options={[
              { value: ALL, label: say('passOn.allSizes') },
              ...all.map(({ size }) => ({ value: size, label: size })),
            ]}
            onChange={setOnly}
          />
        )}
        <WrittenIn {...chosen} />
        <Choice
          label={say('passOn.lengthsIn')}
          value={units}
          options={lengthUnits.map((value) => ({
            value,
            label: value === 'both' ? say('passOn.both') : value,
          }))}
          onChange={setUnits}
        />
        <Toggle label={say('passOn.boxes')} on={boxes} onChange={setBoxes} />
        <LookedThrough mend={toMend(written.value, worked, words)} />
        <WrittenKeys name={name} text={written.value} tell={tell} />
        <Button icon="print" onPress={() => print()}>
          {say('passOn.printText')}
        </Button>
        <p class="quiet">{say('passOn.paperHint')}</p>
      </div>
      <article class="paper written" lang={words.tag}>
        {written.value
          .trim()
          .split('\n\n')
          .map((section) => (
            <Section
              key={section}
              lines={section.split('\n')}
              tag={words.tag}
              boxes={boxes ? words.list.isRows : undefined}
            />
          ))}
        <Pictures sizes={worked} words={words} length={saysLengthIn(units, words.point, words.inch)} />
      </article>
    </Card>
  );
}

const Section = ({
  lines: [title, ...lines],
  tag,
  boxes,
}: {
  readonly lines: readonly string[];
  /** the language that they are in */
  readonly tag: string;
  /** lines that have a box before them */
  readonly boxes: RegExp | undefined;
}) => (
  <section>
    <h3>{title}</h3>
    {lines.map((line, i) => (
      <p key={i}>
        {boxes?.test(line) && <i class="written-box" />}
        {glued(line, tag)}
      </p>
    ))}
  </section>
);

/** What she can mend herself; all else would be a defect of what we write. */
const mends = {
  title: 'passOn.mendTitle',
  'body and ease': 'passOn.mendFits',
  yarn: 'passOn.mendYarn',
  gauge: 'passOn.mendGauge',
  washed: 'passOn.mendWashed',
  licence: 'passOn.mendLicence',
} as const satisfies Partial<Record<Point, string>>;

const saysMend = (point: Point): string =>
  point in mends ? say(mends[point as keyof typeof mends]) : say('passOn.mendOurs', { list: point });

const LookedThrough = ({ mend }: { readonly mend: readonly Point[] }) => (
  <div>
    <h3>{say('passOn.looked')}</h3>
    <p>{say(mend.length === 0 ? 'passOn.lookedWell' : 'passOn.lookedMend', { count: points.length })}</p>
    <ul>
      {mend.map((point) => (
        <li key={point}>{saysMend(point)}</li>
      ))}
    </ul>
  </div>
);
