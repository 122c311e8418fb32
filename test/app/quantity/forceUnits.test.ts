import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import {
  type ForceUnit,
  forceUnits,
  fromNewtons,
  newtonsPerUnit,
  toNewtons,
} from "../../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../../app/quantity/parseForceUnit.ts";

// NIST SP 811 (2008), appendix B.8 and B.9; seven-digit printed values from memory.
const published = JSON.parse(readFileSync(new URL("../../published/force-units.json", import.meta.url), "utf8"));

function unitNamed(text: string): ForceUnit {
  const meaning = parseForceUnit(text);
  if (meaning.kind !== "force") throw new Error(`${text} is ${meaning.kind}`);
  return meaning.unit;
}

/** One step of the last binary digit at `value`. */
function ulp(value: number): number {
  const exponent = Math.floor(Math.log2(Math.abs(value)));
  return 2 ** (Math.max(exponent, -1022) - 52);
}

describe("force units", () => {
  it.each(Object.entries<string>(published.newton_per_unit_exact))("%s is exactly %s N, to 1e-14", (name, exact) => {
    const unit = unitNamed(name);
    expect(Math.abs(newtonsPerUnit[unit] / Number(exact) - 1)).toBeLessThanOrEqual(1e-14);
  });

  it.each(Object.entries<string>(published.printed_seven_digits_from_memory))(
    "%s meets the printed %s",
    (name, printed) => {
      const last = 10 ** -(printed.split(".")[1]?.length ?? 0);
      expect(Math.abs(newtonsPerUnit[unitNamed(name)] - Number(printed))).toBeLessThanOrEqual(last / 2 + 1e-15);
    },
  );

  it.each(published.cases as { value: number; from: string; to: string; result: number }[])(
    "$value $from is $result $to",
    ({ value, from, to, result }) => {
      const got = fromNewtons(toNewtons(value, unitNamed(from)), unitNamed(to));
      expect(Math.abs(got / result - 1)).toBeLessThanOrEqual(1e-14);
    },
  );

  it("comes back from any unit within one unit in the last place, a million random forces", { timeout: 60_000 }, () => {
    let state = 12345;
    const random = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return state / 2 ** 32;
    };
    let worst = 0;
    for (let i = 0; i < 1_000_000; i += 1) {
      const forceN = (random() - 0.5) * 10 ** (random() * 12 - 3);
      const unit = forceUnits[i % forceUnits.length]!;
      const off = Math.abs(toNewtons(fromNewtons(forceN, unit), unit) - forceN);
      if (off > 0) worst = Math.max(worst, off / ulp(forceN));
    }
    expect(worst).toBeLessThanOrEqual(1);
  });
});
