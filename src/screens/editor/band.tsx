import type { ComponentChildren } from 'preact';
import { Icon } from '../../ui/icon/icon.tsx';
import { say } from '../../words/say.ts';
import { type BandPlace, isOpenAt, toggleBand } from './changes.ts';
import { placeId } from './fault-list.tsx';
import { Fold } from './fold.tsx';

interface BandProps {
  readonly place: BandPlace;
  readonly name: string;
  /** stitches, at the line's end */
  readonly count?: ComponentChildren;
  readonly facts?: string | undefined;
  /** shaping comes with its own edge */
  readonly shapes?: boolean;
  readonly hasFault?: boolean;
  /** of the piece's height, 0 to 1 */
  readonly share?: number;
  readonly aside?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A stretch of the piece as a band, as high as it is of the whole; opened it is a sentence with its numbers. */
export function Band(props: BandProps) {
  const { place, name, count, facts, shapes, hasFault = false, share = 0, aside, children } = props;
  const kind =
    typeof place.section === 'number'
      ? shapes
        ? 'edit-band edit-band-shapes'
        : 'edit-band'
      : 'edit-edge-band';
  return (
    <div class={kind} style={{ '--share': share.toFixed(3) }}>
      <Fold
        id={placeId(place.part, place.section)}
        open={isOpenAt(place)}
        marked={hasFault}
        onToggle={() => toggleBand(place)}
        aside={aside}
        head={
          <>
            <strong class="edit-section-name">
              {hasFault && <Icon name="warning" size="s" label={say('editor.toMend', { count: 1 })} />}
              {name}
            </strong>
            {count}
            {facts && <span class="edit-section-facts">{facts}</span>}
          </>
        }
      >
        {children}
      </Fold>
    </div>
  );
}
