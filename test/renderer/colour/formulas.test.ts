import { describe, expect, it } from "vitest";
import { ciede2000 } from "./ciede2000.ts";
import { seenWith } from "./colourVision.ts";
import { contrastRatio, relativeLuminance } from "./contrast.ts";
import type { Triple } from "./srgb.ts";

describe("contrastRatio", () => {
  it("spans 1 to 21 (WCAG 2.2, note 1 of the definition)", () => {
    expect(contrastRatio("#000000", "#ffffff")).toBe(21);
    expect(contrastRatio("#808080", "#808080")).toBe(1);
  });

  // W3C, "Understanding SC 1.4.11: Non-text Contrast", the figures in its examples.
  it.each([
    ["#fff000", "#ffffff", 1.2],
    ["#949494", "#ffffff", 3],
    ["#9d9d9d", "#ffffff", 2.7],
    ["#aaaaaa", "#ffffff", 2.3],
  ])("meets the published example %s on %s, %f : 1, to half its last digit", (one, other, published) => {
    expect(Math.abs(contrastRatio(one, other) - published)).toBeLessThanOrEqual(0.05);
  });

  it("meets the example that the same page cuts instead of rounding: 5.699 stands as 5.6", () => {
    expect(Math.floor(contrastRatio("#e5e5e5", "#6221ea") * 10) / 10).toBe(5.6);
  });

  it("does not mind the order", () => {
    expect(contrastRatio("#123456", "#fedcba")).toBe(contrastRatio("#fedcba", "#123456"));
  });

  it("gives the primaries their weights (WCAG 2.2, relative luminance)", () => {
    expect(["#ff0000", "#00ff00", "#0000ff"].map(relativeLuminance)).toEqual([0.2126, 0.7152, 0.0722]);
  });
});

// G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30 (2005) 21, table 1; pairs 1, 3, 4, 7, 9, 11, 13, 15 to 20.
const sharma: readonly (readonly [...Triple, ...Triple, number])[] = [
  [50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425],
  [50, 2.8361, -74.02, 50, 0, -82.7485, 3.4412],
  [50, -1.3802, -84.2814, 50, 0, -82.7485, 1.0],
  [50, 0, 0, 50, -1, 2, 2.3669],
  [50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195],
  [50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045],
  [50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461],
  [50, 2.5, 0, 50, 0, -2.5, 4.3065],
  [50, 2.5, 0, 73, 25, -18, 27.1492],
  [50, 2.5, 0, 61, -5, 29, 22.8977],
  [50, 2.5, 0, 56, -27, -3, 31.903],
  [50, 2.5, 0, 58, 24, 15, 19.4535],
];

describe("ciede2000", () => {
  it.each(sharma)("meets the published pair (%f, %f, %f) and (%f, %f, %f)", (l1, a1, b1, l2, a2, b2, published) => {
    expect(Math.abs(ciede2000([l1, a1, b1], [l2, a2, b2]) - published)).toBeLessThanOrEqual(0.00005 + 1e-9);
  });
});

describe("seenWith", () => {
  // The matrices keep white and grey as they are: each row sums to 1.
  it.each(["protanopia", "deuteranopia", "tritanopia"] as const)("leaves grey alone under %s", (deficiency) => {
    for (const channel of seenWith(deficiency, [0.4, 0.4, 0.4])) expect(channel).toBeCloseTo(0.4, 5);
  });
});
