import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { barPath, dotAt, MARK_HEIGHT, MARK_WIDTH, socketPath, taperPath } from "../../ui/verdict/seatMark.ts";
import type { Pen } from "../Pen.ts";
import { tracePath } from "../tracePath.ts";

/** The verdict's mark about a point of the chart: the same drawing as on the page, so the depth of seat is read here too. `rim` widens it all round. */
export function drawMark(
  c: Pen,
  x: number,
  y: number,
  verdict: Verdict,
  colour: string,
  height: number,
  rim = 0,
): void {
  const scale = height / MARK_HEIGHT;
  c.save();
  c.translate(x - (MARK_WIDTH / 2) * scale, y - 16 * scale);
  c.scale(scale, scale);
  c.strokeStyle = colour;
  c.fillStyle = colour;
  c.lineJoin = "round";
  c.lineCap = "round";
  c.lineWidth = (verdict === "cannotTell" ? 2.8 : 2.6) + rim;
  c.setLineDash(verdict === "cannotTell" ? [0.1, 4.2] : []);
  tracePath(c, socketPath);
  c.stroke();
  c.setLineDash([]);
  const taper = taperPath(verdict);
  if (taper !== undefined) {
    tracePath(c, taper);
    if (verdict !== "stop") c.fill();
    if (verdict === "stop" || rim > 0) c.stroke();
  }
  if (verdict === "stop") {
    c.lineWidth = 3.6 + rim;
    tracePath(c, barPath);
    c.stroke();
  }
  if (verdict === "cannotTell") {
    c.beginPath();
    c.arc(dotAt.x, dotAt.y, dotAt.radius, 0, 7);
    c.fill();
  }
  c.restore();
}
