import type { GuardZone } from "../../../app/verdict/guardZones.ts";
import type { Limits } from "../../../app/verdict/Judgement.ts";
import type { StripBuffer } from "../../state/StripBuffer.ts";
import { CHART_FONT, type Colours } from "../colours.ts";
import { hatch } from "../hatch.ts";
import { niceTicks } from "../niceTicks.ts";
import { roomForWords } from "./roomForWords.ts";
import { stripColumns } from "./stripColumns.ts";

export type Bracket = {
  readonly cycleId: string;
  readonly fromT: number;
  readonly toT: number;
  readonly number: string;
  readonly label: string;
  readonly dropped: boolean;
};

type StripView = {
  readonly strip: StripBuffer;
  readonly colours: Colours;
  readonly limits: Limits;
  /** Guard bands of the rule, as wide as the uncertainty now. */
  readonly zones: readonly GuardZone[];
  readonly brackets: readonly Bracket[];
  /** Newtons in one of the units on the axis. */
  readonly unitN: number;
  readonly topN: number;
  readonly number: (value: number, decimals: number) => string;
  readonly words: {
    readonly minimum: string;
    readonly warning: string;
    readonly maximum: string;
    readonly guard: string;
    readonly now: string;
    readonly seconds: string;
  };
};

/** How much time the strip shows; without a rate, how many readings. */
const STRIP_SPAN_S = 36;
const STRIP_READINGS = 600;
const LEFT = 46;
const RIGHT = 14;
const TOP = 40;
const BOTTOM = 26;

