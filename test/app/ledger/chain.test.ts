import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { ChainWalk, type StoredEntry } from "../../../app/ledger/ChainWalk.ts";
import type { Entry } from "../../../app/ledger/entry.ts";
import { entryTail } from "../../../app/ledger/entryTail.ts";
import { GENESIS } from "../../../app/ledger/genesis.ts";
import { sealEntry } from "../../../app/ledger/sealEntry.ts";
import { idOf } from "../../support/aCheck.ts";

const origin = "3f0c2d9e-8f4b-4c1e-9f5e-0123456789ab";
const sha256 = (data: string | Uint8Array) => createHash("sha256").update(data).digest("hex");

function chainOf(count: number): StoredEntry[] {
  let prev = GENESIS;
  return Array.from({ length: count }, (_, i) => {
    const body = { spindleId: idOf(1), checkId: idOf(i), reason: `for the test, "id":"${idOf(9)}"`, operatorId: null };
    const at = "2024-03-04T08:00:00.000Z";
    const entry: Entry = {
      v: 1,
      origin,
      seq: i + 1,
      id: idOf(100 + i),
      kind: "baselineChoice",
      at,
      offsetMinutes: -90,
      prev,
      body,
    };
    const sealed = sealEntry(entry, sha256);
    prev = sealed.hash;
    return { seq: i + 1, kind: "baselineChoice", hash: sealed.hash, bytes: Buffer.from(sealed.text) };
  });
}

function faultsOf(entries: readonly StoredEntry[]): (string | undefined)[] {
  const walk = new ChainWalk(origin, sha256);
  return entries.map((entry) => walk.take(entry));
}

describe("the hash", () => {
  // FIPS 180-4 and its published examples.
  const published = JSON.parse(readFileSync("test/published/fips180-4-sha256.json", "utf8"));

  it("is SHA-256 as published", () => {
    expect(published.inputs.messages.map((m: string) => sha256(m))).toEqual(published.expected.digests.published);
    const { character, times } = published.inputs.repeated;
    expect(sha256(character.repeat(times))).toBe(published.expected.repeated.published);
  });
});

describe("sealEntry", () => {
  it("hashes the whole entry in canonical form, by a second way of computing it", () => {
    const [first] = chainOf(1);
    const read = JSON.parse(Buffer.from(first!.bytes).toString("utf8"));
    const sorted = JSON.stringify(
      Object.fromEntries(
        Object.keys(read)
          .sort()
          .map((k) => [k, read[k]]),
      ),
    );
    expect(sorted).toBe(Buffer.from(first!.bytes).toString("utf8"));
    expect(first!.hash).toBe(createHash("sha256").update(first!.bytes).digest("hex"));
  });
});

describe("entryTail", () => {
  it("reads the envelope and is not led astray by the body", () => {
    const [, second] = chainOf(2);
    expect(entryTail(second!.bytes)).toEqual({
      id: idOf(101),
      kind: "baselineChoice",
      offsetMinutes: -90,
      origin,
      prev: chainOf(1)[0]!.hash,
      seq: 2,
    });
  });

  it("knows what is no entry", () => {
    expect(entryTail(Buffer.from("{}"))).toBeUndefined();
    expect(entryTail(new Uint8Array())).toBeUndefined();
  });
});

describe("ChainWalk", () => {
  it("finds nothing in a whole chain", () => {
    expect(faultsOf(chainOf(5))).toEqual(Array(5).fill(undefined));
  });

  it("begins in the middle with the entry before", () => {
    const entries = chainOf(5);
    const walk = new ChainWalk(origin, sha256, { seq: 2, hash: entries[1]!.hash });
    expect(entries.slice(2).map((e) => walk.take(e))).toEqual(Array(3).fill(undefined));
    expect(walk.head).toEqual({ seq: 5, hash: entries[4]!.hash });
  });

  it("finds every single flipped bit of an entry's bytes, and names that entry alone", () => {
    const entries = chainOf(3);
    const { bytes } = entries[1]!;
    for (let bit = 0; bit < bytes.length * 8; bit += 1) {
      const flipped = Uint8Array.from(bytes);
      flipped[bit >> 3]! ^= 1 << (bit & 7);
      expect(faultsOf([entries[0]!, { ...entries[1]!, bytes: flipped }, entries[2]!])).toEqual([
        undefined,
        "altered",
        undefined,
      ]);
    }
  });

  it("finds an entry rewritten with a hash that fits it: the next does not name it", () => {
    const entries = chainOf(3);
    const text = Buffer.from(entries[1]!.bytes).toString("utf8").replace("for the test", "for the Test");
    const forged = { ...entries[1]!, bytes: Buffer.from(text), hash: sha256(text) };
    expect(faultsOf([entries[0]!, forged, entries[2]!])).toEqual([undefined, undefined, "broken"]);
  });

  it("finds an entry left out", () => {
    const entries = chainOf(3);
    expect(faultsOf([entries[0]!, entries[2]!])).toEqual([undefined, "missing"]);
  });

  it("finds two entries that changed places", () => {
    const [a, b, c] = chainOf(3);
    expect(faultsOf([b!, a!, c!]).filter((f) => f !== undefined).length).toBeGreaterThan(0);
  });

  it("finds columns that say something else than the bytes", () => {
    const [a] = chainOf(1);
    expect(faultsOf([{ ...a!, kind: "check" }])).toEqual(["mislabelled"]);
    expect(faultsOf([{ ...a!, seq: 2 }])).toEqual(["mislabelled"]);
    expect(new ChainWalk("another", sha256).take(a!)).toBe("mislabelled");
  });

  it("finds bytes that are no entry though their hash fits", () => {
    expect(faultsOf([{ seq: 1, kind: "check", bytes: Buffer.from("{}"), hash: sha256("{}") }])).toEqual(["unreadable"]);
  });
});
