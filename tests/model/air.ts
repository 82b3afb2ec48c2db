/** What goes between the pages of one device: the browser's channels, each message heard in a task of its own. */
export interface Air {
  readonly channels: Set<Channel>;
  /** messages on their way */
  busy: number;
}

export const stillAir = (): Air => ({ channels: new Set(), busy: 0 });

/** Whether a page hears and says anything; asked for with each message. */
interface Ears {
  readonly deaf: boolean;
  readonly dead: boolean;
}

/** The class that a page sees as the browser's `BroadcastChannel`. */
export function channelFor(air: Air, page: Ears): typeof BroadcastChannel {
  class PageChannel extends Channel {
    constructor(name: string) {
      super(name, page, air);
    }
  }
  return PageChannel as unknown as typeof BroadcastChannel;
}

type Listener = (event: { readonly data: unknown }) => void;

class Channel {
  readonly #listeners: Listener[] = [];
  constructor(
    readonly name: string,
    readonly page: Ears,
    readonly air: Air,
  ) {
    air.channels.add(this);
  }
  addEventListener(_kind: 'message', listener: Listener): void {
    this.#listeners.push(listener);
  }
  postMessage(data: unknown): void {
    if (this.page.dead) return;
    for (const other of this.air.channels)
      if (other !== this && other.name === this.name) this.#send(other, data);
  }
  close(): void {
    this.#listeners.length = 0;
    this.air.channels.delete(this);
  }
  #send(to: Channel, data: unknown): void {
    this.air.busy += 1;
    setImmediate(() => {
      this.air.busy -= 1;
      if (to.page.deaf || to.page.dead) return;
      for (const listener of to.#listeners) listener({ data: structuredClone(data) });
    });
  }
}