/** The last half minute of force with the limits, the clampings bracketed where their settled force was taken. */
export function paintStrip(c: CanvasRenderingContext2D, width: number, height: number, view: StripView): void {
  const { colours, limits, strip } = view;
  const span = strip.timed ? STRIP_SPAN_S : STRIP_READINGS;
  const toT = strip.lastT ?? 0;
  const plotWidth = width - LEFT - RIGHT;
  const plotHeight = height - TOP - BOTTOM;
  const lowN = -0.04 * view.topN;
  const x = (t: number) => LEFT + plotWidth * (1 - (toT - t) / span);
  const y = (forceN: number) => TOP + plotHeight * (1 - (forceN - lowN) / (view.topN - lowN));

  const band = (fromN: number | undefined, upToN: number | undefined, colour: string) => {
    if (fromN === undefined || upToN === undefined || upToN <= fromN) return;
    c.fillStyle = colour;
    c.fillRect(LEFT, y(upToN), plotWidth, y(fromN) - y(upToN));
  };
  const goodFrom = limits.warningN ?? limits.minimumN;
  band(goodFrom, limits.maximumN ?? view.topN, colours.bandGood);
  band(limits.minimumN, limits.warningN, colours.bandWatch);
  if (limits.maximumN !== undefined) band(limits.maximumN, view.topN, colours.bandStop);
  for (const { side, fromN, upToN } of view.zones) {
    const box = { left: LEFT, right: width - RIGHT, top: Math.max(TOP, y(upToN)), bottom: y(fromN) };
    hatch(c, box, colours.soft);
    c.font = `13px ${CHART_FONT}`;
    c.fillStyle = colours.soft;
    c.textAlign = "right";
    // On the far side of the limit, where no other limit has its word.
    c.fillText(view.words.guard, width - RIGHT - 6, side === "minimum" ? box.bottom + 14 : box.top - 4);
  }

  axis();
  const lines = [
    [limits.minimumN, view.words.minimum, 15],
    [limits.warningN, view.words.warning, -6],
    [limits.maximumN, view.words.maximum, -6],
  ] as const;
  const worded = roomForWords(
    lines.map(([forceN, , offset]) => (forceN === undefined ? undefined : y(forceN) + offset)),
  );
  for (const [i, [forceN, word, offset]] of lines.entries()) limit(forceN, worded[i] ? word : undefined, offset);
  trace();
  // Looked at here, not before: a cycle may close before or after the draft that holds it is told.
  const shown = view.brackets.filter(({ cycleId }) => strip.cycles.has(cycleId));
  for (const [i, bracket] of shown.entries()) {
    const next = shown[i + 1];
    const middle = (one: Bracket) => x((one.fromT + one.toT) / 2);
    drawBracket(bracket, next === undefined ? Number.POSITIVE_INFINITY : middle(next) - middle(bracket));
  }

  function axis(): void {
    c.font = `13px ${CHART_FONT}`;
    c.fillStyle = colours.soft;
    c.textAlign = "right";
    const ticks = niceTicks(0, view.topN / view.unitN, Math.max(2, plotHeight / 42));
    for (const value of ticks.values) {
      c.fillText(view.number(value, ticks.decimals), LEFT - 8, y(value * view.unitN) + 4.5);
      c.fillRect(LEFT - 4, y(value * view.unitN), 4, 1);
    }
    if (!strip.timed) return;
    c.textAlign = "center";
    for (let back = 0; back < span; back += plotWidth < 420 ? 10 : 5) {
      const label = back === 0 ? view.words.now : `\u2212${back} ${view.words.seconds}`;
      c.textAlign = back === 0 ? "right" : "center";
      c.fillText(label, x(toT - back) + (back === 0 ? RIGHT - 4 : 0), height - 8);
    }
  }

  function limit(forceN: number | undefined, word: string | undefined, offset: number): void {
    if (forceN === undefined) return;
    c.strokeStyle = colours.soft;
    c.lineWidth = 1;
    c.setLineDash([5, 4]);
    line(LEFT, y(forceN), width - RIGHT, y(forceN));
    c.setLineDash([]);
    if (word === undefined) return;
    c.fillStyle = colours.soft;
    c.textAlign = "left";
    c.font = `13px ${CHART_FONT}`;
    c.fillText(`${word} ${view.number(forceN / view.unitN, 1)}`, LEFT + 6, y(forceN) + offset);
  }

  function trace(): void {
    const points = stripColumns(strip, toT - span, Math.max(1, Math.floor(plotWidth)), span);
    c.strokeStyle = colours.ink;
    c.lineWidth = 1.8;
    c.lineJoin = "round";
    c.save();
    c.beginPath();
    c.rect(LEFT, 0, plotWidth + RIGHT, height - BOTTOM + 2);
    c.clip();
    c.beginPath();
    for (let i = 0; i < points.count; i += 1) c.lineTo(x(points.t[i]!), y(points.forceN[i]!));
    c.stroke();
    c.restore();
    if (strip.count === 0) return;
    c.fillStyle = colours.ink;
    c.beginPath();
    c.arc(x(toT), y(points.forceN[points.count - 1] ?? 0), 4, 0, 7);
    c.fill();
  }

  /** @param room  to the middle of the next bracket, pixels: where the label does not fit, its number does */
  function drawBracket({ fromT, toT: endT, number, label, dropped }: Bracket, room: number): void {
    const left = Math.max(x(fromT), LEFT);
    const right = Math.min(Math.max(x(endT), left + 6), width - RIGHT);
    if (right < LEFT || x(endT) < LEFT) return;
    c.strokeStyle = dropped ? colours.soft : colours.ink;
    c.lineWidth = 1.5;
    c.setLineDash(dropped ? [3, 3] : []);
    c.beginPath();
    c.moveTo(left, 32);
    c.lineTo(left, 25);
    c.lineTo(right, 25);
    c.lineTo(right, 32);
    c.stroke();
    c.setLineDash([]);
    c.fillStyle = dropped ? colours.soft : colours.ink;
    c.font = `${dropped ? 400 : 650} 15px ${CHART_FONT}`;
    c.textAlign = "center";
    const fits = c.measureText(label).width + 10 < room;
    const text = fits ? label : number;
    const half = c.measureText(text).width / 2;
    c.fillText(text, Math.min(Math.max((left + right) / 2, LEFT + half), width - half - 4), 17);
  }

  function line(x1: number, y1: number, x2: number, y2: number): void {
    c.beginPath();
    c.moveTo(x1, Math.round(y1) + 0.5);
    c.lineTo(x2, Math.round(y2) + 0.5);
    c.stroke();
  }
}
