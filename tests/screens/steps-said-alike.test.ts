import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { draft } from '../../src/knit/garment/draft.ts';
import { makingUpOf } from '../../src/knit/making-up/making-up.ts';
import type { MakingUpStep } from '../../src/knit/making-up/step.ts';
import { asPlanned } from '../../src/knit/piece/as-planned.ts';
import { englishJoining } from '../../src/knit/written/english-joining.ts';
import { makingUpLines } from '../../src/knit/written/making-up-lines.ts';
import { saysStep } from '../../src/screens/making-up/says-step.ts';
import { saysLength } from '../../src/words/measures.ts';
import { loadWords } from '../../src/words/say.ts';
import { someDesign } from '../arbitraries/design.ts';

/**
 * A step stands on the screen and in the written pattern. Its sentences differ, what they tell does not: the same figures,
 * the same edges, the same way of joining, the same things left open.
 */
const FACTS: readonly (readonly [string, RegExp])[] = [
  ['left', /\bleft\b/],
  ['right shoulder', /\bright shoulder\b/],
  ['buttoned', /\bbutton(ed|s)?\b/],
  ['three needles', /\b(three|third) needles?\b/],
  ['grafted', /\bgraft/],
  ['mattress stitch', /mattress stitch/],
  ['one more of the longer', /one more of the longer edge after every/],
  ['ease', /\bease\b/],
  ['bound off', /\bbound off\b/],
  ['over the head', /\bover the head\b/],
  ['loop', /\bloop\b/],
  ['button on the back', /button (on|to) the edge of the back/],
  ['lower end', /\blower ends?\b/],
  ['at the armhole', /\bat (the|each) armhole\b/],
  ['underarm', /\bunderarm\b/],
  ['topmost rows', /\btopmost rows\b/],
  ['up to its opening', /\bup to its opening\b/],
  ['shoulder seam', /\bshoulder seams?\b/],
  ['one whole stitch', /\bwhole stitch\b/],
  ['do not match', /do not match/],
  ['stays open', /stays open/],
  ['measured once', /measured once, on the upper layer/],
];

const numbers = (text: string): readonly string[] =>
  [
    ...new Set(
      text
        .replaceAll('2×2', '')
        .replaceAll(/[.,](?!\d)/g, ' ')
        .match(/\d+(?:[.,]\d+)?/g) ?? [],
    ),
  ].sort();

const tells = (text: string) => FACTS.flatMap(([name, word]) => (word.test(text) ? [name] : []));

function compare(step: MakingUpStep) {
  const { title, lines } = saysStep(step);
  const screen = [title, ...lines].join(' ').toLowerCase();
  const written = makingUpLines(step, englishJoining('US'), saysLength).join(' ').toLowerCase();
  return { screen, written };
}

const steps = new Map<string, MakingUpStep>();

describe('a step of the making up', () => {
  beforeAll(async () => {
    await loadWords('makingUp', 'craft');
    for (const design of fc.sample(someDesign(), { numRuns: 80 })) {
      const made = draft(design);
      const planned = made.ok
        ? asPlanned({ name: 'any', pieces: made.value.recipes, joints: made.value.joints })
        : undefined;
      if (!planned?.ok) continue;
      for (const step of makingUpOf(planned.value).steps) {
        const { screen } = compare(step);
        steps.set(screen.replaceAll(/\d+/g, '#'), step);
      }
    }
  }, 100_000);

  it('tells the same figures and the same facts on the screen as in the written pattern', () => {
    expect(steps.size).toBeGreaterThan(20);
    const differs: string[] = [];
    for (const step of steps.values()) {
      const { screen, written } = compare(step);
      const [a, b] = [tells(screen).join(), tells(written).join()];
      // edges and counts of a band stand where it is written, how many buttons in the list of their places
      const isShort = step.kind === 'pick up' || step.kind === 'buttons';
      if (a !== b && step.kind !== 'pick up')
        differs.push(`${step.kind}: ${a} | ${b}\n  ${screen}\n  ${written}`);
      const [m, n] = [numbers(screen), numbers(written)];
      const isAlike = isShort ? n.every((one) => m.includes(one)) : m.join() === n.join();
      if (!isAlike) differs.push(`${step.kind}: ${m.join()} | ${n.join()}\n  ${screen}\n  ${written}`);
    }
    expect(differs.join('\n')).toBe('');
  });
});
