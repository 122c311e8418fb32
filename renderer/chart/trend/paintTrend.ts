import { band, course, drawPoint, reach } from "./drawCourse.ts";
import { bands, baseline, events, levelWords, today } from "./drawFrame.ts";
import type { Scaled } from "./Scaled.ts";

/** What lies under the checks: limits, bands, services, steps. */
export function paintBehind(s: Scaled): void {
  clipped(s, () => {
    bands(s);
    for (const line of s.view.lines) band(s, line);
    baseline(s);
  });
  events(s);
  today(s);
}

/** Lines and checks, and the words that must stay readable over them. */
export function paintFront(s: Scaled): void {
  clipped(s, () => {
    for (const line of s.view.lines) course(s, line);
    for (const [i, mark] of s.view.marks.entries()) {
      if (mark.x >= s.view.minX && mark.x <= s.view.maxX) drawPoint(s, mark, i === s.view.picked);
    }
  });
  levelWords(s);
  reach(s);
}

function clipped({ c, left, right, top, bottom }: Scaled, draw: () => void): void {
  c.save();
  c.beginPath();
  c.rect(left, top, right - left + 8, bottom - top);
  c.clip();
  draw();
  c.restore();
}
