import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { drawLate, drawNoMore } from '../../src/pace/late-queue.ts';

describe('what is drawn late', () => {
  let asked: FrameRequestCallback[] = [];
  /** by frame: what was drawn after it */
  let drawn: string[][] = [];

  const part = (name: string) => () => void drawn.at(-1)?.push(name);

  const frames = (count: number) => {
    for (let n = 0; n < count; n += 1) {
      drawn.push([]);
      const now = asked;
      asked = [];
      for (const call of now) call(0);
      expect(drawn.at(-1)).toEqual([]);
      vi.runAllTimers();
    }
    return drawn;
  };

  beforeEach(() => {
    drawn = [];
    vi.useFakeTimers();
    vi.stubGlobal('requestAnimationFrame', (call: FrameRequestCallback) => asked.push(call));
  });

  afterEach(() => {
    frames(3);
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });

  it('comes after the frame of the row, all of it at once, by one call of the browser', () => {
    const [map, pad] = [part('map'), part('pad')];
    for (const draw of [map, map, pad, map]) drawLate(draw);
    expect(asked).toHaveLength(1);
    expect(frames(3)).toEqual([['map', 'pad'], [], []]);
  });

  it('comes after the next frame where it changes once more', () => {
    const pad = part('pad');
    drawLate(pad);
    frames(1);
    drawLate(pad);
    expect(frames(2)).toEqual([['pad'], ['pad'], []]);
  });

  it('asks for no frame when nothing waits, and draws nothing that is gone, nor what goes meanwhile', () => {
    const gone = part('gone');
    drawLate(gone);
    drawNoMore(gone);
    expect(frames(2).flat()).toEqual([]);
    const second = part('second');
    const first = () => drawNoMore(second);
    drawLate(first);
    drawLate(second);
    expect(frames(2).flat()).toEqual([]);
    expect(asked).toEqual([]);
  });
});
