import fc from 'fast-check';
import { plainSpeech, speech } from '../src/words/settings.ts';
import { seed } from './seed.ts';

/** What every file of unit tests begins with. */

// a planted fault needs no smallest example: that it is found is all that is asked
fc.configureGlobal({ seed, endOnFailure: process.env.RIDGELINE_MUTANT !== undefined });

// A phone without vibration, wake lock or storage promises. It stays when a test takes a phone of its own away: what
// another test began may still ask it.
Object.defineProperty(globalThis, 'navigator', {
  value: { languages: ['en-US'] },
  configurable: true,
  writable: true,
});

// what another file chose is not this one's: garments are drafted over 10 cm or 4 in by it
speech.value = plainSpeech;
