import { execFileSync } from "node:child_process";
import { randomUUID } from "node:crypto";
import { appendFileSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { crc32 } from "node:zlib";
import { afterAll, describe, expect, it } from "vitest";
import { systemClock } from "../../../main/link/Clock.ts";
import type { SessionSettings } from "../../../main/link/SessionTypes.ts";
import { SpoolParser } from "../../../main/link/SpoolParser.ts";
import type { SpoolRecord } from "../../../main/link/SpoolRecord.ts";
import { SpoolWriter } from "../../../main/link/SpoolWriter.ts";
import { RECORD_HEAD, SPOOL_MAGIC } from "../../../main/link/spoolCodec.ts";
import { listSpools } from "../../../main/link/spoolFolder.ts";
import { isSpool, readSpool, readSpoolFile } from "../../../main/link/spoolReader.ts";
import { ManualClock } from "../../support/ManualClock.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-spool-"));
afterAll(() => rmSync(root, { recursive: true }));

const settings = (): SessionSettings => ({
  sessionId: randomUUID(),
  source: { kind: "tcp", host: "127.0.0.1", port: 4001 },
  rateHz: 50,
});

function writer(more: { partBytes?: number; folder?: string } = {}) {
  const folder = more.folder ?? mkdtempSync(join(root, "f-"));
  const failures: Error[] = [];
  const spool = new SpoolWriter({
    folder,
    settings: settings(),
    clock: systemClock,
    onFailed: (c) => failures.push(c),
    ...more,
  });
  return { spool, folder, failures };
}

const records = (bytes: Uint8Array) => {
  const found: SpoolRecord[] = [];
  const end = readSpool(bytes, (r) => found.push(r.kind === "bytes" ? { ...r, bytes: r.bytes.slice() } : r));
  return { found, end };
};
const streamOf = (found: readonly SpoolRecord[]) =>
  Buffer.concat(found.map((r) => (r.kind === "bytes" ? r.bytes : new Uint8Array(0)))).toString("latin1");

async function sample() {
  const { spool, folder } = writer();
  spool.bytes(Buffer.from("+1.0 kN\r\n"));
  spool.series("s1", "began");
  spool.bytes(Buffer.from("+2.0 k"));
  spool.gap("portGone", 1_500);
  spool.bytes(Buffer.from("+3.0 kN\r\n"));
  await spool.close();
  return readFileSync(listSpools(folder)[0]!.path);
}

