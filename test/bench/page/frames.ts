import type { Page } from "playwright-core";

/** Frames of the page that kept its thread busy for longer than 50 ms; they are what "long" means there. */
export type LongFrame = { readonly tookMs: number; readonly scriptMs: number; readonly startedAtMs: number };

/** As much of a PerformanceLongAnimationFrameTiming as is read here; the compiler's own types have none. */
type Noted = PerformanceEntry & { readonly scripts: readonly { readonly duration: number }[] };

type Watched = { frames: number[]; long: LongFrame[] };

/**
 * Begins to note when frames come, and which of them the page itself took long over.
 * @see W3C Long Animation Frames API
 */
export async function startFrames(page: Page): Promise<void> {
  await page.evaluate(() => {
    if (!PerformanceObserver.supportedEntryTypes.includes("long-animation-frame")) {
      throw new Error("This browser does not tell long frames; the bench needs Chromium 123 or newer.");
    }
    const watched: Watched = { frames: [], long: [] };
    (window as unknown as { watched: Watched }).watched = watched; // read back by `watchedFrames`
    const note = (at: number) => {
      watched.frames.push(at);
      requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
    new PerformanceObserver((list) => {
      for (const frame of list.getEntries() as Noted[]) {
        const scriptMs = frame.scripts.reduce((sum, script) => sum + script.duration, 0);
        watched.long.push({ tookMs: frame.duration, scriptMs, startedAtMs: frame.startTime });
      }
    }).observe({ type: "long-animation-frame" });
  });
}

/** What was noted since `startFrames`: milliseconds from each frame to the next, and the long frames. */
export async function watchedFrames(page: Page): Promise<{ gapsMs: readonly number[]; long: readonly LongFrame[] }> {
  const { frames, long } = await page.evaluate(() => (window as unknown as { watched: Watched }).watched);
  return { gapsMs: frames.slice(1).map((ms, i) => ms - frames[i]!), long };
}

/** @param share  0 to 1; the value that so many of them do not exceed */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
