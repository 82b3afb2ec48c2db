import { makeFolds } from './fold.tsx';

/** Opens the groups in which a field of the design stands and goes to it. */
export function goToField(path: string | undefined): void {
  const at = document.querySelector<HTMLElement>(`[data-field="${path}"]`);
  if (!at) {
    void makeFolds().then((isNew) => isNew && goToField(path));
    return;
  }
  closeOtherEdges(at.closest('[data-edge]'));
  for (let group = at.closest('details'); group; group = group.parentElement?.closest('details') ?? null)
    group.open = true;
  const field = at.querySelector<HTMLElement>('input, select');
  if (field) field.focus();
  at.scrollIntoView({ block: 'center' });
}

/** Opens what shapes an edge, close below the drawing, and takes the place there. */
export function goToEdge(name: string): void {
  const at = document.querySelector<HTMLElement>(`[data-edge="${name}"]`);
  const group = at?.querySelector('details');
  if (!at || !group) return;
  closeOtherEdges(at);
  group.open = true;
  group.querySelector('summary')?.focus({ preventScroll: true });
  at.scrollIntoView({ block: 'nearest' });
}

/** One edge at a time is open, so that the drawing stays near. */
export function closeOtherEdges(at: Element | null): void {
  if (!at) return;
  for (const group of document.querySelectorAll('[data-edge] > details'))
    if (group.parentElement !== at) (group as HTMLDetailsElement).open = false;
}

/** CSS px around a figure on a drawing within which a finger means it */
const REACH_PX = 32;

/** A figure on a drawing was touched, or its neighbourhood: goes to the field that it is typed in. */
export function goToFigure(event: MouseEvent): void {
  let best: { readonly far: number; readonly to: string | undefined } = { far: REACH_PX, to: undefined };
  for (const figure of (event.currentTarget as Element).querySelectorAll<SVGElement>('[data-to]')) {
    const { left, right, top, bottom } = figure.getBoundingClientRect();
    const x = Math.max(left - event.clientX, 0, event.clientX - right);
    const y = Math.max(top - event.clientY, 0, event.clientY - bottom);
    const far = Math.hypot(x, y);
    if (far < best.far) best = { far, to: figure.dataset.to };
  }
  if (best.to !== undefined) goToField(best.to);
}
