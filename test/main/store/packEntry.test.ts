import { readFileSync } from "node:fs";
import { inflateRawSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { dictionary } from "../../../main/store/ledger/dictionary.ts";
import { packEntry, unpackEntry, unpackMany } from "../../../main/store/ledger/packEntry.ts";
import { sha256 } from "../../../main/store/ledger/sha256.ts";
import { bytesOf, type StoredRow } from "../../../main/store/ledger/storedRows.ts";
import { aCheck } from "../../support/aCheck.ts";

const entry = (seed: number) => Buffer.from(`{"at":"2024","body":${canonicalJson(aCheck({ seed }))},"v":1}`);

describe("packing", () => {
  it("gives back the same bytes, whatever they are", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 3_000 }), (array) => {
        const bytes = Buffer.from(array);
        expect(unpackEntry(packEntry(bytes), bytes.length).equals(bytes)).toBe(true);
      }),
    );
  });

  it("makes a check a quarter of its size and less, and leaves short entries alone", () => {
    const bytes = entry(1);
    expect(packEntry(bytes).packed.length).toBeLessThan(bytes.length / 4);
    const short = Buffer.from("{}");
    expect(packEntry(short)).toEqual({ codec: 0, packed: short });
  });

  it("reads what was packed before: the dictionary is never changed", () => {
    // Packed with the first program that packed so; a changed dictionary would unpack something else, or nothing.
    expect(sha256(dictionary)).toBe("cf9f2fd6efcca60b9ce5dcec231aa9b3709cc82d80877e2cfed963f383b28e23");
    const kept = JSON.parse(readFileSync("test/main/store/packedEntry.json", "utf8")) as Record<
      string,
      string | number
    >;
    const bytes = unpackEntry({ codec: 1, packed: Buffer.from(String(kept.packed), "base64") }, Number(kept.length));
    expect(sha256(bytes)).toBe(kept.sha256);
  });

  it("is raw deflate with a preset window, as any zlib reads it", () => {
    const bytes = entry(2);
    const { packed } = packEntry(bytes);
    const finished = Buffer.concat([packed, Buffer.from([3, 0])]); // an empty last block
    expect(inflateRawSync(finished, { dictionary }).equals(bytes)).toBe(true);
  });

  it("unpacks many in one go to the same bytes", () => {
    const all = [1, 2, 3, 4, 5].map(entry);
    const packed = all.map((bytes) => packEntry(bytes).packed);
    const lengths = all.map((bytes) => bytes.length);
    expect(unpackMany(packed, lengths)).toEqual(all);
    expect(unpackMany([], [])).toEqual([]);
    expect(unpackMany(packed, [...lengths.slice(1), 7])).toBeUndefined();
  });

  it("of a damaged entry spoils no other, wherever the bit flipped", () => {
    const all = [1, 2, 3].map(entry);
    const rows = all.map((bytes, i): StoredRow => [i, "check", "", bytes.length, 1, packEntry(bytes).packed]);
    for (let bit = 0; bit < rows[1]![5].length * 8; bit += 37) {
      const flipped = Buffer.from(rows[1]![5]);
      flipped[bit >> 3]! ^= 1 << (bit & 7);
      const [first, , third] = bytesOf([rows[0]!, [...rows[1]!.slice(0, 5), flipped] as StoredRow, rows[2]!]);
      expect([first!.equals(all[0]!), third!.equals(all[2]!)]).toEqual([true, true]);
    }
  });

  it.each([
    ["another codec", { codec: 2, packed: Buffer.from("{}") }],
    ["another length", { codec: 0, packed: Buffer.from("{ }") }],
    ["bytes that are no stream", { codec: 1, packed: Buffer.from("no stream") }],
  ])("refuses %s", (_, packed) => {
    expect(() => unpackEntry(packed, 2)).toThrow();
  });
});
