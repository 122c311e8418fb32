import { studentQuantile } from "../../numerics/studentQuantile.ts";

/** How far an adapter's scale has moved: relative to the one before, and the half-width of the 95 % interval of that. */
export type ScaleChange = { readonly relative: number; readonly expanded: number; readonly off: boolean };

/**
 * An adapter's new scale against the one it had. It is off where the two lie further apart than both uncertainties
 * together explain at 95 %.
 * @param before, now  each with its relative standard uncertainty (k = 1)
 * @see ISO/IEC 17043:2023, B.4: the normalized error of two independent results (from memory)
 */
export function scaleChange(
  before: { readonly scale: number; readonly relative: number },
  now: { readonly scale: number; readonly relative: number },
): ScaleChange {
  const relative = now.scale / before.scale - 1;
  const expanded = studentQuantile(0.975, Infinity) * Math.hypot(before.relative, now.relative) * (1 + relative);
  return { relative, expanded, off: Math.abs(relative) > expanded };
}
