import type { HeadFit } from '../../knit/garment/head-through-neck.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';

/** Whether the head passes, in words. */
export function saysHead({ opensMm, headMm }: HeadFit): string {
  const head = saysLength(headMm);
  return opensMm >= headMm
    ? say('draft.headPasses', { head, spare: saysLength(opensMm - headMm) })
    : say('draft.headDoesNot', { head, opens: saysLength(opensMm) });
}
