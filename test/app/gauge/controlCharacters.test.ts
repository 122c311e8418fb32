import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type ControlName, controlCode, controlNames } from "../../../app/gauge/controlCharacters.ts";

// ISO-IR 001, the set of control characters of the ISO 646 (the same names in ECMA-6 and RFC 20).
const published = JSON.parse(readFileSync(new URL("../../published/control-characters.json", import.meta.url), "utf8"));

describe("control characters", () => {
  it("carry the names and codes of ISO 646", () => {
    for (const column of [0, 1]) {
      (published.columns[column] as ControlName[]).forEach((name, row) => {
        expect(controlCode(name)).toBe(16 * column + row);
      });
    }
    expect(controlCode("DEL")).toBe(published.DEL);
    expect(controlNames.length).toBe(33);
  });
});
