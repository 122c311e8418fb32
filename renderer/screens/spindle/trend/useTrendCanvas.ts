import { type PointerEvent, useEffect, useRef, useState } from "react";
import { createTrendChart, type TrendChart } from "../../../chart/trend/createTrendChart.ts";
import type { TrendView } from "../../../chart/trend/TrendView.ts";
import { type Stretch, within, zoomAbout } from "../../../chart/trend/zoom.ts";

/** A pointer that moves less has pressed, not dragged. */
const DRAG_PX = 10;
const WHEEL_STEP = 1.25;

/**
 * One chart for the panel's life; a new view only changes its data. Dragging chooses a stretch. The wheel zooms with Ctrl, or
 * while the chart has the focus: else the page is to scroll on under the pointer.
 */
export function useTrendCanvas(
  view: TrendView | undefined,
  on: {
    readonly pick: (mark: number | undefined, pressed: boolean) => void;
    readonly stretch: (stretch: Stretch | undefined) => void;
  },
) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const chart = useRef<TrendChart>(undefined);
  const latest = useRef({ on, view });
  const dragged = useRef(false);
  const [drag, setDrag] = useState<{ readonly from: number; readonly to: number }>();
  useEffect(() => {
    latest.current = { on, view };
  });
  useEffect(() => {
    const element = canvas.current;
    if (view === undefined || element === null) {
      chart.current?.destroy(); // its canvas has gone
      chart.current = undefined;
    } else if (chart.current === undefined) {
      if (element.getContext("2d") === null) return;
      chart.current = createTrendChart(element, view, (mark, pressed) =>
        latest.current.on.pick(mark, pressed && !dragged.current),
      );
    } else chart.current.show(view);
  }, [view]);
  useEffect(
    () => () => {
      chart.current?.destroy();
      chart.current = undefined;
    },
    [],
  );
  const there = view !== undefined;
  useEffect(() => {
    const element = canvas.current;
    if (!there || element === null) return;
    const wheel = (event: WheelEvent) => {
      const { view: now, on: tell } = latest.current;
      if (now === undefined || chart.current === undefined) return;
      if (!event.ctrlKey && document.activeElement !== element) return;
      event.preventDefault();
      const at = chart.current.xAt(event.offsetX);
      const factor = event.deltaY < 0 ? 1 / WHEEL_STEP : WHEEL_STEP;
      tell.stretch(zoomAbout({ from: now.minX, to: now.maxX }, at, factor, now.whole));
    };
    element.addEventListener("wheel", wheel, { passive: false }); // React's own listeners cannot hold the page still
    return () => element.removeEventListener("wheel", wheel);
  }, [there]);

  const place = (event: PointerEvent<HTMLCanvasElement>) => event.nativeEvent.offsetX;
  const pointer = {
    onPointerDown: (event: PointerEvent<HTMLCanvasElement>) => {
      dragged.current = false;
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture?.(event.pointerId);
      setDrag({ from: place(event), to: place(event) });
    },
    onPointerMove: (event: PointerEvent<HTMLCanvasElement>) => {
      if (drag !== undefined) setDrag({ ...drag, to: place(event) });
    },
    onPointerUp: (event: PointerEvent<HTMLCanvasElement>) => {
      setDrag(undefined);
      const [made, now] = [chart.current, latest.current.view];
      if (drag === undefined || made === undefined || now === undefined) return;
      if (Math.abs(place(event) - drag.from) < DRAG_PX) return;
      dragged.current = true; // the click that follows is not meant
      const [one, other] = [made.xAt(drag.from), made.xAt(place(event))];
      on.stretch(within({ from: Math.min(one, other), to: Math.max(one, other) }, now.whole));
    },
    onPointerCancel: () => setDrag(undefined),
  };
  const chosen =
    drag === undefined || Math.abs(drag.to - drag.from) < DRAG_PX
      ? undefined
      : { left: Math.min(drag.from, drag.to), width: Math.abs(drag.to - drag.from) };
  return { canvas, pointer, chosen };
}
