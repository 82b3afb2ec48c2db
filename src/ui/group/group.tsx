import './group.css';
import type { ComponentChildren } from 'preact';

interface GroupProps {
  readonly title: string;
  /** a line beside the title that says what is inside */
  readonly says?: string | undefined;
  readonly open?: boolean;
  /** hears whether it stands open, for what is only worth working out then */
  readonly onToggle?: (open: boolean) => void;
  readonly children: ComponentChildren;
}

/** A stretch of the screen that folds; the browser's own, so that finding in the page opens it. */
export function Group({ title, says, open = false, onToggle, children }: GroupProps) {
  return (
    <details class="group" open={open} onToggle={(event) => onToggle?.(event.currentTarget.open)}>
      <summary>
        <h2>{title}</h2>
        {says && <span class="group-says">{says}</span>}
      </summary>
      <div class="group-inside">{children}</div>
    </details>
  );
}