describe("a spool", () => {
  it("gives back every record in order, with times that never fall", async () => {
    const { found, end } = records(await sample());
    expect(found.map((r) => r.kind)).toEqual(["header", "bytes", "series", "bytes", "gap", "bytes"]);
    expect(found[0]).toMatchObject({ part: 1, settings: { rateHz: 50 } });
    expect(found[4]).toMatchObject({ why: "portGone", lastedMs: 1_500 });
    expect(streamOf(found)).toBe("+1.0 kN\r\n+2.0 k+3.0 kN\r\n");
    const times = found.map((r) => r.atMs);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(end.damaged).toBe(false);
  });

  it("is told from text by its first bytes", async () => {
    expect(isSpool(await sample())).toBe(true);
    expect(isSpool(Buffer.from("+1.0 kN\r\n+1.0 kN\r\n+1.0 kN\r\n"))).toBe(false);
    expect(isSpool(new Uint8Array(3))).toBe(false);
    expect(() => readSpool(Buffer.from("x".repeat(40)), () => {})).toThrow(RangeError);
  });

  it("is the same whatever the blocks it is read in", async () => {
    const bytes = await sample();
    const whole = records(bytes).found;
    for (const size of [1, 2, 7, 64]) {
      const parser = new SpoolParser();
      const found: SpoolRecord[] = [];
      for (let from = 0; from < bytes.length; from += size) {
        parser.push(bytes.subarray(from, from + size), (r) =>
          found.push(r.kind === "bytes" ? { ...r, bytes: Buffer.from(r.bytes) } : r),
        );
      }
      expect(JSON.stringify(found)).toBe(
        JSON.stringify(whole.map((r) => (r.kind === "bytes" ? { ...r, bytes: Buffer.from(r.bytes) } : r))),
      );
      expect(parser.wholeBytes).toBe(bytes.length);
    }
  });

  it("cut at any byte gives the whole records before the cut and nothing else", async () => {
    const bytes = await sample();
    const { found } = records(bytes);
    for (let cut = SPOOL_MAGIC.length; cut < bytes.length; cut += 1) {
      const torn = records(bytes.subarray(0, cut));
      expect(JSON.stringify(torn.found)).toBe(JSON.stringify(found.slice(0, torn.found.length)));
      expect(torn.end.wholeBytes).toBeLessThanOrEqual(cut);
      expect(torn.end.damaged).toBe(false);
    }
  });

  it("takes one damaged record for a gap and keeps its neighbours", async () => {
    const bytes = Buffer.from(await sample());
    const at = bytes.indexOf("+2.0 k");
    bytes[at + 1] = 0x39;
    const { found, end } = records(bytes);
    expect(found.map((r) => r.kind)).toEqual(["header", "bytes", "series", "gap", "gap", "bytes"]);
    expect(streamOf(found)).toBe("+1.0 kN\r\n+3.0 kN\r\n");
    expect(end.damaged).toBe(true);
  });

  it("never takes a flipped bit for a reading", async () => {
    const bytes = await sample();
    const pieces = ["+1.0 kN\r\n", "+2.0 k", "+3.0 kN\r\n"];
    const subsets = [0, 1, 2, 3, 4, 5, 6, 7].map((mask) => pieces.filter((_, i) => mask & (1 << i)).join(""));
    for (let bit = SPOOL_MAGIC.length * 8; bit < bytes.length * 8; bit += 1) {
      const bad = Buffer.from(bytes);
      bad[bit >> 3]! ^= 1 << (bit & 7);
      expect(subsets).toContain(streamOf(records(bad).found));
    }
  });

  it("reads a tail of zeros, as a power cut leaves it, for nothing", async () => {
    const bytes = await sample();
    const { found } = records(Buffer.concat([bytes, Buffer.alloc(500)]));
    expect(streamOf(found)).toBe(streamOf(records(bytes).found));
  });

  it("seals with CRC-32, whose published check value is cbf43926 for 123456789", async () => {
    // ITU-T V.42 / ISO 3309 generator; check value from the usual CRC catalogues (from memory).
    expect(crc32("123456789").toString(16)).toBe("cbf43926");
    const bytes = await sample();
    const length = bytes.readUInt32LE(SPOOL_MAGIC.length);
    const body = bytes.subarray(SPOOL_MAGIC.length + 8, SPOOL_MAGIC.length + RECORD_HEAD + length);
    expect(bytes.readUInt32LE(SPOOL_MAGIC.length + 4)).toBe(crc32(body));
  });

  it("reads from a file what it reads from memory", async () => {
    const bytes = await sample();
    const path = join(root, "one.spool");
    writeFileSync(path, bytes);
    const kinds: string[] = [];
    expect(await readSpoolFile(path, (r) => kinds.push(r.kind))).toEqual(records(bytes).end);
    expect(kinds).toEqual(records(bytes).found.map((r) => r.kind));
  });
});

