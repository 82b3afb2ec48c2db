import { type Fault, fault, ok, type Result, refuse } from '../../knit/fault.ts';
import type { Adjustment } from '../../knit/garment/adjust.ts';
import { draft } from '../../knit/garment/draft.ts';
import type { Gauge } from '../../knit/gauge.ts';
import { type WorkedSize, workSize } from '../../knit/written/work-size.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { gaugeSpanMm } from '../../words/measures.ts';
import { draftAgain, type Fitting, isAsDrafted } from '../drafts/design/draft-again.ts';
import { type DesignForm, designOf, readSwatch } from '../drafts/design/form.ts';
import { draftInWords, type NameInWords } from '../drafts/design/make-garment.ts';
import { inGauge } from './in-gauge.ts';
import { notesMoved } from './row-notes.ts';
import type { SizeSet } from './size-set.ts';
import { stripesLaid } from './stripes-laid.ts';

/** A garment that was passed on with its design, for someone else. */
export interface Fitted {
  readonly garment: PassedOn;
  /** undefined where it stays as its maker planned it */
  readonly worked?: WorkedSize;
  readonly kept: readonly Adjustment[];
  readonly dropped: readonly Adjustment[];
}

export interface FitWish {
  readonly form: DesignForm;
  readonly set: SizeSet | undefined;
  readonly asked: Gauge;
  readonly gauge: Partial<Gauge>;
  /** in the size that it was planned in where it is left out */
  readonly who?: Omit<Fitting, 'swatch'> | undefined;
}

/** Whether its maker changed pieces after they were drafted: those changes are in no other size. */
export function isChanged(passed: PassedOn, form: DesignForm): boolean {
  const made = draft(designOf(form));
  return !made.ok || !isAsDrafted(passed.pieces, made.value);
}

/** As it was planned where nothing else is asked for; else drafted again, or where its maker changed its pieces, in her gauge. */
export function fitPassed(passed: PassedOn, wish: FitWish, word: NameInWords): Result<Fitted> {
  const { form, asked, gauge, who, set } = wish;
  const isSame = asked.stitches === gauge.stitches && asked.rows === gauge.rows;
  if (!who && (isSame || isChanged(passed, form))) {
    const made = inGauge(passed, asked, gauge);
    return made.ok ? ok({ garment: made.value, kept: [], dropped: [] }) : made;
  }
  const whose = who ?? { person: form.person, body: form.body };
  const swatch = {
    stitches: typed(gauge.stitches),
    rows: typed(gauge.rows),
    overMm: gaugeSpanMm(),
  };
  const again = draftAgain(form, set?.adjusted ?? [], { ...whose, ...(isSame ? {} : { swatch }) });
  if (!again.ok) return isTyped(again.faults) ? refuse(...again.faults, fault('not as asked')) : again;
  const { draft: made, form: hers, kept, dropped } = again.value;
  const { joints: _stated, byHand: _sewn, swatches: _theirs, rowNotes, ...rest } = passed;
  const drafted = draftInWords(made, word);
  const garment: PassedOn = {
    ...rest,
    ...drafted,
    swatches: hers.swatches.flatMap((one) => readSwatch(one) ?? []),
    design: hers,
    ...(rowNotes && { rowNotes: notesMoved(rowNotes, passed.pieces, drafted.pieces) }),
  };
  const worked = workSize(whose.person.size ?? '', { ...garment, pieces: made.recipes, joints: made.joints });
  return worked.ok
    ? ok({
        garment: stripesLaid(passed, garment),
        worked: { ...worked.value, warnings: made.warnings },
        kept,
        dropped,
      })
    : worked;
}

/** Whether all is there that was to be typed: what is wrong then she mends by another size or swatch, not by the design. */
const isTyped = (faults: readonly Fault[]): boolean =>
  !faults.some(({ code }) => code === 'bad length' || code === 'swatch incomplete' || code === 'bad gauge');

/** As she counted it, not with what comes of turning inches into millimetres and back. */
const typed = (per100: number | undefined): number | null =>
  per100 === undefined ? null : Math.round(per100 * gaugeSpanMm()) / 100;
