import './sheet.css';
import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { say } from '../../words/say.ts';
import { IconButton } from '../button/icon-button.tsx';

export interface SheetProps {
  readonly open: boolean;
  readonly title: string;
  readonly children: ComponentChildren;
  /** buttons that stay in sight at the bottom, near the thumb */
  readonly actions?: ComponentChildren;
  /** called when it is closed in any way: its cross, Escape, a tap beside it, the platform's back */
  readonly onClose: () => void;
}

/** A modal dialog that rises from the bottom. The browser's own <dialog> keeps the focus inside and gives it back. */
export function Sheet({ open, title, children, actions, onClose }: SheetProps) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const body = useKeysToScroll();
  useEffect(() => {
    const element = dialog.current;
    if (!element) return;
    if (open && !element.open) element.showModal();
    if (!open && element.open) element.close();
  }, [open]);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the browser closes it by Escape; a tap beside it is the thumb's way
    <dialog
      ref={dialog}
      class="sheet"
      aria-labelledby={id}
      onClose={() => open && onClose()}
      onClick={(event) => event.target === dialog.current && dialog.current?.close()}
    >
      {open && (
        <div class="sheet-inside">
          <header class="sheet-head">
            <h2 id={id} tabIndex={-1} autofocus>
              {title}
            </h2>
            <IconButton icon="cross" label={say('ui.close')} onPress={() => dialog.current?.close()} />
          </header>
          <div ref={body} class="sheet-body">
            {children}
          </div>
          {actions && <footer class="sheet-foot">{actions}</footer>}
        </div>
      )}
    </dialog>
  );
}

/** What is longer than the sheet is moved by keys: where nothing in it takes the focus, it takes the focus itself. */
function useKeysToScroll() {
  const body = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const own = body.current;
    if (!own) return;
    const seen = new ResizeObserver(() => {
      const scrolls = own.scrollHeight > own.clientHeight;
      if (scrolls && !own.querySelector('a,button,input,select,textarea,summary')) own.tabIndex = 0;
      else own.removeAttribute('tabindex');
    });
    seen.observe(own);
    return () => seen.disconnect();
  });
  return body;
}
