import { normalGravity } from "./normalGravity.ts";

export type Gravity = {
  /** m/s2 */
  readonly value: number;
  /** Standard uncertainty (k = 1), m/s2. */
  readonly standard: number;
};

/**
 * Gravity at a site from its latitude and height. The uncertainty is 5e-5 of it (common practice, no source),
 * widened at height by what the rock under the site may add: between none and a plate of 2.67 g/cm3.
 * @throws RangeError  latitude or height outside its range
 */
export function siteGravity(latitudeDeg: number, heightM: number): Gravity {
  const value = normalGravity(latitudeDeg, heightM);
  const rockHalfWidth = (1.119e-6 * Math.max(0, heightM)) / 2;
  return { value, standard: Math.hypot(5e-5 * value, rockHalfWidth / Math.sqrt(3)) };
}
