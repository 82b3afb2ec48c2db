import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ask, only } from '../../../src/app/off-thread/ask.ts';
import type { ArgsOf, TaskName } from '../../../src/app/off-thread/tasks.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { stretchAt } from '../../../src/knit/pattern/stretch-at.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { garmentToLink } from '../../../src/store/share/link.ts';
import { knittedBox } from '../../store/knitted-box.ts';
import { given } from '../../store/scenario.ts';
import type { Manner } from './fake-worker.ts';
import { withWorkers } from './fake-worker.ts';
import '../tasks-here.ts';

describe('what is worked out beside the page', () => {
  const manner: { now: Manner } = { now: 'answers' };
  let made: { ended: boolean }[] = [];
  beforeEach(() => {
    manner.now = 'answers';
    made = withWorkers(manner);
    // none of an earlier test waits for the next question
    ask('link', '').stop();
    made.length = 0;
  });
  afterEach(() => vi.unstubAllGlobals());

  const record = {
    ...sampleGarment,
    id: 'sample',
    createdAt: 1,
    changedAt: 1,
    pieces: sampleGarment.pieces.map((recipe, i) => ({ id: `p${i}`, recipe })),
  };
  /** two rows more of a stretch that its text gives as a length */
  const lengthened = () => {
    const text = 'SCARF\nCast on 20 sts.\nWork in garter stitch until piece measures 10 cm.\nBind off.';
    const options = { gauge: { stitches: 20, rows: 30 } };
    const plan = readPattern(text, options).pieces[0]?.plan;
    if (plan === undefined) throw new Error('no piece');
    const { parts } = given(plan);
    const stretch = parts[0] && stretchAt(parts[0], 3);
    if (stretch === undefined) throw new Error('no stretch');
    const rows = stretch.last - stretch.first + 3;
    return { text, options, piece: 0, parts, part: 0, worked: 3, stretch, rows };
  };
  const questions: { readonly [K in TaskName]: () => Promise<ArgsOf<K>> } = {
    pattern: async () => [given(writePattern(sampleGarment, { terms: 'US' })), { size: 0 }],
    readings: async () => ['SCARF\nCast on 20 sts.\nKnti 4 rows.\nBind off.', 3, {}],
    link: async () => [await garmentToLink(sampleGarment)],
    plans: async () => [record],
    stretch: async () => [lengthened()],
    backup: async () => [new Blob([JSON.stringify(given(await exportAll((await knittedBox()).box)))])],
  };

  it.each(Object.keys(questions) as TaskName[])(
    'is what the page would have found itself: %s',
    async (name) => {
      const args = await questions[name]();
      const beside = await ask(name, ...args).parts;
      expect(made).toHaveLength(1);
      vi.unstubAllGlobals();
      const here = await ask(name, ...args).parts;
      expect(beside?.ok && beside.value.length).toBeGreaterThan(0);
      expect(beside).toEqual(structuredClone(here));
    },
  );

  it('is asked of the same worker again, once it has answered', async () => {
    for (let i = 0; i < 3; i += 1) await ask('link', 'nothing').parts;
    expect(made).toHaveLength(1);
  });

  it('can be stopped in the midst of it: the worker is ended, and the next question has another', async () => {
    manner.now = 'is deep in work';
    const asked = ask('link', await garmentToLink(sampleGarment));
    asked.stop();
    expect(await asked.parts).toBeUndefined();
    expect(made.map(({ ended }) => ended)).toEqual([true]);
    manner.now = 'answers';
    expect(
      given(given((await only(ask('link', await garmentToLink(sampleGarment)))) ?? { ok: false, faults: [] }))
        .name,
    ).toBe(sampleGarment.name);
    expect(made).toHaveLength(2);
  });

  it('is worked out by the page where no worker can be had', async () => {
    manner.now = 'cannot be fetched';
    const answer = await only(ask('link', await garmentToLink(sampleGarment)));
    expect(answer?.ok && answer.value.ok && answer.value.value.name).toBe(sampleGarment.name);
  });

  it('is refused where its file is not to be had, and that is told, so that what is kept is mended', async () => {
    const had = globalThis.tasksHere;
    const heard: string[] = [];
    vi.stubGlobal('tasksHere', undefined);
    vi.stubGlobal('dispatchEvent', ({ type }: Event) => heard.push(type) > 0);
    manner.now = 'cannot be fetched';
    const answer = await ask('link', await garmentToLink(sampleGarment)).parts;
    expect(answer).toMatchObject({ ok: false, faults: [{ code: 'app-incomplete' }] });
    expect(heard).toEqual(['vite:preloadError']);
    vi.stubGlobal('tasksHere', had);
  });
});
