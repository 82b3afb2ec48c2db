/** Text as bytes that are as few as can be, and back. */

export async function deflated(text: string): Promise<Uint8Array<ArrayBuffer>> {
  const packed = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

/**
 * Unfolds piece by piece and gives up beyond the limit, before a hostile text fills the memory.
 * @param most bytes that it may unfold to
 */
export async function inflateWithin(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<string> {
  const unfolded = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const letters = new TextDecoder();
  let text = '';
  for (let size = 0; ; ) {
    const { value, done } = await unfolded.read();
    if (done) return text + letters.decode();
    size += value.length;
    if (size > most) {
      await unfolded.cancel();
      throw new RangeError('too large');
    }
    text += letters.decode(value, { stream: true });
  }
}
