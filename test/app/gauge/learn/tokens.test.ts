import { describe, expect, it } from "vitest";
import { type NumberMode, tokenizer } from "../../../../app/gauge/learn/tokens.ts";

const point: NumberMode = { mark: ".", thousands: "", glued: false };
const kinds = (line: string, mode: Partial<NumberMode> = {}) =>
  tokenizer({ ...point, ...mode })(line).map((t) => `${t.kind}:${t.text}`);
const numbers = (line: string, mode: Partial<NumberMode> = {}) =>
  tokenizer({ ...point, ...mode })(line).flatMap((t) => (t.number === undefined ? [] : [t.number.value]));

describe("tokenizer", () => {
  it.each([
    ["  -0.04 kN", ["number:-0.04", "word:kN"]],
    ["F=-13 N", ["word:F", "mark:=", "number:-13", "word:N"]],
    ["--.-- kN", ["run:--.--", "word:kN"]],
    ["2031-05-04 10:00:01.5 +1", ["date:2031-05-04", "clock:10:00:01.5", "number:+1"]],
    [
      "117,12:30:02,17.60,kN",
      ["number:117", "mark:,", "clock:12:30:02", "mark:,", "number:17.60", "mark:,", "word:kN"],
    ],
    ["12 N m", ["number:12", "word:N m"]],
    ["12 N/mm", ["number:12", "word:N/mm"]],
    ["12 ft-lb", ["number:12", "word:ft-lb"]],
    ["O.L kN", ["word:O.L", "word:kN"]],
    ["1.5e+3 N", ["number:1.5e+3", "word:N"]],
  ])("takes %j apart", (line, tokens) => {
    expect(kinds(line)).toEqual(tokens);
  });

  it("reads numbers as the stream writes them", () => {
    expect(numbers("12,5;-3,25", { mark: "," })).toEqual([12.5, -3.25]);
    expect(numbers("12 345.5", { thousands: " " })).toEqual([12345.5]);
    expect(numbers("1,234,567", { thousands: "," })).toEqual([1234567]);
    expect(numbers("0017+012.3", { glued: true })).toEqual([17, 12.3]);
    expect(numbers("- 12.5")).toEqual([-12.5]);
    expect(numbers("12.5- kN")).toEqual([-12.5]);
  });
});
