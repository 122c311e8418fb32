import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type ChecksumMethod, checksumOf } from "../../../app/gauge/checksums.ts";
import { bytesOfText } from "./formats.ts";

type Case = {
  method: ChecksumMethod;
  complement?: boolean;
  text?: string;
  bytes?: number[];
  result: number;
  printed: string;
  source: string;
};

// Each case carries its source; see the file.
const published: { cases: Case[] } = JSON.parse(
  readFileSync(new URL("../../published/checksums.json", import.meta.url), "utf8"),
);

describe("checksumOf", () => {
  it.each(published.cases)("meets $printed ($source)", ({ method, complement, text, bytes, result }) => {
    const span = text === undefined ? Uint8Array.from(bytes!) : bytesOfText(text);
    const value = checksumOf(method, span, 0, span.length);
    expect(complement === true ? (10 - value) % 10 : value).toBe(result);
  });

  it("covers only the span it is given", () => {
    const bytes = bytesOfText("xx12345yy");
    expect(checksumOf("byteSum10", bytes, 2, 7)).toBe((49 + 50 + 51 + 52 + 53) % 10);
    expect(checksumOf("digitSum10", bytes, 0, 9)).toBe(15 % 10);
  });
});
