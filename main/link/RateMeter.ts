/** Events a second over the last five seconds, by arrival: for showing, never for timing a cycle. */
export class RateMeter {
  #points: { readonly ms: number; readonly count: number }[] = [];

  /** @param count  events so far */
  note(count: number, ms: number): void {
    const last = this.#points.at(-1);
    if (last !== undefined && ms - last.ms < 100) return;
    this.#points.push({ ms, count });
    while (this.#points.length > 2 && ms - this.#points[0]!.ms > 5_000) this.#points.shift();
  }

  /** Undefined until half a second is known, and while nothing comes. */
  get perSecond(): number | undefined {
    const first = this.#points[0];
    const last = this.#points.at(-1);
    if (first === undefined || last === undefined || last.ms - first.ms < 500 || last.count === first.count) {
      return undefined;
    }
    return ((last.count - first.count) * 1_000) / (last.ms - first.ms);
  }
}
