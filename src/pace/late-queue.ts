/** Parts of the screen that wait, drawn together: a call of the browser for each would be felt in the row's own frame. */
const waiting = new Set<() => void>();
let asked = false;

/** What it shows has changed: it is drawn once the frame of the row is painted. The same one waits but once. */
export function drawLate(draw: () => void): void {
  waiting.add(draw);
  // after the frame, not in it
  if (!asked) requestAnimationFrame(() => setTimeout(drawAll));
  asked = true;
}

export const drawNoMore = (draw: () => void): unknown => waiting.delete(draw);

function drawAll(): void {
  asked = false;
  // one that goes while another is drawn is drawn no more; one that comes is for the next time
  const now = [...waiting];
  for (const draw of now) if (waiting.delete(draw)) draw();
}
