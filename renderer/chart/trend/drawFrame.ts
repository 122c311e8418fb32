import { CHART_FONT } from "../colours.ts";
import { hatch } from "../hatch.ts";
import { line, type Scaled, write } from "./Scaled.ts";
import type { TrendEvent } from "./TrendView.ts";

/** Bands between the limits, each limit with its word. */
export function bands({ c, view, left, right, top, bottom, y }: Scaled): void {
  const { minimumN, warningN, maximumN } = view.limits;
  const fill = (fromN: number, upToN: number, colour: string) => {
    const low = Math.min(bottom, y(fromN));
    const high = Math.max(top, y(upToN));
    if (low <= high) return;
    c.fillStyle = colour;
    c.fillRect(left, high, right - left, low - high);
  };
  const { colours } = view;
  if (minimumN !== undefined) fill(Number.NEGATIVE_INFINITY, minimumN, colours.bandStop);
  if (minimumN !== undefined && warningN !== undefined) fill(minimumN, warningN, colours.bandWatch);
  const goodFrom = warningN ?? minimumN;
  if (goodFrom !== undefined) fill(goodFrom, maximumN ?? Number.POSITIVE_INFINITY, colours.bandGood);
  if (maximumN !== undefined) fill(maximumN, Number.POSITIVE_INFINITY, colours.bandStop);
  for (const { fromN, upToN } of view.zones)
    hatch(c, { left, right, top: Math.max(top, y(upToN)), bottom: Math.min(bottom, y(fromN)) }, colours.soft);
  for (const limitN of [minimumN, warningN, maximumN]) {
    if (limitN === undefined || y(limitN) < top || y(limitN) > bottom) continue;
    c.strokeStyle = colours.soft;
    c.lineWidth = 1;
    c.setLineDash([5, 4]);
    line(c, left, y(limitN), right, y(limitN));
    c.setLineDash([]);
  }
}

/** What the level lines mean; over everything else, so that no whisker crosses a word. */
export function levelWords(s: Scaled): void {
  const { view, left, right, top, bottom, y } = s;
  const { minimumN, warningN, maximumN } = view.limits;
  const say = (word: string, forceN: number | undefined, align: "left" | "right", offset: number) => {
    if (forceN === undefined || y(forceN) < top || y(forceN) > bottom) return;
    const text = `${word} ${view.number(forceN / view.unitN, 1)}`;
    write(s, text, { x: align === "left" ? left + 7 : right - 6, y: y(forceN) + offset, align }, "soft");
  };
  say(view.words.minimum, minimumN, "left", 15);
  say(view.words.warning, warningN, "left", -5);
  say(view.words.maximum, maximumN, "left", -5);
  for (const zone of view.zones) {
    const middle = y((zone.fromN + zone.upToN) / 2);
    if (middle < top || middle > bottom) continue;
    write(s, view.words.guard, { x: right - 6, y: middle + 4.5, align: "right" }, "soft");
  }
  say(view.words.baseline, view.baselineN, "right", -5);
}

/** The level all checks are compared with. */
export function baseline({ c, view, left, right, top, bottom, y }: Scaled): void {
  const { baselineN, colours } = view;
  if (baselineN === undefined || y(baselineN) < top || y(baselineN) > bottom) return;
  c.strokeStyle = colours.ink;
  c.lineWidth = 1;
  c.setLineDash([1.5, 4]);
  line(c, left, y(baselineN), right, y(baselineN));
  c.setLineDash([]);
}

/** Labels of neighbours that would lie on each other go to a second and third line. */
export function events(s: Scaled): void {
  const { c, view, x, left, right, top, bottom } = s;
  const ends: number[] = [];
  for (const event of view.events) {
    const at = x(event.x);
    if (at < left - 1 || at > right + 1) continue;
    drawEvent(event, at);
  }

  function drawEvent(event: TrendEvent, at: number): void {
    c.strokeStyle = view.colours.ink;
    c.lineWidth = event.kind === "service" ? 1.6 : 1;
    c.setLineDash(event.kind === "service" ? [] : [3, 3]);
    line(c, at, top - 8, at, bottom);
    c.setLineDash([]);
    c.font = `600 13px ${CHART_FONT}`;
    const width = c.measureText(event.label).width;
    const toLeft = at + 8 + width > right;
    const start = toLeft ? at - 8 - width : at + 7;
    let row = ends.findIndex((end) => end < start - 8);
    if (row === -1) row = ends.length;
    ends[row] = start + width;
    write(s, event.label, { x: start, y: top + 8 + row * 17, align: "left" }, "ink");
  }
}

/** Where what was measured ends. */
export function today(s: Scaled): void {
  const { c, view, x, top, bottom, left, right } = s;
  if (view.todayX === undefined) return;
  const at = x(view.todayX);
  if (at < left || at > right) return;
  c.strokeStyle = view.colours.soft;
  c.lineWidth = 1;
  c.setLineDash([2, 3]);
  line(c, at, top, at, bottom);
  c.setLineDash([]);
  write(s, view.words.today, { x: at, y: top - 10, align: "center" }, "soft");
}
