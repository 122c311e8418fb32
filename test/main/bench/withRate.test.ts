import { describe, expect, it } from "vitest";
import type { Parsed } from "../../../app/contract/methods.ts";
import { withRate } from "../../../main/bench/withRate.ts";

type Raw = Parsed<"link.usePattern">["pattern"];
const plain = {
  version: 1,
  fields: [{ field: "force", decimalMark: ".", decimals: [2] }],
  terminator: "LF",
  unit: "kN",
};
const stamped = (coarse: boolean): Raw => ({
  ...plain,
  fields: [{ field: "time", unit: "ms", coarse }, { field: "text", text: ";" }, ...plain.fields],
});

describe("a pattern that is kept", () => {
  it("keeps the rate at which its gauge was heard, as gauges are built", () => {
    expect(withRate(plain, 49.6)).toEqual({ ...plain, rateHz: 50 });
    expect(withRate(plain, 73)).toEqual({ ...plain, rateHz: 73 });
    expect(withRate(stamped(true), 50)).toEqual({ ...stamped(true), rateHz: 50 });
  });

  it.each<[string, Raw, number | undefined]>([
    ["its own rate is known", { ...plain, rateHz: 10 }, 50],
    ["the lines carry their time", stamped(false), 50],
    ["it sends when a key is pressed", { ...plain, sends: "onKey" }, 50],
    ["nothing was heard yet", plain, 0],
    ["there is no link", plain, undefined],
  ])("stays as it is where %s", (_, pattern, heardHz) => {
    expect(withRate(pattern, heardHz)).toEqual(pattern);
  });
});
