import type { Page } from "playwright-core";

/** Begins to note when frames come. */
export async function startFrames(page: Page): Promise<void> {
  await page.evaluate(() => {
    const frames: number[] = [];
    (window as unknown as { frames: number[] }).frames = frames; // read back by `frameTimes`
    const note = (at: number) => {
      frames.push(at);
      requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
  });
}

/** Milliseconds from each frame to the next since `startFrames`. */
export async function frameTimes(page: Page): Promise<readonly number[]> {
  const at = await page.evaluate(() => (window as unknown as { frames: number[] }).frames);
  return at.slice(1).map((ms, i) => ms - at[i]!);
}

/** @param share  0 to 1; the value that so many of them do not exceed */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
