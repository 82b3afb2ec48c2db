import { useEffect } from 'preact/hooks';
import { type BeforeRow as Before, beforeRow } from '../../app/in-hand/before-row.ts';
import { keyInHand } from '../../app/in-hand/make-in-hand.ts';
import type { Reading } from '../../app/in-hand/reading.ts';
import { readSeamsFirst } from '../../app/in-hand/sew-first.ts';
import { hrefTo } from '../../app/routes.ts';
import { garmentInHand, inHand } from '../../app/state.ts';
import { parseMakeKey } from '../../progress/log.ts';
import { Icon, type IconName } from '../../ui/icon/icon.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysLength } from '../../words/measures.ts';
import { saysNeedle } from '../../words/needle.ts';
import { say } from '../../words/say.ts';

/** What is done before the row that is read, on a card of its own that goes with the row. */
export function BeforeRow({ read }: { readonly read: Reading }) {
  useSeamsFirst();
  const all = beforeRow(read);
  if (all.length === 0) return null;
  return (
    <section class="before-row" aria-label={say('lap.before', { row: read.row.n })}>
      <Shows what="before-row" />
      <ul role="list">
        {all.map((one, i) => (
          <li key={saysOne(one, read)}>
            <Icon name={iconOf[one.kind]} />
            <span>
              {i === 0 && `${say('lap.before', { row: read.row.n })} `}
              {one.kind === 'sew' ? <SewFirst says={saysOne(one, read)} /> : saysOne(one, read)}
              {'address' in one && one.address && (
                <>
                  {' '}
                  <a href={one.address} target="_blank" rel="noopener noreferrer">
                    {say('lap.shows', { host: one.address.split('/')[2] ?? '' })}
                  </a>
                </>
              )}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Asked anew when she comes back from sewing. */
function useSeamsFirst(): void {
  const now = inHand.value;
  useEffect(() => void readSeamsFirst(now), [now?.make, now?.place.rows === 0, garmentInHand.value]);
}

/** What is sewn stands in the making up. */
function SewFirst({ says }: { readonly says: string }) {
  const garment = inHand.value?.place.garment;
  return garment ? <a href={hrefTo('makingUp', { garment })}>{says}</a> : says;
}

/** 'Before row 19: change to the 4 mm needle.', for a voice and a reader. */
export function saysBefore(read: Reading): string {
  const all = beforeRow(read).map((one) => saysOne(one, read));
  return all.length === 0 ? '' : `${say('lap.before', { row: read.row.n })} ${all.join('; ')}.`;
}

export const iconOf = {
  sew: 'seam',
  needle: 'needleSize',
  measure: 'measure',
  colour: 'yarn',
  loosely: 'needleSize',
  note: 'note',
  lifeline: 'lifeline',
} as const satisfies Readonly<Record<Before['kind'], IconName>>;

function saysOne(one: Before, { row }: Reading): string {
  if (one.kind === 'needle') return say('lap.changeNeedle', { size: saysNeedle(one.mm) });
  if (one.kind === 'measure') return say('lap.measure', { length: saysLength(one.mm) });
  if (one.kind === 'colour') return say('lap.changeColour', { colour: one.colour });
  if (one.kind === 'loosely') return say('lap.loosely');
  if (one.kind === 'sew') return say('lap.sewFirst');
  const own = one.make === parseMakeKey(keyInHand.value ?? '')?.make;
  const from = own ? '' : `${say('count.fromMake', { make: one.make })}: `;
  return from + (one.kind === 'lifeline' ? say('count.lifelineRow', { row: row.n - 1 }) : one.text);
}

/** In a word or two, for the rows ahead. */
export function saysMark(one: Before): string {
  if (one.kind === 'needle') return say('lap.markNeedle', { size: saysNeedle(one.mm) });
  if (one.kind === 'measure') return say('lap.markMeasure', { length: saysLength(one.mm) });
  if (one.kind === 'colour') return say('lap.changeColour', { colour: one.colour });
  if (one.kind === 'sew') return say('lap.markSew');
  return one.kind === 'loosely' ? say('lap.markLoosely') : one.text;
}
