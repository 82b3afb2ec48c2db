import { useMemo } from 'preact/hooks';
import { piecesInLink } from '../../app/garments/pieces-in-link.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { coloursOf, isStriped } from '../../knit/yarn/stripes.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { PieceThumb, thumbHeight } from '../../ui/panel-map/piece-thumb.tsx';
import { saysFabric } from '../../words/craft.ts';
import { saysLength } from '../../words/measures.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { StripesDrawn, StripesKey } from '../count/stripes-drawn.tsx';

/** What came in a link: its pieces in their shapes, what to swatch, who made it. */
export function About({ garment }: { readonly garment: PassedOn }) {
  const list = saysList(garment.pieces.map((piece) => piece.name));
  return (
    <div>
      <p>{say('passOn.openPieces', { count: garment.pieces.length, list })}</p>
      <Pictures garment={garment} />
      <ToSwatch garment={garment} />
      {garment.credits && <p>{say('passOn.openCredits', { credits: garment.credits })}</p>}
      {garment.licence && <p>{say('passOn.openLicence', { licence: garment.licence })}</p>}
      {garment.notes && <p>{garment.notes}</p>}
    </div>
  );
}

/** Each piece in its shape and its stripes, with its size as it is planned. */
function Pictures({ garment }: { readonly garment: PassedOn }) {
  const drawn = useMemo(
    () => piecesInLink(garment).map((piece) => ({ ...piece, box: shapeOfPiece(piece.parts).box })),
    [garment],
  );
  const tallest = Math.max(0, ...drawn.map(({ box }) => thumbHeight(box)));
  const striped = isStriped(garment) ? drawn.map((piece) => stripesOf(garment, piece)) : [];
  return (
    <>
      <ul role="list" class="pass-on-pieces">
        {drawn.map(({ name, parts, box }, i) => (
          <li key={name} style={{ '--share': (thumbHeight(box) / tallest).toFixed(3) }}>
            <PieceThumb
              parts={parts}
              worked={parts.map(() => 0)}
              over={striped[i] && <StripesDrawn {...striped[i]} />}
            />
            <div>
              <strong>{name}</strong>
              <p>{say('passOn.size', { width: saysLength(box.width), height: saysLength(box.height) })}</p>
            </div>
          </li>
        ))}
      </ul>
      {striped[0] && <StripesKey {...striped[0]} parts={[]} />}
    </>
  );
}

/** Of the first make; colours have the same tones in every piece. */
function stripesOf(garment: PassedOn, { id, parts }: ReturnType<typeof piecesInLink>[number]) {
  const all = [garment.stripes ?? [], ...(garment.restriped ?? []).map(({ stripes }) => stripes)];
  return {
    parts,
    colours: (part: PlannedPart) => coloursOf(garment, id, parts, part),
    order: all.flat().map(({ colour }) => colour),
  };
}

/** In which fabric and on which needle a swatch is worth knitting: what the rows are in, most of them first. */
function ToSwatch({ garment }: { readonly garment: PassedOn }) {
  const rows = new Map<string, number>();
  for (const section of garment.pieces.flatMap(({ parts }) => parts.flatMap((part) => part.sections))) {
    const what = say('passOn.swatchIn', {
      fabric: saysFabric(section.fabric),
      needle: saysNeedle(section.needle),
    });
    rows.set(what, (rows.get(what) ?? 0) + section.rows);
  }
  const list = [...rows].sort((a, b) => b[1] - a[1]).map(([what]) => what);
  return (
    <>
      <h2>{say('passOn.toSwatch')}</h2>
      <ul>
        {list.map((what) => (
          <li key={what}>{what}</li>
        ))}
      </ul>
    </>
  );
}
