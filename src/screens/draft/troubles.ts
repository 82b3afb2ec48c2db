import { computed } from '@preact/signals';
import { drafted } from '../../app/drafts/design/designer.ts';
import type { Fault } from '../../knit/fault.ts';
import type { Warning } from '../../knit/garment/warnings.ts';

/** What keeps the garment from being made; empty where it can be. */
export const faults = computed<readonly Fault[]>(() => {
  const made = drafted.value;
  return made && !made.ok ? made.faults : [];
});

/** What to look at before yarn is bought; all, the overruled ones too. */
export const cautions = computed<readonly Warning[]>(() => {
  const made = drafted.value;
  return made?.ok ? made.value.warnings : [];
});

export const openCautions = computed(() => cautions.value.filter((caution) => !caution.overruled));

export const faultAt = (path: string): Fault | undefined =>
  faults.value.find((fault) => fault.at.field === path);

export const cautionsAt = (path: string): readonly Warning[] =>
  cautions.value.filter((caution) => caution.at.field === path);
