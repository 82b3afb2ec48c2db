import { type Looks, type Meaning, meaningOf } from './meaning.ts';
import { type Order, readWords } from './read-words.ts';

export type Face = 'k' | 'p';

/** A loop on the needle. */
export interface Loop {
  /** as seen from the right side; undefined where nobody can say (a cable, 'in pattern') */
  readonly face: Face | undefined;
  /** the loops below it out of which it was made, by their place on the needle from the right edge; none for a new one */
  readonly from: readonly number[];
  /** the word by which it was made */
  readonly by: string;
}

export interface Knitted {
  /** on the needle after the row, from the right edge, whichever way the row went */
  readonly loops: readonly Loop[];
  /** the stitches in the order in which they were worked */
  readonly worked: readonly string[];
  readonly boundOff: number;
  readonly castOn: number;
  readonly held: number;
}

/** No printed row is longer; a repeat that uses up nothing ends here. */
const PATIENCE = 200_000;

/** Works a row by its printed words; throws where the words ask for what the needle has not, or leave some of it. */
export function knitRow(words: string, side: 'RS' | 'WS', before: readonly Pick<Loop, 'face'>[]): Knitted {
  const hand = new Hand(side, before);
  for (const order of readWords(words)) hand.follow(order);
  return hand.atEnd();
}

/** She sees from the words that she would never come nearer to the place. */
const usesNone = (order: Order): boolean =>
  'do' in order ? meaningOf(order.do).takes === 0 : order.again.every(usesNone);

class Hand {
  private readonly made: Loop[] = [];
  private readonly worked: string[] = [];
  private next = 0;
  private readonly counts = { boundOff: 0, castOn: 0, held: 0 };

  constructor(
    private readonly side: 'RS' | 'WS',
    private readonly before: readonly Pick<Loop, 'face'>[],
  ) {}

  follow(order: Order): void {
    const once = (): void => {
      if ('do' in order) this.work(order.do);
      else for (const one of order.again) this.follow(one);
    };
    if ('times' in order) {
      for (let i = 0; i < order.times; i += 1) once();
      return;
    }
    if (usesNone(order)) throw new Error('this would never end');
    if (this.left() < order.left) throw new Error(`only ${this.left()} are left, not ${order.left}`);
    while (this.left() > order.left) {
      const left = this.left();
      once();
      if (this.left() === left) throw new Error('this would never end');
    }
    if (this.left() < order.left) throw new Error(`the repeat does not come out at ${order.left}`);
  }

  atEnd(): Knitted {
    if (this.left() > 0) throw new Error(`${this.left()} stitches are left over`);
    const loops = this.side === 'RS' ? this.made : [...this.made].reverse();
    return { loops, worked: this.worked, ...this.counts };
  }

  private left(): number {
    return this.before.length - this.next;
  }

  /** A row on the wrong side meets the loops from the left edge on. */
  private placeOf(nth: number): number {
    return this.side === 'RS' ? nth : this.before.length - 1 - nth;
  }

  private work(word: string): void {
    const meaning = meaningOf(word);
    if (meaning.takes > this.left())
      throw new Error(`“${word}” wants ${meaning.takes}, ${this.left()} are left`);
    if (this.worked.push(word) > PATIENCE) throw new Error('this would never end');
    const from = Array.from({ length: meaning.takes }, (_, i) => this.placeOf(this.next + i));
    this.next += meaning.takes;
    if (meaning.is === 'bound off') this.counts.boundOff += 1;
    if (meaning.is === 'cast on') this.counts.castOn += 1;
    if (meaning.is === 'held') this.counts.held += 1;
    for (let i = 0; i < meaning.makes; i += 1) {
      const own = meaning.takes === meaning.makes && from[i] !== undefined ? [from[i] as number] : from;
      this.made.push({ face: this.faceOf(meaning, own[0]), from: own, by: word });
    }
  }

  private faceOf(meaning: Meaning, below: number | undefined): Face | undefined {
    if (meaning.is === 'slipped' || meaning.is === 'left')
      return below === undefined ? undefined : this.before[below]?.face;
    return meaning.looks && shown(meaning.looks, this.side);
  }
}

/** Knit on the right side shows a knit loop there; on the wrong side it shows a purl. */
const shown = (looks: Looks, side: 'RS' | 'WS'): Face => ((looks === 'knit') === (side === 'RS') ? 'k' : 'p');
