import './pictures.css';
import type { SeamKind } from '../../knit/written/picture-words.ts';
import type { SaysLength } from '../../knit/written/says-length.ts';
import type { WorkedSize } from '../../knit/written/work-size.ts';
import type { WrittenWords } from '../../knit/written/written-words.ts';
import { clothPath, polyline } from '../../ui/panel-map/paths.ts';
import { Schematic } from '../../ui/print/schematic.tsx';
import { drawn } from '../making-up/draw-together.ts';
import { boundsOf, type LaidPiece } from '../making-up/lay-garment.ts';
import { glued } from './glued.ts';
import { schematicOf } from './schematic-lines.ts';
import { type SignPlace, signsApart } from './signs-apart.ts';

interface Props {
  /** the first is drawn */
  readonly sizes: readonly WorkedSize[];
  readonly words: WrittenWords;
  readonly length: SaysLength;
}

/** Each piece with its measures by letters, all sizes in brackets, and how the pieces are put together. */
export function Pictures(props: Props) {
  const [first] = props.sizes;
  if (!first) return null;
  return (
    <>
      <section>
        <h3>{props.words.pictures.schematics}</h3>
        <p>{props.words.pictures.asKnitted}</p>
        {first.garment.pieces.map(({ recipe }) => (
          <Piece key={recipe.name} name={recipe.name} {...props} />
        ))}
      </section>
      <Assembly size={first} words={props.words} />
    </>
  );
}

function Piece({ name, sizes, words, length }: Props & { readonly name: string }) {
  const drawing = schematicOf(name, sizes, words, length);
  if (!drawing) return null;
  const { shape, measures, lines, letter } = drawing;
  return (
    <figure class="picture">
      <Schematic label={words.name(name)} shape={shape} measures={measures} says={letter} />
      <figcaption>
        <strong>{words.name(name)}</strong>
        {lines.map((line) => (
          <p key={line.letter}>
            <b>{line.letter}</b> {line.name}: {glued(line.list, words.tag)}
          </p>
        ))}
      </figcaption>
    </figure>
  );
}

/** The pieces as they lie before they are sewn, each seam with the number of its step. */
function Assembly({ size, words }: { readonly size: WorkedSize; readonly words: WrittenWords }) {
  const { laid, edges, view: bare } = drawn(size.made, size.garment, new Set(), undefined);
  const steps = size.steps.filter(({ id }) => edges.some(({ step }) => step === id));
  if (laid.length === 0 || steps.length === 0) return null;
  const letter = bare.width / 25;
  const view = {
    x: bare.x - letter,
    y: bare.y - letter,
    width: bare.width + 2 * letter,
    height: bare.height + 3 * letter,
  };
  const isIn = (at: number, from: number, long: number) => at > from + letter && at < from + long - letter;
  const places = signsApart(
    edges.map(({ runs }) => runs),
    1.5 * letter,
    ([x, y]) => isIn(x, view.x, view.width) && isIn(y, view.y, view.height),
  );
  return (
    <section>
      <h3>{words.pictures.assembly}</h3>
      <figure class="picture picture-whole">
        <svg
          viewBox={[view.x, view.y, view.width, view.height].map((n) => n.toFixed(1)).join(' ')}
          role="img"
          aria-label={words.pictures.assembly}
          font-size={letter}
        >
          {laid.map((piece) => (
            <Laid
              key={`${piece.name} ${piece.make}`}
              piece={piece}
              name={words.name(piece.name)}
              letter={letter}
            />
          ))}
          {edges.map(({ runs }, i) => (
            <path key={i} class="picture-seam" d={runs.map(polyline).join('')} />
          ))}
          {edges.map(({ step }, i) => (
            <StepNumber
              key={i}
              place={places[i]}
              n={steps.findIndex(({ id }) => id === step) + 1}
              letter={letter}
            />
          ))}
        </svg>
        <figcaption>
          {steps.map(({ id, kind }, i) => (
            <p key={id}>
              <b>{i + 1}</b> {words.pictures.seams[kind as SeamKind]}
            </p>
          ))}
        </figcaption>
      </figure>
    </section>
  );
}

function StepNumber({
  place,
  n,
  letter,
}: {
  readonly place: SignPlace | undefined;
  readonly n: number;
  readonly letter: number;
}) {
  if (!place || n === 0) return null;
  const { at, of } = place;
  return (
    <>
      {of && <path class="picture-leader" d={polyline([of, at])} />}
      <circle class="picture-number" cx={at[0]} cy={at[1]} r={0.7 * letter} />
      <text x={at[0]} y={at[1] + 0.35 * letter} text-anchor="middle">
        {n}
      </text>
    </>
  );
}

function Laid({
  piece,
  name,
  letter,
}: {
  readonly piece: LaidPiece;
  readonly name: string;
  readonly letter: number;
}) {
  const { shape, turn, at } = piece;
  const { x, y, width, height } = shape.box;
  const move = `translate(${at.map((n) => n.toFixed(1)).join(' ')}) rotate(${turn}) translate(${(-x - width / 2).toFixed(1)} ${(-y - height / 2).toFixed(1)})`;
  const { bottom, top } = boundsOf(piece);
  const isLow = bottom - top < 3 * letter;
  return (
    <>
      <g transform={move}>
        {shape.parts.map((part, i) => (
          <path class="schematic-line" key={i} d={clothPath(part)} />
        ))}
      </g>
      <text x={at[0]} y={isLow ? bottom + 1.2 * letter : at[1] + 0.35 * letter} text-anchor="middle">
        {name}
      </text>
    </>
  );
}
