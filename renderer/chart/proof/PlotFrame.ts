import type { PlotView } from "./PlotView.ts";

const MARGIN = { left: 68, right: 18, top: 34, bottom: 44 };

/** Where a plot's values lie in a picture of this size. */
export type PlotFrame = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (x: number) => number;
  readonly y: (y: number) => number;
};

export function frameOf(view: PlotView, width: number, height: number): PlotFrame {
  const [left, right] = [MARGIN.left, width - MARGIN.right];
  const [top, bottom] = [MARGIN.top, height - MARGIN.bottom];
  return {
    left,
    right,
    top,
    bottom,
    x: (x) => left + ((x - view.minX) / (view.maxX - view.minX)) * (right - left),
    y: (y) => bottom - ((y - view.minY) / (view.maxY - view.minY)) * (bottom - top),
  };
}

/** How near a pointer has to come, in pixels. */
const REACH = 26;

/** The point under the pointer; undefined where none is near. */
export function pointAt(
  view: PlotView,
  frame: PlotFrame,
  at: { readonly x: number; readonly y: number },
): number | undefined {
  let nearest: number | undefined;
  let least = REACH;
  for (const [i, point] of view.points.entries()) {
    const apart = Math.hypot(frame.x(point.x) - at.x, frame.y(point.y) - at.y);
    if (apart <= least) [nearest, least] = [i, apart];
  }
  return nearest;
}
