import './group.css';
import type { ComponentChildren } from 'preact';

interface GroupProps {
  readonly title: string;
  /** a line beside the title that says what is inside */
  readonly says?: string | undefined;
  readonly open?: boolean;
  /** hears whether it stands open, for what is only worth working out then */
  readonly onToggle?: (open: boolean) => void;
  /** hears that it is about to be opened, or that it was by what is no finger and no key */
  readonly onNear?: () => void;
  readonly children: ComponentChildren;
}

/** A stretch of the screen that folds; the browser's own, so that finding in the page opens it. */
export function Group({ title, says, open = false, onToggle, onNear, children }: GroupProps) {
  const toggled = (isOpen: boolean) => {
    if (isOpen) onNear?.();
    onToggle?.(isOpen);
  };
  return (
    <details class="group" open={open} onToggle={(event) => toggled(event.currentTarget.open)}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is a button of the browser's own */}
      <summary onPointerDown={onNear} onFocus={onNear} onClick={onNear}>
        <h2>{title}</h2>
        {says && <span class="group-says">{says}</span>}
      </summary>
      <div class="group-inside">{children}</div>
    </details>
  );
}
