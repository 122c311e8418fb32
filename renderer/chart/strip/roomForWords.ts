/** Words nearer than this lie on one another, px. */
const LINE_PX = 13;

/**
 * Which words have room beside one another; the first goes before the next, and one without room is left out rather than written
 * over another.
 * @param atPx  heights of their lines, the weightiest first; undefined: there is none
 */
export function roomForWords(atPx: readonly (number | undefined)[]): boolean[] {
  const taken: number[] = [];
  return atPx.map((at) => {
    const room = at !== undefined && taken.every((other) => Math.abs(other - at) >= LINE_PX);
    if (room) taken.push(at);
    return room;
  });
}
