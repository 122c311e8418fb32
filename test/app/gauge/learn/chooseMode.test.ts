import { describe, expect, it } from "vitest";
import { chooseMode } from "../../../../app/gauge/learn/chooseMode.ts";

const modeOf = (lines: readonly string[]) => chooseMode(lines.map((text, order) => ({ text, order })));
const many = (line: (i: number) => string) => modeOf(Array.from({ length: 60 }, (_, i) => line(i)));
const wave = (i: number) => Math.round(9000 * Math.sin(i / 9));

describe("chooseMode", () => {
  it("tells a decimal comma from a separator behind a counter", () => {
    expect(many((i) => `${(wave(i) / 100).toFixed(2).replace(".", ",")} kN`)).toMatchObject({
      mark: ",",
      thousands: "",
    });
    expect(many((i) => `${i},${wave(i)}`)).toMatchObject({ mark: ".", thousands: "" });
    expect(many((i) => `ST,${i},${(wave(i) / 100).toFixed(2)},kN`)).toMatchObject({ mark: ".", thousands: "" });
  });

  it("tells groups of thousands from decimals and from columns", () => {
    const grouped = (i: number, mark: string) => String(wave(i)).replace(/\B(?=(\d{3})+$)/, mark);
    expect(many((i) => `${grouped(i, ",")} N`)).toMatchObject({ mark: ".", thousands: "," });
    expect(many((i) => `${grouped(i, ".")} N`)).toMatchObject({ mark: ",", thousands: "." });
    expect(many((i) => `${grouped(i, " ")} N`)).toMatchObject({ thousands: " " });
    expect(many((i) => `${(wave(i) / 1000).toFixed(3)} kN`)).toMatchObject({ mark: ".", thousands: "" });
    expect(many((i) => `${i} ${String(Math.abs(wave(i)) % 1000).padStart(3, "0")} N`)).toMatchObject({ thousands: "" });
  });

  it("gives a sign behind digits to the next number, but leaves dates alone", () => {
    expect(many((i) => `${String(i).padStart(4, "0")}${wave(i) < 0 ? "-" : "+"}${Math.abs(wave(i))}`).glued).toBe(true);
    expect(many((i) => `2031-05-04 ${wave(i)} N`).glued).toBe(false);
  });
});
