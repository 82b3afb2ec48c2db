import { afterEach, describe, expect, it, vi } from 'vitest';
import { hush, readAloud } from '../../../src/app/device/aloud.ts';
import type { Feel } from '../../../src/app/device/feels.ts';
import { onHeadset } from '../../../src/app/device/headset.ts';
import { buzz, buzzOf, tick } from '../../../src/app/device/touch.ts';

afterEach(() => vi.unstubAllGlobals());

const feels: readonly Feel[] = ['plain', 'shaping', 'before row', 'section end', 'part end'];
const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);

describe('what the hand feels', () => {
  it('is another thing for each kind of row, and never a long one: at most a second', () => {
    const each = feels.map((feel) => buzzOf([feel]));
    expect(new Set(each.map(String)).size).toBe(feels.length);
    for (const one of each) {
      // on, off, on: it ends with the phone trembling (Vibration API, W3C)
      expect(one.length % 2).toBe(1);
      expect(sum(one)).toBeLessThan(1000);
      for (const ms of one) expect(ms).toBeGreaterThanOrEqual(20);
    }
    expect(sum(each[0] ?? [])).toBeLessThan(Math.min(...each.slice(1).map(sum)));
  });

  it('is in ms, on and off in turn', () => {
    expect(Object.fromEntries(feels.map((feel) => [feel, buzzOf([feel])]))).toEqual({
      plain: [25],
      shaping: [70, 60, 70],
      'before row': [30, 40, 30, 40, 30],
      'section end': [25, 60, 180],
      'part end': [300, 90, 300],
    });
    expect(buzzOf(['plain', 'plain'])).toEqual([25, 150, 25]);
  });

  it('of two things is the one after the other with a pause between, longer than any within', () => {
    const both = buzzOf(['section end', 'shaping']);
    const [end, shaping] = [buzzOf(['section end']), buzzOf(['shaping'])];
    expect(both.slice(0, end.length)).toEqual(end);
    expect(both.slice(end.length + 1)).toEqual(shaping);
    const within = [...end, ...shaping].filter((_, i) => (i < end.length ? i : i - end.length) % 2 === 1);
    expect(both[end.length]).toBeGreaterThan(Math.max(...within));
    expect(buzzOf([])).toEqual([]);
  });

  it('goes to the phone as one vibration, and nowhere on one that has none', () => {
    const felt: unknown[] = [];
    vi.stubGlobal('navigator', { vibrate: (ms: unknown) => felt.push(ms) });
    buzz(['shaping']);
    expect(felt).toEqual([buzzOf(['shaping'])]);
    vi.stubGlobal('navigator', {});
    expect(() => buzz(['shaping'])).not.toThrow();
  });
});

describe('what the ear hears', () => {
  it('is short soft tones one after the other, rising for shaping, and wakes a device that lets none sound yet', () => {
    const heard: { hertz: number; from: number; to: number }[] = [];
    const levels: number[] = [];
    let woken = 0;
    class FakeAudio {
      readonly state = 'suspended';
      readonly currentTime = 5;
      readonly destination = 'ear';
      resume = async () => {
        woken += 1;
      };
      createOscillator() {
        const tone = { hertz: 0, from: 0, to: 0 };
        const into: { wire?: unknown } = {};
        return {
          frequency: {
            set value(hertz: number) {
              tone.hertz = hertz;
            },
          },
          connect: (volume: { connect: (to: string) => void }) => {
            into.wire = volume;
            return volume;
          },
          start: (at: number) => {
            tone.from = at;
          },
          stop: (at: number) => {
            tone.to = at;
            if (into.wire !== undefined) heard.push(tone);
          },
        };
      }
      createGain() {
        return {
          gain: {
            setValueAtTime: (level: number) => levels.push(level),
            exponentialRampToValueAtTime: (level: number, at: number) => {
              levels.push(level);
              expect(at).toBeGreaterThan(5);
            },
          },
          connect: (to: string) => expect(to).toBe('ear'),
        };
      }
    }
    vi.stubGlobal('AudioContext', FakeAudio);
    tick(['section end', 'shaping', 'plain', 'part end']);
    expect(woken).toBe(1);
    const hertz = heard.map((tone) => tone.hertz);
    expect(hertz).toHaveLength(10);
    expect(hertz.slice(0, 3)).toEqual(hertz.slice(0, 3).sort((a, b) => b - a));
    expect(hertz[4]).toBeGreaterThan(hertz[3] ?? Number.POSITIVE_INFINITY);
    // within what small loudspeakers and old ears have: common practice, no published source
    for (const one of hertz) {
      expect(one).toBeGreaterThan(200);
      expect(one).toBeLessThan(2000);
    }
    // each is a tone of the scale of equal steps from a' = 440 Hz (ISO 16), to the nearest Hz
    for (const one of hertz) {
      const steps = Math.round(12 * Math.log2(one / 440));
      expect(one).toBe(Math.round(440 * 2 ** (steps / 12)));
    }
    expect(heard[0]?.from).toBe(5);
    for (const [i, { from, to }] of heard.entries()) {
      expect(to - from).toBeGreaterThan(0.03);
      expect(to - from).toBeLessThan(0.2);
      expect((heard[i + 1]?.from ?? Number.POSITIVE_INFINITY) - to).toBeGreaterThan(0);
    }
    for (const level of levels) {
      expect(level).toBeGreaterThan(0);
      expect(level).toBeLessThanOrEqual(0.5);
    }
    // each begins louder than it ends
    for (let i = 0; i < levels.length; i += 2) expect(levels[i]).toBeGreaterThan(levels[i + 1] ?? 1);
  });
});

