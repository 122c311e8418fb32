/** How one clamping runs. Forces in newtons at the tool, times in seconds from the moment the gripper closes. */
export type ClampingShape = {
  /** The force 2 s after it has arrived: what a settled force is to be measured against. */
  readonly settledN: number;
  /** Share of the force that comes slowly, while the wedge draws in; the rest snaps. */
  readonly drawnShare: number;
  readonly drawS: number;
  /** Of the whole force: greatest over settled, less one. */
  readonly overshoot: number;
  readonly ringHz: number;
  /** Change per decade of time, a share of the force. */
  readonly creep: number;
};

export type Release = {
  readonly atS: number;
  /** How long the fall takes. */
  readonly fallS: number;
  /** What stays, a share of the force: a release line that is not vented. */
  readonly residual: number;
};

/**
 * Force at a time of a clamping: drawn in, snapped (a second-order step response with its overshoot and ring), held
 * with creep to the logarithm of time, released along half a cosine. Smooth enough that its truth is known exactly.
 * @see standard second-order step response, control-engineering textbooks (from memory)
 */
export function forceOfClamping(shape: ClampingShape, release: Release | undefined, tS: number): number {
  if (tS <= 0) return 0;
  if (release === undefined || tS <= release.atS) return heldForce(shape, tS);
  const from = heldForce(shape, release.atS);
  const left = shape.settledN * release.residual;
  const passed = Math.min(1, (tS - release.atS) / release.fallS);
  return left + ((from - left) * (1 + Math.cos(Math.PI * passed))) / 2;
}

function heldForce(shape: ClampingShape, tS: number): number {
  const drawn = shape.drawnShare * ((1 - Math.cos(Math.PI * Math.min(1, tS / shape.drawS))) / 2);
  const sinceSnapS = tS - shape.drawS;
  if (sinceSnapS <= 0) return shape.settledN * drawn;
  const snapped = 1 - shape.drawnShare;
  const level = drawn + snapped * stepResponse(shape.overshoot / snapped, shape.ringHz, sinceSnapS);
  // Two seconds are the middle of the window a settled force is read in; the clamp at 20 ms keeps the snap as it is.
  const creep = 1 + shape.creep * Math.log10(Math.max(0.02, sinceSnapS) / 2);
  return shape.settledN * level * creep;
}

/** Unit step of an underdamped second-order system with this overshoot and ringing frequency. */
export function stepResponse(overshoot: number, ringHz: number, tS: number): number {
  const damping = dampingOf(overshoot);
  const ring = 2 * Math.PI * ringHz;
  const natural = ring / Math.sqrt(1 - damping * damping);
  return (
    1 -
    (Math.exp(-damping * natural * tS) / Math.sqrt(1 - damping * damping)) * Math.sin(ring * tS + Math.acos(damping))
  );
}

/** Damping ratio of a second-order system from its overshoot (0 to 1, both excluded). */
export function dampingOf(overshoot: number): number {
  if (!(overshoot > 0 && overshoot < 1))
    throw new RangeError(`dampingOf requires an overshoot between 0 and 1, got ${overshoot}`);
  const log = Math.log(overshoot);
  return -log / Math.sqrt(Math.PI ** 2 + log ** 2);
}

/** When the force has arrived: the first ring's crest. */
export function peakTimeOf(shape: ClampingShape): number {
  return shape.drawS + 1 / (2 * shape.ringHz);
}
