import type { Pen } from "./Pen.ts";

/**
 * Draws a path of straight strokes written as in SVG (M, L, H, V, Z, small letters relative), begun anew.
 * @throws RangeError  another command: curves are not drawn here
 */
export function tracePath(pen: Pen, d: string): void {
  pen.beginPath();
  let x = 0;
  let y = 0;
  for (const [, letter = "", figures = ""] of d.matchAll(/([a-z])([^a-z]*)/gi)) {
    const numbers = (figures.match(/-?\d*\.?\d+/g) ?? []).map(Number);
    const relative = letter === letter.toLowerCase();
    const command = letter.toUpperCase();
    if (command === "Z") pen.closePath();
    else if (command === "H" || command === "V") {
      for (const value of numbers) {
        if (command === "H") x = relative ? x + value : value;
        else y = relative ? y + value : value;
        pen.lineTo(x, y);
      }
    } else if (command === "M" || command === "L") {
      for (let i = 0; i + 1 < numbers.length; i += 2) {
        x = relative ? x + numbers[i]! : numbers[i]!;
        y = relative ? y + numbers[i + 1]! : numbers[i + 1]!;
        if (command === "M" && i === 0) pen.moveTo(x, y);
        else pen.lineTo(x, y);
      }
    } else throw new RangeError(`tracePath knows no command ${letter}`);
  }
}
