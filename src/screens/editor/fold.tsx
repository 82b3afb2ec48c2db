import './bands.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

export interface FoldProps {
  /** always in sight: the line that opens and closes it */
  readonly head: ComponentChildren;
  readonly open: boolean;
  readonly onToggle: () => void;
  /** beside the line */
  readonly aside?: ComponentChildren;
  readonly children: ComponentChildren;
  readonly id?: string;
  readonly marked?: boolean;
}

/** A card that folds. */
export function Fold({ head, open, onToggle, aside, children, id, marked = false }: FoldProps) {
  const inside = useId();
  return (
    <div class={`edit-fold${marked ? ' edit-fold-marked' : ''}`} id={id}>
      <div class="edit-fold-head">
        <button
          type="button"
          class="edit-fold-button"
          aria-expanded={open}
          aria-controls={inside}
          onClick={onToggle}
        >
          <span class="fold-sign" />
          <span class="edit-fold-words">{head}</span>
        </button>
        {aside}
      </div>
      <div class="edit-fold-body" id={inside} hidden={!open}>
        {open && children}
      </div>
    </div>
  );
}
