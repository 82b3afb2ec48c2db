import './print.css';
import type { PlannedPart, PlannedSection } from '../../knit/piece/planned.ts';
import { saysFabric, saysShaping, saysSide, saysStitches } from '../../words/craft.ts';
import { saysLength } from '../../words/measures.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysNumber } from '../../words/numbers.ts';
import { saysRidge, saysRidgesIn } from '../../words/ridge.ts';
import { heldTogether, saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { saysSetUp } from '../../words/set-up.ts';
import { type ColourAt, linesOf, type PaperLine } from './lines-of.ts';
import { PieceSchematic } from './piece-schematic.tsx';

export interface PrintSheetProps {
  /** the garment's name */
  readonly garment: string;
  /** the piece's name */
  readonly piece: string;
  readonly parts: readonly PlannedPart[];
  /** how many copies are knitted */
  readonly makes: number;
  /** the colours of a part's rows, where it is striped */
  readonly colours?: ((part: PlannedPart) => ColourAt) | undefined;
  /** what else belongs on the paper: gauge, yarn, size */
  readonly facts?: readonly { readonly label: string; readonly value: string }[] | undefined;
}

/**
 * The plan of a piece as paper: drawing, facts, and every row with a box to tick. Shaping stands out by a black edge,
 * a mark and bold words. It takes the paper that the printer has, A4 or Letter.
 * Needs the catalogues 'print', 'lap', 'craft', 'knitting' and 'row'.
 */
export function PrintSheet({ garment, piece, parts, makes, colours, facts = [] }: PrintSheetProps) {
  const all = [...(makes > 1 ? [{ label: say('print.makes'), value: saysNumber(makes) }] : []), ...facts];
  return (
    <article class="paper">
      <header class="paper-head">
        <div>
          <p class="paper-over">{garment}</p>
          <h2>{piece}</h2>
          <dl class="paper-facts">
            {all.map(({ label, value }) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
          <p class="paper-key">{say('print.key')}</p>
        </div>
        <PieceSchematic label={piece} parts={parts} />
      </header>
      {parts.map((part) => (
        <PaperPart key={part.name} part={part} colour={colours?.(part)} alone={parts.length === 1} />
      ))}
    </article>
  );
}

function PaperPart({
  part,
  colour,
  alone,
}: {
  readonly part: PlannedPart;
  readonly colour: ColourAt | undefined;
  readonly alone: boolean;
}) {
  const lines = linesOf(part, colour);
  return (
    <section class="paper-part">
      {!alone && <h3>{part.name}</h3>}
      <p class="paper-start">{saysSetUp(part)}</p>
      <table class="paper-rows">
        <thead>
          <tr>
            <th scope="col">{say('print.row')}</th>
            <th scope="col">{say('print.work')}</th>
            <th scope="col">{say('print.after')}</th>
          </tr>
        </thead>
        {part.sections.map((section, i) => (
          <tbody key={section.first}>
            {section.last >= section.first && (
              <tr class="paper-section">
                <th colSpan={3} scope="rowgroup">
                  {saysSectionHead(part, i, section)}
                </th>
              </tr>
            )}
            {lines
              .filter((line) => line.first >= section.first && line.first <= section.last)
              .map((line) => (
                <PaperRow key={line.first} part={part} line={line} colour={colour?.(line.first)} />
              ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}

/** The one row that binds off is named by the plan in plain English and has no height to speak of. */
function saysSectionHead(
  part: PlannedPart,
  index: number,
  { name, fabric, needle, first }: PlannedSection,
): string {
  const bindsOff = first === part.rows.length && part.rows[first - 1]?.after === 0;
  const facts = [saysFabric(fabric), saysNeedle(needle)];
  return bindsOff
    ? `${say('print.bindOff')}: ${facts.join(', ')}`
    : `${name}: ${[...facts, saysLength(heightOf(part, index))].join(', ')}`;
}

/** mm that a section adds to the part */
function heightOf(part: PlannedPart, section: number): number {
  const { first, last } = part.sections[section] ?? { first: 1, last: 0 };
  const at = (n: number) => part.rows[n - 1]?.height ?? part.base;
  return at(last) - at(first - 1);
}

interface PaperRowProps {
  readonly part: PlannedPart;
  readonly line: PaperLine;
  readonly colour: string | undefined;
}

function PaperRow({ part, line, colour }: PaperRowProps) {
  const [row, second] = line.rows;
  if (!row) return null;
  const shaping = saysShaping(row);
  const work = heldTogether(
    second
      ? line.rows.map(({ side, steps }) => `${saysSide(side)}: ${saysRow(steps)}`).join('; ')
      : saysRow(row.steps),
  );
  const span = line.last > line.first;
  return (
    <tr class={shaping ? 'paper-shaping' : undefined}>
      <th scope="row">
        {!span && <Boxes count={1} />}
        {span ? say('print.rows', { first: line.first, last: line.last }) : saysNumber(line.first)}
        {!span && <small> {saysSide(row.side)}</small>}
        <small class="paper-ridges">
          {span ? saysRidgesIn(part, line.first - 1, line.last) : saysRidge(part, line.first)}
        </small>
      </th>
      <td>
        {colour !== undefined && <b>{colour}: </b>}
        {work}
        {shaping && (
          <strong class="paper-mark">
            <span aria-hidden="true">▶ </span>
            {shaping}
          </strong>
        )}
        {span && <Boxes count={line.last - line.first + 1} />}
      </td>
      <td aria-label={saysStitches(line.after)}>{saysNumber(line.after)}</td>
    </tr>
  );
}

/** One box for each row, in tens. */
function Boxes({ count }: { readonly count: number }) {
  const tens = Array.from({ length: Math.ceil(count / 10) }, (_, i) => Math.min(10, count - i * 10));
  return (
    <span class="paper-boxes" aria-hidden="true">
      {tens.map((size, ten) => (
        <span class="paper-ten" key={ten}>
          {Array.from({ length: size }, (_, i) => (
            <i key={i} />
          ))}
        </span>
      ))}
    </span>
  );
}
