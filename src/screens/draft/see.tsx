import { useMemo, useState } from 'preact/hooks';
import { design, drafted } from '../../app/drafts/design/designer.ts';
import type { Draft } from '../../knit/garment/draft.ts';
import { finishedBeside } from '../../knit/garment/finished-beside.ts';
import type { Rounding } from '../../knit/garment/roundings.ts';
import { saysAsked, saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { Fold } from './fold.tsx';
import { saysHead } from './says-head.ts';
import { saysName } from './says-name.ts';

/** What it measures, each rounding stated, each seam held against its neighbour. */
export function See() {
  const [isOpen, setOpen] = useState(false);
  const made = drafted.value;
  if (!made?.ok) return null;
  const draft = made.value;
  return (
    <Fold title={say('draft.see')} onToggle={setOpen}>
      {isOpen && <MadeUp draft={draft} />}
      <Roundings list={draft.roundings} />
      <Seams draft={draft} />
    </Fold>
  );
}

/** What she puts on in the end, beside what she asked for. Every piece is planned for it, so it is not worked out unseen with each figure typed. */
function MadeUp({ draft }: { readonly draft: Draft }) {
  const now = design.value;
  const list = useMemo(() => (now ? finishedBeside(now, draft) : []), [now, draft]);
  if (list.length === 0) return null;
  return (
    <div class="draft-wraps">
      <table class="draft-table">
        <caption>{say('draft.madeUp')}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{say('draft.asks')}</th>
            <th scope="col">{say('draft.makes')}</th>
          </tr>
        </thead>
        <tbody>
          {list.map(({ measure, askedMm, madeMm, stretchedMm }) => (
            <tr key={measure}>
              <th scope="row">{saysName(`made up ${measure}`)}</th>
              <td>
                {measure === 'neck'
                  ? say('draft.overHead', { length: saysAsked(askedMm) })
                  : saysAsked(askedMm)}
              </td>
              <td>
                {saysLength(madeMm)}
                {stretchedMm !== undefined && (
                  <small>{say('draft.stretched', { length: saysLength(stretchedMm) })}</small>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {draft.head && <p>{saysHead(draft.head)}</p>}
    </div>
  );
}

function Roundings({ list }: { readonly list: readonly Rounding[] }) {
  return (
    <div class="draft-wraps">
      <table class="draft-table">
        <caption>{say('draft.roundings')}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{say('draft.asks')}</th>
            <th scope="col">{say('draft.makes')}</th>
          </tr>
        </thead>
        <tbody>
          {list.map(({ piece, measure, askedMm, madeMm, count, unit }) => (
            <tr key={`${piece} ${measure}`}>
              <th scope="row">{saysName(measure)}</th>
              <td>{saysAsked(askedMm)}</td>
              <td>
                {saysLength(madeMm)}
                <small>{say(unit === 'stitches' ? 'draft.byStitches' : 'draft.byRows', { count })}</small>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Seams({ draft }: { readonly draft: Draft }) {
  return (
    <div class="draft-stack">
      <h3>{say('draft.seams')}</h3>
      <ul class="draft-seams">
        {draft.matches.map(({ seam, agrees }) => (
          <li key={seam}>
            {say(agrees ? 'draft.seamAgrees' : 'draft.seamDiffers', { seam: saysName(`seam${seam}`) })}
          </li>
        ))}
      </ul>
    </div>
  );
}