describe("SpoolWriter", () => {
  it("has every byte in the file when the call returns", () => {
    const { spool, folder } = writer();
    spool.bytes(Buffer.from("+1.0 kN\r\n"));
    expect(streamOf(records(readFileSync(listSpools(folder)[0]!.path)).found)).toBe("+1.0 kN\r\n");
    return spool.close();
  });

  it("splits a chunk that is longer than a record may be", async () => {
    const { spool, folder } = writer();
    const long = Buffer.alloc(3_000_000, "0.1 N\n");
    spool.bytes(long);
    await spool.close();
    expect(streamOf(records(readFileSync(listSpools(folder)[0]!.path)).found)).toBe(long.toString("latin1"));
  });

  it("goes on in a next part with a header of its own", async () => {
    const { spool, folder } = writer({ partBytes: 2_000 });
    const lines = Array.from({ length: 300 }, (_, i) => `${i} N\r\n`);
    for (const line of lines) spool.bytes(Buffer.from(line));
    await spool.close();
    const parts = listSpools(folder);
    expect(parts.length).toBeGreaterThan(2);
    expect(parts.map((p) => p.part)).toEqual(parts.map((_, i) => i + 1));
    const all = parts.map((p) => records(readFileSync(p.path)).found);
    expect(all.map((found) => found[0]!.kind)).toEqual(parts.map(() => "header"));
    expect(all.map(streamOf).join("")).toBe(lines.join(""));
  });

  it("can be read by nobody but its owner", async () => {
    const { spool, folder } = writer();
    await spool.close();
    if (process.platform !== "win32") expect(statSync(listSpools(folder)[0]!.path).mode & 0o077).toBe(0);
  });

  it("notes a wall clock that was set while it ran", async () => {
    let wall = 1_000_000;
    const folder = mkdtempSync(join(root, "f-"));
    const clock = { ...systemClock, wallMs: () => wall + performance.now() };
    const spool = new SpoolWriter({ folder, settings: settings(), clock, onFailed: () => {} });
    spool.bytes(Buffer.from("a"));
    wall += 3_600_000;
    spool.bytes(Buffer.from("b"));
    spool.bytes(Buffer.from("c"));
    await spool.close();
    const { found } = records(readFileSync(listSpools(folder)[0]!.path));
    expect(found.map((r) => r.kind)).toEqual(["header", "bytes", "wall", "bytes", "bytes"]);
  });

  it("says once that it cannot write and lets measuring go on", () => {
    const file = join(root, "not-a-folder");
    appendFileSync(file, "");
    const { spool, failures } = writer({ folder: join(file, "spool") });
    spool.bytes(Buffer.from("+1.0 kN\r\n"));
    spool.bytes(Buffer.from("+1.0 kN\r\n"));
    expect(failures).toHaveLength(1);
    expect(spool.path).toBeUndefined();
  });

  it("goes on in a next part, with a gap, when the disk can be written again", async () => {
    const clock = new ManualClock();
    const file = join(mkdtempSync(join(root, "f-")), "in-the-way");
    writeFileSync(file, "");
    const told: string[] = [];
    const spool = new SpoolWriter({
      folder: file,
      settings: settings(),
      clock,
      onFailed: () => told.push("failed"),
      onWritable: () => told.push("writable"),
    });
    spool.bytes(Buffer.from("lost"));
    await clock.advance(11_000);
    spool.bytes(Buffer.from("lost"));
    rmSync(file);
    spool.bytes(Buffer.from("lost")); // not tried again yet
    await clock.advance(11_000);
    spool.bytes(Buffer.from("kept"));
    await spool.close();
    expect(told).toEqual(["failed", "writable"]);
    const { found } = records(readFileSync(listSpools(file)[0]!.path));
    expect(found.map((r) => r.kind)).toEqual(["header", "gap", "bytes"]);
    expect(streamOf(found)).toBe("kept");
  });

  it.skipIf(process.platform === "win32")("cuts off what a full disk took only half of", () => {
    // A limit on the file's size stands in for the full disk: the system takes a part of the last write, then none.
    const folder = mkdtempSync(join(root, "f-"));
    const child = join(import.meta.dirname, "..", "..", "support", "spoolUntilFull.ts");
    const said = execFileSync("sh", [
      "-c",
      `trap '' XFSZ; ulimit -f 20; exec "$0" "$1" "$2"`,
      process.execPath,
      child,
      folder,
    ]);
    expect(JSON.parse(String(said))).toEqual(["EFBIG"]);
    const bytes = readFileSync(listSpools(folder)[0]!.path);
    const { found, end } = records(bytes);
    expect(end).toEqual({ wholeBytes: bytes.length, damaged: false });
    expect(streamOf(found)).toMatch(/^(\+\d{6} N\r\n){100,}$/);
  });
});
