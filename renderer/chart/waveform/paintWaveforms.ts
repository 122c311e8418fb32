import type { Limits } from "../../../app/verdict/Judgement.ts";
import { CHART_FONT, type Colours } from "../colours.ts";
import { niceTicks } from "../niceTicks.ts";

export type Curve = {
  readonly t: readonly number[];
  readonly forceN: readonly number[];
  /** The one compared with. */
  readonly dashed: boolean;
};

type WaveformPicture = {
  readonly curves: readonly Curve[];
  readonly limits: Limits;
  readonly colours: Colours;
  readonly unitN: number;
  readonly timed: boolean;
  readonly number: (value: number, decimals: number) => string;
  readonly seconds: string;
};

const LEFT = 52;
const RIGHT = 14;
const TOP = 14;
const BOTTOM = 30;

/** Clampings laid over each other from their own first reading on; at most a few thousand readings each, so all are drawn. */
export function paintWaveforms(
  c: CanvasRenderingContext2D,
  width: number,
  height: number,
  picture: WaveformPicture,
): void {
  const { curves, colours, limits } = picture;
  let longest = 1e-9;
  let topN = 1e-9;
  let lowN = 0;
  for (const curve of curves) {
    for (let i = 0; i < curve.t.length; i += 1) {
      longest = Math.max(longest, curve.t[i]!);
      topN = Math.max(topN, curve.forceN[i]!);
      lowN = Math.min(lowN, curve.forceN[i]!);
    }
  }
  topN *= 1.06;
  lowN -= 0.03 * topN;
  const plotWidth = width - LEFT - RIGHT;
  const plotHeight = height - TOP - BOTTOM;
  const x = (t: number) => LEFT + (plotWidth * t) / longest;
  const y = (forceN: number) => TOP + plotHeight * (1 - (forceN - lowN) / (topN - lowN));

  c.font = `13px ${CHART_FONT}`;
  c.fillStyle = colours.soft;
  c.textAlign = "right";
  const forces = niceTicks(0, topN / picture.unitN, Math.max(2, plotHeight / 46));
  for (const value of forces.values) {
    c.fillText(picture.number(value, forces.decimals), LEFT - 8, y(value * picture.unitN) + 4.5);
  }
  c.textAlign = "center";
  const times = niceTicks(0, longest, Math.max(2, plotWidth / 110));
  for (const value of times.values) {
    c.fillText(
      `${picture.number(value, times.decimals)}${picture.timed ? ` ${picture.seconds}` : ""}`,
      x(value),
      height - 8,
    );
  }
  c.strokeStyle = colours.soft;
  c.setLineDash([5, 4]);
  for (const limitN of [limits.minimumN, limits.warningN]) {
    if (limitN === undefined || limitN > topN) continue;
    c.beginPath();
    c.moveTo(LEFT, y(limitN));
    c.lineTo(width - RIGHT, y(limitN));
    c.stroke();
  }
  // The one compared with lies below, so that the check itself stays in front.
  for (const dashed of [true, false]) {
    for (const curve of curves) {
      if (curve.dashed !== dashed) continue;
      c.setLineDash(dashed ? [7, 5] : []);
      c.strokeStyle = dashed ? colours.soft : colours.ink;
      c.lineWidth = dashed ? 1.6 : 1.9;
      c.beginPath();
      for (let i = 0; i < curve.t.length; i += 1) c.lineTo(x(curve.t[i]!), y(curve.forceN[i]!));
      c.stroke();
    }
  }
  c.setLineDash([]);
}
