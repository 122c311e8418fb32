import type { Triple } from "./srgb.ts";

/** CIELAB of a linear sRGB colour, white point D65. @see IEC 61966-2-1 (matrix); CIE 15:2004 */
export function labOf([r, g, b]: Triple): Triple {
  const x = (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047;
  const y = 0.2126729 * r + 0.7151522 * g + 0.072175 * b;
  const z = (0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883;
  return [116 * root(y) - 16, 500 * (root(x) - root(y)), 200 * (root(y) - root(z))];
}

function root(t: number): number {
  return t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116;
}

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const hue = (a: number, b: number) => (a === 0 && b === 0 ? 0 : ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360);

/**
 * CIEDE2000 colour difference of two CIELAB colours; about 1 is just seen side by side.
 * @see G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30 (2005) 21, eqs. 2 to 22
 */
export function ciede2000(one: Triple, other: Triple): number {
  const meanC = (Math.hypot(one[1], one[2]) + Math.hypot(other[1], other[2])) / 2;
  const g = 0.5 * (1 - Math.sqrt(meanC ** 7 / (meanC ** 7 + 25 ** 7)));
  const [a1, a2] = [(1 + g) * one[1], (1 + g) * other[1]];
  const [c1, c2] = [Math.hypot(a1, one[2]), Math.hypot(a2, other[2])];
  const [h1, h2] = [hue(a1, one[2]), hue(a2, other[2])];
  const grey = c1 * c2 === 0;
  const turn = h2 - h1;
  const dh = grey ? 0 : turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin(radians(dh / 2));
  const [l, c] = [(one[0] + other[0]) / 2, (c1 + c2) / 2];
  const sum = h1 + h2;
  const h = grey ? sum : Math.abs(turn) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  const t =
    1 -
    0.17 * Math.cos(radians(h - 30)) +
    0.24 * Math.cos(radians(2 * h)) +
    0.32 * Math.cos(radians(3 * h + 6)) -
    0.2 * Math.cos(radians(4 * h - 63));
  const sL = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const [sC, sH] = [1 + 0.045 * c, 1 + 0.015 * c * t];
  const turned =
    -Math.sin(radians(60 * Math.exp(-(((h - 275) / 25) ** 2)))) * 2 * Math.sqrt(c ** 7 / (c ** 7 + 25 ** 7));
  const [pL, pC, pH] = [(other[0] - one[0]) / sL, (c2 - c1) / sC, dH / sH];
  return Math.sqrt(pL ** 2 + pC ** 2 + pH ** 2 + turned * pC * pH);
}
