import { expect, it } from 'vitest';
import { easeOf, type MakingUpStep } from '../../../src/knit/making-up/step.ts';
import { englishJoining } from '../../../src/knit/written/english-joining.ts';
import { makingUpLines } from '../../../src/knit/written/making-up-lines.ts';

const said = (step: MakingUpStep) => makingUpLines(step, englishJoining('UK'), (mm) => `${mm} mm`).join(' ');

it('a raglan that opens is sewn up to its opening, in the written pattern too', () => {
  const lines = said({
    id: 'raglan',
    kind: 'raglan',
    sleeve: 'Sleeve',
    seams: 4,
    rows: easeOf(56, 56),
    asFarAsOpening: easeOf(36, 36),
    underarm: { stitches: 0, rows: 0 },
  });
  expect(lines).toMatch(/Sew raglan seams: three lines, .*: 56 rows to 56 rows/);
  expect(lines).toContain('only up to its opening: 36 rows');
});

it('shoulders that lie over each other say which is on top, and are sewn at the armhole alone', () => {
  const lap = (of: 'left shoulder' | 'both shoulders' | 'placket', buttons?: number) =>
    said({ id: 'lap', kind: 'lap', of, rows: 7, ...(buttons && { buttons }) });
  expect(lap('left shoulder', 2)).toMatch(/front shoulder .* over the back .* armhole only.* 2 buttons/);
  expect(lap('both shoulders')).toMatch(
    /the back with its band, 7 rows, over the front.* armhole only.* measured once, on the upper layer/,
  );
  for (const of of ['left shoulder', 'both shoulders', 'placket'] as const)
    expect(lap(of)).not.toMatch(/the both|sew down the ends/);
});

it('a live shoulder that is closed after the band is worked with three needles or grafted, not sewn', () => {
  const close = (how: 'three-needle' | 'grafted' | 'sewn') =>
    said({
      id: 'close Neckband',
      kind: 'close',
      band: 'Neckband',
      rows: 6,
      seam: { of: 'shoulder', line: 'left back', both: easeOf(33, 33), how },
    });
  expect(close('three-needle')).toMatch(
    /left shoulder seam: 33 stitches .* casting off both edges together with a third needle/,
  );
  expect(close('grafted')).toContain('by grafting');
  expect(close('sewn')).toContain('Join the left shoulder seam: 33 stitches');
});