describe('a row read aloud', () => {
  it('cuts off the one before, in the language that is spoken, a little slower than talk', () => {
    const said: unknown[] = [];
    vi.stubGlobal('speechSynthesis', {
      cancel: () => said.push('stop'),
      speak: (one: unknown) => said.push(one),
    });
    vi.stubGlobal(
      'SpeechSynthesisUtterance',
      class {
        lang = '';
        rate = 1;
        constructor(readonly text: string) {}
      },
    );
    readAloud('knit 3', 'en');
    expect(said).toMatchObject(['stop', { text: 'knit 3', lang: 'en' }]);
    const { rate } = said[1] as { rate: number };
    expect(rate).toBeGreaterThan(0.7);
    expect(rate).toBeLessThan(1);
    hush();
    expect(said.slice(2)).toEqual(['stop']);
  });

  it('is not heard on a device without a voice, and nothing breaks', () => {
    expect(() => readAloud('knit 3', 'en')).not.toThrow();
    expect(() => hush()).not.toThrow();
  });
});

describe('next and previous of a headset', () => {
  function session(unknown: readonly string[] = []) {
    const handlers = new Map<string, (() => void) | null>();
    const fake = {
      metadata: undefined as unknown,
      setActionHandler: (action: string, turn: (() => void) | null) => {
        if (unknown.includes(action)) throw new TypeError('unknown action');
        handlers.set(action, turn);
      },
    };
    vi.stubGlobal('navigator', { mediaSession: fake });
    vi.stubGlobal(
      'MediaMetadata',
      class {
        constructor(readonly told: unknown) {}
      },
    );
    return { fake, handlers };
  }

  it('finish and undo a row under the garment’s name until the screen is left', () => {
    const { fake, handlers } = session();
    const done: string[] = [];
    const stop = onHeadset({ forward: () => done.push('row'), back: () => done.push('undo') }, 'Wren');
    expect(fake.metadata).toMatchObject({ told: { title: 'Wren' } });
    handlers.get('nexttrack')?.();
    handlers.get('previoustrack')?.();
    expect(done).toEqual(['row', 'undo']);
    stop();
    expect([...handlers]).toEqual([
      ['nexttrack', null],
      ['previoustrack', null],
    ]);
    expect(fake.metadata).toBeNull();
  });

  it('of a browser that knows but one of them work as far as they are known', () => {
    const { handlers } = session(['nexttrack']);
    const done: string[] = [];
    const stop = onHeadset({ forward: () => done.push('row'), back: () => done.push('undo') }, 'Wren');
    handlers.get('previoustrack')?.();
    expect(done).toEqual(['undo']);
    expect(stop).not.toThrow();
  });

  it('of a browser without any change nothing', () => {
    vi.stubGlobal('navigator', {});
    expect(onHeadset({ forward: () => undefined, back: () => undefined }, 'Wren')).not.toThrow();
  });
});
