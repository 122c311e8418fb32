import type { StripBuffer } from "../../state/StripBuffer.ts";

type Points = { readonly t: Float64Array; readonly forceN: Float64Array; count: number };

let room: Points = { t: new Float64Array(0), forceN: new Float64Array(0), count: 0 };

/**
 * What of the strip one has to draw: of each column of pixels the first, least, greatest and last reading, in order of time, so that
 * no peak is lost. The answer is lent until the next call: a strip is painted up to sixty times a second.
 */
export function stripColumns(strip: StripBuffer, fromT: number, columns: number, span: number): Points {
  if (room.t.length < columns * 4 + 8) {
    room = { t: new Float64Array(columns * 4 + 8), forceN: new Float64Array(columns * 4 + 8), count: 0 };
  }
  const out = room;
  out.count = 0;
  let added = -1;
  const add = (place: number) => {
    if (place === added || out.count >= out.t.length) return;
    added = place;
    out.t[out.count] = strip.t[place]!;
    out.forceN[out.count] = strip.forceN[place]!;
    out.count += 1;
  };

  let column = -1;
  let [first, least, greatest, last] = [-1, -1, -1, -1];
  const close = () => {
    if (first === -1) return;
    add(first);
    add(Math.min(order(least), order(greatest)) === order(least) ? least : greatest);
    add(order(least) < order(greatest) ? greatest : least);
    add(last);
  };
  const start = firstInside(strip, fromT);
  const order = (place: number) => strip.t[place]!;
  // Plain loop: this runs for every frame over every reading in sight.
  for (let i = start; i < strip.count; i += 1) {
    const place = strip.at(i);
    const here = Math.floor(((strip.t[place]! - fromT) / span) * columns);
    if (here !== column) {
      close();
      column = here;
      first = place;
      least = place;
      greatest = place;
    }
    if (strip.forceN[place]! < strip.forceN[least]!) least = place;
    if (strip.forceN[place]! > strip.forceN[greatest]!) greatest = place;
    last = place;
  }
  close();
  return out;
}

/** The last reading before the span, so that the line enters it from the left; found by halving. */
function firstInside(strip: StripBuffer, fromT: number): number {
  let low = 0;
  let high = strip.count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (strip.t[strip.at(middle)]! < fromT) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}
