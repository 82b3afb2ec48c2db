import { afterEach, expect, it, vi } from 'vitest';
import type { Answering, Asking } from '../../../src/app/off-thread/worker.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { garmentToLink } from '../../../src/store/share/link.ts';

afterEach(() => vi.unstubAllGlobals());

it('a worker answers each question with its parts and then that these are all, or that it could not', async () => {
  const said: Answering[] = [];
  const heard: ((event: { data: Asking }) => void)[] = [];
  vi.stubGlobal('postMessage', (what: Answering) => said.push(what));
  vi.stubGlobal('addEventListener', (type: string, hear: (event: { data: Asking }) => void) => {
    if (type === 'message') heard.push(hear);
  });
  vi.resetModules();
  const had = globalThis.tasksHere;
  await import('../../../src/app/off-thread/worker.ts');
  // a page of its own would have the tasks handed over; a worker only listens
  expect(globalThis.tasksHere).toBe(had);
  expect(heard).toHaveLength(1);
  const asked = async (data: Asking) => {
    said.length = 0;
    heard[0]?.({ data });
    await vi.waitFor(() => expect(said.some((one) => 'done' in one)).toBe(true));
    return [...said];
  };
  const [part, ...end] = await asked({ name: 'link', args: [await garmentToLink(sampleGarment)] });
  expect(part).toMatchObject({ part: { ok: true, value: { name: sampleGarment.name } } });
  expect(end).toEqual([{ done: true }]);
  // several parts, in order
  const none = await asked({ name: 'backup', args: [new Blob(['{}'])] });
  expect(none.map((one) => ('done' in one ? one.done : 'part'))).toEqual(['part', true]);
  const broken = await asked({ name: 'no such task' as 'link', args: [''] });
  expect(broken).toEqual([{ done: false }]);
});
