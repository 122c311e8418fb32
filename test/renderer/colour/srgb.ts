export type Triple = readonly [number, number, number];

/** The three channels of "#rrggbb", 0 to 1, linear in light. @see IEC 61966-2-1; WCAG 2.2 "relative luminance" */
export function linearRgb(hex: string): Triple {
  const [r, g, b] = channels(hex);
  return [linear(r), linear(g), linear(b)];
}

/** "#rrggbb" laid over an opaque ground: "#rrggbbaa" as the eye gets it. */
export function overGround(hex: string, ground: string): string {
  const alpha = hex.length === 9 ? Number.parseInt(hex.slice(7), 16) / 255 : 1;
  const under = channels(ground);
  const mixed = channels(hex).map((c, i) => Math.round((c * alpha + under[i]! * (1 - alpha)) * 255));
  return `#${mixed.map((c) => c.toString(16).padStart(2, "0")).join("")}`;
}

function channels(hex: string): Triple {
  if (!/^#[0-9a-f]{6}([0-9a-f]{2})?$/i.test(hex)) throw new RangeError(`a colour is #rrggbb, got ${hex}`);
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255) as unknown as Triple; // three by construction
}

function linear(channel: number): number {
  return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
}
