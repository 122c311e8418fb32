import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jsonPieces } from "../../../../main/host/loopback/jsonPieces.ts";

describe("an answer in pieces", () => {
  it("is what JSON.stringify writes, whatever it holds", () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.nat(1_700), (value, length) => {
        const answer = { ok: true, value: { left: undefined, all: Array.from({ length }, () => value), value } };
        expect([...jsonPieces(answer)].join("")).toBe(JSON.stringify(answer));
        expect([...jsonPieces(value)].join("")).toBe(JSON.stringify(value));
      }),
      { numRuns: 200 },
    );
    expect([...jsonPieces({ at: new Date(0), bytes: Buffer.from("a") })].join("")).toBe(
      JSON.stringify({ at: new Date(0), bytes: Buffer.from("a") }),
    );
  });

  it("has no long piece where a list is long", () => {
    const rows = Array.from({ length: 50_000 }, (_, i) => ({ name: `Mill ${i}`, spark: [1, 1, 1] }));
    const lengths = [...jsonPieces({ ok: true, value: rows })].map((piece) => piece.length);
    expect(Math.max(...lengths)).toBeLessThan(30_000);
  });
});
