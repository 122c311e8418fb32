import { type RefObject, useEffect, useRef } from "react";

type Paint = (context: CanvasRenderingContext2D, width: number, height: number) => void;

/**
 * A canvas as sharp as the screen, painted at most once a frame. React makes it and lets it be: whatever changes calls `repaint`.
 * @param subscribe  called once; it is given `repaint` and answers its undo
 */
export function useCanvas(
  paint: Paint,
  subscribe: (repaint: () => void) => () => void,
): RefObject<HTMLCanvasElement | null> {
  const canvas = useRef<HTMLCanvasElement>(null);
  const latest = useRef(paint);
  const request = useRef<() => void>(() => {});
  useEffect(() => {
    latest.current = paint;
    request.current();
  });
  useEffect(() => {
    const element = canvas.current;
    const context = element?.getContext("2d");
    if (element === null || context === null || context === undefined) return;
    let frame = 0;
    const draw = () => {
      frame = 0;
      const { clientWidth: width, clientHeight: height } = element;
      const ratio = devicePixelRatio || 1;
      if (element.width !== Math.round(width * ratio) || element.height !== Math.round(height * ratio)) {
        element.width = Math.round(width * ratio);
        element.height = Math.round(height * ratio);
      }
      context.setTransform(ratio, 0, 0, ratio, 0, 0);
      context.clearRect(0, 0, width, height);
      if (width > 0 && height > 0) latest.current(context, width, height);
    };
    const repaint = () => {
      if (frame === 0) frame = requestAnimationFrame(draw);
    };
    request.current = repaint;
    const size = new ResizeObserver(repaint);
    size.observe(element);
    const undo = subscribe(repaint);
    document.fonts?.ready.then(repaint);
    repaint();
    return () => {
      cancelAnimationFrame(frame);
      size.disconnect();
      undo();
    };
  }, [subscribe]);
  return canvas;
}
