/** Corners that have become one: where edges meet since they were knitted or joined so. */
export class Ties {
  private readonly to = new Map<string, string>();

  of(corner: string): string {
    let at = corner;
    for (let next = this.to.get(at); next !== undefined; next = this.to.get(at)) at = next;
    return at;
  }

  tie(a: string, b: string): void {
    const [from, into] = [this.of(a), this.of(b)];
    if (from !== into) this.to.set(from, into);
  }

  meet(a: string, b: string): boolean {
    return this.of(a) === this.of(b);
  }
}
