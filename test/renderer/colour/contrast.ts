import { linearRgb } from "./srgb.ts";

/**
 * Relative luminance of an sRGB colour, 0 for black to 1 for white.
 * @param hex  "#rrggbb"
 * @see WCAG 2.2, definition "relative luminance"
 */
export function relativeLuminance(hex: string): number {
  const [r, g, b] = linearRgb(hex);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/**
 * Contrast ratio of two opaque colours, 1 to 21, the order without meaning.
 * @see WCAG 2.2, definition "contrast ratio"
 */
export function contrastRatio(one: string, other: string): number {
  const [low, high] = [relativeLuminance(one), relativeLuminance(other)].sort((a, b) => a - b) as [number, number];
  return (high + 0.05) / (low + 0.05);
}
