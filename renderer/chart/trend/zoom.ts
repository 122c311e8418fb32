/** A stretch of the x axis. */
export type Stretch = { readonly from: number; readonly to: number };

/** Closer than this share of the whole there is nothing more to see. */
const LEAST_SHARE = 1 / 200;

/**
 * Shows more or less about a place that stays where it is.
 * @param factor  under 1 comes nearer
 * @returns  undefined: the whole is shown
 */
export function zoomAbout(shown: Stretch, at: number, factor: number, whole: Stretch): Stretch | undefined {
  const from = at - (at - shown.from) * factor;
  return within({ from, to: from + (shown.to - shown.from) * factor }, whole);
}

/** Moves the stretch so that x is in sight, with some room beside it. */
export function bringInSight(shown: Stretch, x: number, whole: Stretch): Stretch | undefined {
  const room = (shown.to - shown.from) * 0.08;
  const by = x < shown.from + room ? x - room - shown.from : x > shown.to - room ? x + room - shown.to : 0;
  return within({ from: shown.from + by, to: shown.to + by }, whole);
}

/** A stretch held inside the whole and not too short. @returns undefined where it is the whole */
export function within(wanted: Stretch, whole: Stretch): Stretch | undefined {
  const all = whole.to - whole.from;
  const span = Math.max(Math.abs(wanted.to - wanted.from), all * LEAST_SHARE);
  if (span >= all * 0.999) return undefined;
  const middle = (wanted.from + wanted.to) / 2;
  const from = Math.min(Math.max(middle - span / 2, whole.from), whole.to - span);
  return { from, to: from + span };
}
