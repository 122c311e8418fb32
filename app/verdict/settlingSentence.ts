import type { Settling } from "./whatSettles.ts";

/**
 * What would settle an open verdict, as one plain English sentence.
 * @param show  how a force is written; absent: newtons in three digits
 */
export function settlingSentence(settling: Settling, show: (forceN: number) => string = showNewtons): string {
  const { moreClampings, scatterUnknown, neededStandardN, improve } = settling;
  if (scatterUnknown) return "Clamp twice more: a single clamping does not show its scatter.";
  if (moreClampings !== undefined) {
    return `${moreClampings === 1 ? "One more clamping" : `${moreClampings} more clampings`} would settle it if mean and scatter stay as they are.`;
  }
  if (neededStandardN === undefined)
    return "The value lies on the limit itself: no measurement, however good, can settle it.";
  const way = improve === undefined ? "" : ` ${ways[improve]}`;
  return `It would be settled with a standard uncertainty of ${show(neededStandardN)} or less.${way}`.trim();
}

const showNewtons = (forceN: number) => `${Number(forceN.toPrecision(3))} N`;

const ways: Readonly<Record<NonNullable<Settling["improve"]>, string>> = {
  repeatability: "Clamp more often.",
  holdNoise: "Hold longer.",
  resolution: "A gauge with a finer step would help most.",
  zero: "A steadier zero, taken again after a rest, would help most.",
  gaugeProof: "A better proof of the gauge would help most.",
  adapter: "Another adapter, or a calibration of this one, would help most.",
  temperature: "Measuring nearer to the temperature of the proof would help most.",
  drift: "A new proof of the gauge would help most.",
  misalignment: "A straighter seat, proved and entered in place of the default, would help most.",
};
