import type { GarmentView } from '../../app/state.ts';
import { type Balls, ballsOf, shareKnitted } from '../../knit/yarn/balls.ts';
import type { PieceYarn, YarnNeed } from '../../knit/yarn/need.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Card } from '../../ui/card/card.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysGrams, saysYarnLength } from '../../words/measures.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { Guesses } from '../guesses.tsx';
import { saysMake } from '../says-make.ts';
import { BallsDrawn, tenth } from './balls-drawn.tsx';
import type { ChangeYarn } from './change-yarn.ts';

export interface NeedCardProps {
  readonly need: YarnNeed;
  readonly view: GarmentView;
  readonly change: ChangeYarn;
}

export function NeedCard({ need, view, change }: NeedCardProps) {
  const { garment } = view;
  const makes = view.pieces.flatMap((piece) => piece.makes);
  const knitted = makes.map(({ parts, places }) =>
    shareKnitted(
      parts,
      places.map(({ rows }) => rows),
    ),
  );
  const balls = ballsOf(need, garment.yarns?.[0], knitted);
  const asked = justFinished(need, view);
  const length = saysYarnLength(need.metres);
  return (
    <Card label={say('yarn.need')}>
      <h2>{say('yarn.need')}</h2>
      <p class="yarn-total">{saysTotal(need, length, balls)}</p>
      {balls && <BallsDrawn balls={balls} atHand={garment.yarns?.[0]?.balls} />}
      {need.balls === undefined && (
        <p>
          {say('yarn.needBuy', {
            length: saysYarnLength(need.metresToBuy),
            margin: saysNumber(need.margin, { percent: true, digits: 0 }),
          })}
        </p>
      )}
      {need.short !== undefined && need.short > 0 && (
        <Notice kind="warning" title={say('yarn.short', { count: need.short })} />
      )}
      <p>{saysBasis(need)}</p>
      {need.basis === 'loop length' && <Guesses pieces={garment.pieces.map(({ recipe }) => recipe)} />}
      {need.correction !== 1 && (
        <p>{say('yarn.corrected', { percent: saysNumber(need.correction, { percent: true, digits: 0 }) })}</p>
      )}
      {asked && <Weight make={asked} garment={garment} change={change} hint={say('yarn.weighedHint')} />}
      <details>
        <summary>{say('yarn.perMake')}</summary>
        <ul class="yarn-lines">
          {need.makes.map((make) => (
            <li key={`${make.piece} ${make.make}`}>
              {say('yarn.makeLine', { what: saysMakeOf(make, garment), amount: saysAmount(make) })}
            </li>
          ))}
        </ul>
        {!asked && <p>{say('yarn.weighedHint')}</p>}
        <div class="yarn-pair">
          {/* what is asked for above is not asked for twice */}
          {need.makes
            .filter((make) => make !== asked)
            .map((make) => (
              <Weight key={`${make.piece} ${make.make}`} make={make} garment={garment} change={change} />
            ))}
        </div>
      </details>
    </Card>
  );
}

/** The make finished last, while nobody has weighed it; `need.makes` are the garment's, in its order. */
function justFinished({ makes }: YarnNeed, { garment, pieces }: GarmentView): PieceYarn | undefined {
  const done = pieces
    .flatMap((piece) => piece.makes.map(({ make, places }) => ({ piece: piece.name, make, places })))
    .filter(({ places }) => places.length > 0 && places.every(({ rows, total }) => rows >= total))
    .filter(({ piece, make }) => !garment.taken?.some((t) => t.piece === piece && t.make === make));
  const touched = ({ places }: (typeof done)[number]) => Math.max(...places.map((place) => place.touched));
  const last = done.sort((a, b) => touched(b) - touched(a))[0];
  return last && makes.find(({ piece, make }) => piece === last.piece && make === last.make);
}

/** In balls too, since by those she has it. */
function saysTotal({ grams: weight }: YarnNeed, length: string, balls: Balls | undefined): string {
  if (weight === undefined) return say('yarn.needLength', { length });
  const grams = saysGrams(weight);
  if (!balls) return say('yarn.needGrams', { grams, length });
  // the sum of what is shown of it
  const count = tenth(tenth(balls.used) + tenth(balls.left));
  return say('yarn.needBalls', { count, n: saysNumber(count, { digits: 1 }), grams, length });
}

const saysAmount = ({ metres, grams }: PieceYarn): string =>
  grams === undefined ? saysYarnLength(metres) : `${saysGrams(grams)}, ${saysYarnLength(metres)}`;

const basis = {
  'weighed swatch': 'yarn.basisSwatch',
  'weighed swatch of another fabric': 'yarn.basisOther',
  'loop length': 'yarn.basisLoop',
} as const;

const saysBasis = (need: YarnNeed): string => say(basis[need.basis]);

const saysMakeOf = ({ piece, make }: Pick<PieceYarn, 'piece' | 'make'>, { pieces }: GarmentRecord): string =>
  saysMake(piece, '', make, pieces.find(({ recipe }) => recipe.name === piece)?.recipe ?? make);

interface WeightProps {
  readonly make: PieceYarn;
  readonly garment: GarmentRecord;
  readonly change: ChangeYarn;
  readonly hint?: string;
}

function Weight({ make: { piece, make }, garment, change, hint }: WeightProps) {
  const found = garment.taken?.find((t) => t.piece === piece && t.make === make);
  const put = (grams: number | undefined) =>
    change((now) => {
      const others = (now.taken ?? []).filter((t) => t.piece !== piece || t.make !== make);
      return { ...now, taken: grams ? [...others, { piece, make, grams }] : others };
    });
  return (
    <NumberField
      label={say('yarn.weighed', { what: saysMakeOf({ piece, make }, garment) })}
      hint={hint}
      unit={say('yarn.unitGrams')}
      bare
      decimals
      min={0}
      value={found?.grams}
      onChange={put}
    />
  );
}
