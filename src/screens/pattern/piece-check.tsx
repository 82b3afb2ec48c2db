import { isToLookAt } from '../../app/drafts/pattern/to-look-at.ts';
import type { ReadPattern, ReadPiece } from '../../knit/pattern/read-pattern.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { Icon } from '../../ui/icon/icon.tsx';
import { PieceThumb } from '../../ui/panel-map/piece-thumb.tsx';
import { saysInTurn } from '../../words/in-turn.ts';
import { say } from '../../words/say.ts';

/** Each piece whole, to be compared with the pattern at a glance before the garment is made: drawing, rows and counts. */
export function PieceCheck({ found }: { readonly found: ReadPattern }) {
  const pieces = found.pieces.flatMap((piece) =>
    piece.plan.ok ? [{ piece, parts: piece.plan.value.parts }] : [],
  );
  if (pieces.length === 0) return null;
  return (
    <section class="pattern-check" aria-label={say('pattern.check')}>
      <h2>{say('pattern.check')}</h2>
      <ul role="list">
        {pieces.map(({ piece, parts }, i) => (
          <li key={`${piece.recipe.name} ${i}`}>
            <PieceThumb parts={parts} worked={parts.map(({ rows }) => rows.length)} />
            <div>
              <h3>{piece.recipe.name}</h3>
              {parts.map((part) => (
                <p key={part.name}>
                  {parts.length > 1 && <span>{part.name}: </span>}
                  {saysPart(part)}
                </p>
              ))}
              <ToLookAt piece={piece} found={found} />
            </div>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The counts that a knitter compares: at the beginning, where shaping or a fabric ends, and what is left. */
function countsOf({ start, sections, rows }: PlannedPart): number[] {
  const ends = sections.flatMap(({ last }) => rows[last - 1]?.after ?? []);
  return [start, ...ends].filter((count, at, all) => at === 0 || count !== all[at - 1]);
}

const saysPart = (part: PlannedPart): string =>
  say('pattern.partCheck', {
    counts: saysInTurn(countsOf(part)),
    rows: say('craft.rows', { count: part.rows.length }),
  });

function ToLookAt({ piece, found }: { readonly piece: ReadPiece; readonly found: ReadPattern }) {
  const count = piece.lines.filter((at) => {
    const line = found.lines[at];
    return line !== undefined && isToLookAt(line);
  }).length;
  if (count === 0) return null;
  return (
    <p class="pattern-fault">
      <Icon name="warning" size="s" />
      <span>{say('pattern.toLookAt', { count })}</span>
    </p>
  );
}
