import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { Source } from "../../../app/contract/linkViews.ts";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { systemClock } from "../../../main/link/Clock.ts";
import { sourceMaker } from "../../../main/link/makeSource.ts";
import { recover } from "../../../main/link/recover.ts";
import { Session } from "../../../main/link/Session.ts";
import type { SessionSettings } from "../../../main/link/SessionTypes.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import { FakeLinks, port } from "../../support/FakeLinks.ts";
import { chunksOf, clampings, usualPattern } from "../../support/gaugeLines.ts";
import { ManualClock, settled } from "../../support/ManualClock.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-session-"));
afterAll(() => rmSync(root, { recursive: true }));

const setting = { baud: 9600, dataBits: 8, parity: "none", stopBits: 1 } as const;
const serial = (path = "/dev/ttyUSB0"): Source => ({ kind: "serial", path, setting });

/** A session on links, clock and folder of its own. */
function bench(more: Partial<SessionSettings> = {}) {
  const clock = new ManualClock();
  const links = new FakeLinks();
  const spoolFolder = mkdtempSync(join(root, "s-"));
  const states: string[] = [];
  const cycles: Cycle[] = [];
  const gaps: (number | undefined)[] = [];
  const faults: unknown[] = [];
  let readings = 0;
  const settings: SessionSettings = {
    sessionId: randomUUID(),
    source: serial(),
    pattern: usualPattern,
    rateHz: 100,
    capacityN: 30_000,
    ...more,
  };
  const session = new Session(
    settings,
    { clock, makeSource: links.makeSource, listPorts: links.listPorts, spoolFolder, onFault: (c) => faults.push(c) },
    {
      changed: (status) => states.at(-1) !== status.state && states.push(status.state),
      readings: (batch) => {
        readings += batch.n;
      },
      cycle: (cycle) => cycles.push(cycle),
      gap: (atS) => gaps.push(atS),
    },
  );
  return { session, settings, clock, links, spoolFolder, states, cycles, gaps, faults, readings: () => readings };
}

const line = "     0.01 kN\r\n";

describe("Session", () => {
  it("opens, reads and closes", async () => {
    const b = bench();
    await b.session.open();
    expect(b.session.status().counters.lineRateHz).toBeUndefined();
    b.links.send(line.repeat(3));
    expect(b.session.status()).toMatchObject({ state: "open", unit: "kN", label: "/dev/ttyUSB0", problem: undefined });
    await b.session.close();
    expect(b.states).toEqual(["opening", "open", "closed"]);
    expect(b.readings()).toBe(3);
    expect(b.session.status().counters).toMatchObject({ bytes: 42, lines: 3, readings: 3, rejected: 0, gaps: 0 });
    expect(b.clock.pending).toBe(0);
    expect(b.faults).toEqual([]);
  });

  it("finds the clampings, each with the force the gauge was told to make", async () => {
    const b = bench();
    await b.session.open();
    const { bytes, gauge } = clampings(3);
    for (const chunk of chunksOf(bytes, () => 50)) b.links.send(chunk);
    await b.session.close();
    expect(b.cycles).toHaveLength(3);
    for (const [i, cycle] of b.cycles.entries()) {
      expect(Math.abs(cycle.settledN! - gauge.truth[i]!.settledN)).toBeLessThan(10); // one step of the gauge's last digit
    }
  });

  it("says why a port cannot be opened, and is over then", async () => {
    const b = bench();
    b.links.refusal = "portForbidden";
    await expect(b.session.open()).rejects.toMatchObject({ code: "portForbidden" });
    expect(b.session.status()).toMatchObject({ state: "failed", problem: { code: "portForbidden" } });
    expect(b.clock.pending).toBe(0);
  });

  it("can be closed while it is being opened", async () => {
    const b = bench();
    let go = () => {};
    b.links.hold = new Promise((resolve) => {
      go = resolve;
    });
    const opening = b.session.open();
    await settled();
    await b.session.close();
    go();
    await expect(opening).rejects.toMatchObject({ code: "aborted" });
    expect(b.links.connected).toBe(false);
    expect(b.session.status().state).toBe("closed");
  });

  it("counts rejected lines by their reason", async () => {
    const b = bench();
    await b.session.open();
    b.links.send(`${line}garbage\r\n${line}   1.2 kN\r\n${line}`);
    const { counters } = b.session.status();
    expect(counters.rejected).toBe(2);
    expect(Object.values(counters.byReason).reduce((a, n) => a + n, 0)).toBe(2);
    expect(counters.readings).toBe(3);
  });

  it("keeps measuring when a receiver of cycles fails, and tells of the fault", async () => {
    const b = bench();
    const session = new Session(
      { ...b.settings, sessionId: randomUUID() },
      {
        clock: b.clock,
        makeSource: b.links.makeSource,
        listPorts: b.links.listPorts,
        spoolFolder: b.spoolFolder,
        onFault: (c) => b.faults.push(c),
      },
      {
        changed: () => {},
        readings: () => {
          throw new Error("page gone");
        },
        cycle: () => {},
        gap: () => {},
      },
    );
    await session.open();
    b.links.send(line);
    b.links.send(line);
    expect(b.faults).toHaveLength(2);
    expect(session.status().counters.readings).toBe(2);
    await session.close();
  });
});

describe("the silence watch", () => {
  it("tells of silence after three seconds and of its end, with the gap marked", async () => {
    const b = bench();
    await b.session.open();
    b.links.send(line);
    await b.clock.advance(2_900);
    expect(b.session.status().state).toBe("open");
    await b.clock.advance(200);
    expect(b.session.status().state).toBe("silent");
    await b.clock.advance(10_000);
    b.links.send(line);
    expect(b.session.status()).toMatchObject({ state: "open", counters: { gaps: 1 } });
    expect(b.states).toEqual(["opening", "open", "silent", "open"]);
    await b.clock.advance(3_100);
    expect(b.session.status().state).toBe("silent");
    await b.session.close();
  });

  it("tells of a gauge that never sends", async () => {
    const b = bench();
    await b.session.open();
    await b.clock.advance(3_000);
    expect(b.session.status().state).toBe("silent");
    await b.session.close();
  });

  it("is not raised for a gauge that sends on a key", async () => {
    const b = bench({ pattern: { ...usualPattern, sends: "onKey" } });
    await b.session.open();
    b.links.send(line);
    await b.clock.advance(600_000);
    b.links.send(line);
    expect(b.session.status()).toMatchObject({ state: "open", counters: { gaps: 0, readings: 2 } });
    await b.session.close();
  });

  it("does not take a held-up program for a silent gauge", async () => {
    const b = bench();
    await b.session.open();
    b.links.send(line);
    b.clock.stall(8_000);
    await b.clock.advance(0); // the late timer fires before the bytes that lie ready are read
    expect(b.session.status().state).toBe("open");
    b.links.send(line);
    await b.clock.advance(2_900);
    expect(b.states).toEqual(["opening", "open"]);
    await b.session.close();
  });
});

describe("a gauge that sends on request", () => {
  const asked = {
    ...usualPattern,
    sends: "onRequest",
    request: { text: "\x02R\r", everyMs: 100, timeoutMs: 500 },
  } as const;

  it("is asked at its period, the next time only after it has answered", async () => {
    const b = bench({ pattern: asked, rateHz: undefined });
    await b.session.open();
    expect(b.links.written).toEqual(["\x02R\r"]);
    for (let i = 0; i < 5; i += 1) {
      await b.clock.advance(30);
      b.links.send(line);
      await b.clock.advance(70);
    }
    expect(b.links.written).toHaveLength(6);
    await b.clock.advance(400);
    expect(b.links.written).toHaveLength(6);
    expect(b.session.status()).toMatchObject({ state: "open", rateHz: 10 });
    await b.session.close();
    await b.clock.advance(5_000);
    expect(b.links.written).toHaveLength(6);
  });

  it("is told of as silent when three requests had no answer, and asked on", async () => {
    const b = bench({ pattern: asked });
    await b.session.open();
    await b.clock.advance(1_400);
    expect(b.session.status().state).toBe("open");
    await b.clock.advance(200);
    expect(b.session.status()).toMatchObject({ state: "silent", problem: { code: "noAnswer" } });
    b.links.send(line);
    expect(b.session.status()).toMatchObject({ state: "open", problem: undefined });
    await b.session.close();
  });
});

describe("a session without a pattern", () => {
  it("listens, keeps every byte, and reads them once it has one", async () => {
    const b = bench({ pattern: undefined });
    await b.session.open();
    const { bytes, gauge } = clampings(2);
    const half = bytes.length / 2;
    for (const chunk of chunksOf(bytes.subarray(0, half), () => 77)) b.links.send(chunk);
    expect(b.session.status().state).toBe("listening");
    expect(Buffer.from(b.session.tail().bytes).equals(bytes.subarray(0, half).subarray(-65_536))).toBe(true);
    b.session.setPattern(usualPattern, 100);
    expect(b.session.status().state).toBe("open");
    for (const chunk of chunksOf(bytes.subarray(half), () => 77)) b.links.send(chunk);
    await b.session.close();
    expect(b.cycles).toHaveLength(gauge.truth.length);
    expect(() => b.session.setPattern(usualPattern)).toThrow();
  });

  it("says how long its last bytes took to come, and how many lines a second", async () => {
    const b = bench({ pattern: undefined });
    await b.session.open();
    for (let i = 0; i < 40; i += 1) {
      b.links.send(line);
      await b.clock.advance(100);
    }
    expect(b.session.tail().durationS).toBeCloseTo(3.9, 1);
    expect(b.session.status().counters.lineRateHz).toBeCloseTo(10, 1);
    await b.session.close();
  });
});

describe("a link that goes and comes back", () => {
  const gauge = port("/dev/ttyUSB0", "A10");

  it("is taken up again under the same name", async () => {
    const b = bench();
    b.links.ports = [gauge];
    await b.session.open();
    b.links.send(line);
    b.links.ports = [];
    b.links.vanish();
    expect(b.session.status()).toMatchObject({ state: "waiting", problem: { code: "portGone" } });
    await b.clock.advance(5_000);
    expect(b.session.status().state).toBe("waiting");
    b.links.ports = [gauge];
    await b.clock.advance(1_000);
    expect(b.session.status()).toMatchObject({ state: "open", problem: undefined, counters: { gaps: 1 } });
    b.links.send(line + line);
    expect(b.session.status().counters.readings).toBe(3);
    await b.session.close();
  });

  it("is known again under another name by the serial number of its device", async () => {
    const b = bench();
    b.links.ports = [gauge];
    await b.session.open();
    b.links.vanish();
    b.links.ports = [port("/dev/ttyUSB0", "B77"), port("/dev/ttyUSB3", "A10")];
    await b.clock.advance(1_000);
    expect(b.links.opened.at(-1)).toMatchObject({ path: "/dev/ttyUSB3" });
    expect(b.session.status()).toMatchObject({ state: "open", source: { path: "/dev/ttyUSB3" } });
    await b.session.close();
  });

  it("is known again by vendor and product where the device has no serial number", async () => {
    const b = bench();
    b.links.ports = [port("/dev/ttyUSB0")];
    await b.session.open();
    b.links.vanish();
    b.links.ports = [port("/dev/ttyUSB1", undefined, "0ABC", "00D1"), port("/dev/ttyUSB0", undefined, "1111", "2222")];
    await b.clock.advance(1_000);
    expect(b.links.opened.at(-1)).toMatchObject({ path: "/dev/ttyUSB1" });
    await b.session.close();
  });

  it("is not mixed up with another device under its old name, nor guessed between two alike", async () => {
    for (const ports of [[port("/dev/ttyUSB0", "B77")], [port("/dev/ttyUSB1"), port("/dev/ttyUSB2")]]) {
      const b = bench();
      b.links.ports = [ports.length === 1 ? gauge : port("/dev/ttyUSB0")];
      await b.session.open();
      b.links.vanish();
      b.links.ports = ports;
      await b.clock.advance(10_000);
      expect(b.session.status().state).toBe("waiting");
      expect(b.links.opened).toHaveLength(1);
      await b.session.close();
    }
  });

  it("says what stands in the way while it waits", async () => {
    const b = bench();
    b.links.ports = [gauge];
    await b.session.open();
    b.links.vanish();
    b.links.refusal = "portBusy";
    await b.clock.advance(1_000);
    expect(b.session.status()).toMatchObject({ state: "waiting", problem: { code: "portBusy" } });
    b.links.refusal = undefined;
    await b.clock.advance(1_000);
    expect(b.session.status()).toMatchObject({ state: "open", problem: undefined });
    await b.session.close();
  });

  it("marks the cycle it cut and never completes it from both sides", async () => {
    const b = bench();
    await b.session.open();
    const { bytes } = clampings(2);
    const inHold = bytes.length * (6.5 / 22); // 4 s rest, 5 s hold, 4 s rest …: the middle of the first hold
    b.links.send(bytes.subarray(0, inHold));
    b.links.vanish();
    await b.clock.advance(1_000);
    b.links.send(bytes.subarray(bytes.length * (8 / 22))); // comes back inside the same hold
    await b.session.close();
    const cut = b.cycles.filter((c) => c.flags.includes("cut"));
    expect(cut.length).toBeGreaterThanOrEqual(1);
    expect(b.cycles.filter((c) => !c.flags.includes("cut"))).toHaveLength(1);
    expect(b.gaps).toHaveLength(1);
    const placesBefore = Math.floor(inHold / line.length);
    expect(b.cycles.every((c) => c.endIndex < placesBefore || c.startIndex >= placesBefore)).toBe(true);
  });

  it("can be closed while it waits", async () => {
    const b = bench();
    await b.session.open();
    b.links.vanish();
    await b.session.close();
    await b.clock.advance(10_000);
    expect(b.session.status().state).toBe("closed");
    expect(b.links.opened).toHaveLength(1);
    expect(b.clock.pending).toBe(0);
  });
});

describe("the zero on the user's word", () => {
  it("is taken from a steady second, and refused under load and before there is a pattern", async () => {
    const b = bench({ pattern: undefined });
    await b.session.open();
    expect(b.session.takeZero()).toBeUndefined();
    b.session.setPattern(usualPattern, 100, 30_000);
    const { bytes } = clampings(1, { zeroN: 400 });
    b.links.send(bytes.subarray(0, (bytes.length * 3) / 13)); // 3 of the 4 s of rest
    expect(b.session.takeZero()).toMatchObject({ kind: "taken" });
    expect(Math.abs(b.session.live!.zeroN! - 400)).toBeLessThan(10);
    b.links.send(bytes.subarray((bytes.length * 3) / 13, (bytes.length * 7) / 13));
    expect(b.session.takeZero()).toMatchObject({ kind: "refused" });
    await b.session.close();
  });
});

describe("a session's spool", () => {
  it("replays to the same cycles, bit for bit, over any chunks, silences and unpluggings", async () => {
    for (let seed = 1; seed <= 5; seed += 1) {
      const random = new Random(seed);
      const b = bench(seed % 2 ? {} : { pattern: undefined });
      await b.session.open();
      const { bytes } = clampings(6, { seed });
      let n = 0;
      for (const chunk of chunksOf(bytes, () => random.below(400))) {
        if (seed % 2 === 0 && n === 40) b.session.setPattern(usualPattern, 100, 30_000);
        n += 1;
        if (random.uniform() < 0.02) b.session.takeZero();
        if (random.uniform() < 0.01) await b.clock.advance(4_000);
        if (random.uniform() < 0.01) {
          b.links.vanish();
          await b.clock.advance(1_500);
        }
        b.links.send(chunk);
      }
      await b.session.close();
      const again = await recover(b.spoolFolder, b.settings.sessionId);
      expect(b.cycles.length).toBeGreaterThan(2);
      expect(JSON.stringify(again!.cycles.map((c) => c.cycle))).toBe(JSON.stringify(b.cycles));
      expect(again!.gapsS).toEqual(b.gaps);
      expect(again).toMatchObject({ unit: "kN", damaged: false, trimmed: false });
    }
  });

  it("is not kept for a file, which is its own record", async () => {
    const path = join(root, "stream.txt");
    const { bytes, gauge } = clampings(2);
    writeFileSync(path, bytes);
    const b = bench();
    const cycles: Cycle[] = [];
    const states: string[] = [];
    const session = new Session(
      { ...b.settings, source: { kind: "file", path } },
      {
        clock: systemClock,
        makeSource: sourceMaker(() => undefined),
        listPorts: b.links.listPorts,
        spoolFolder: b.spoolFolder,
        onFault: () => {},
      },
      { changed: (s) => states.push(s.state), readings: () => {}, cycle: (c) => cycles.push(c), gap: () => {} },
    );
    await session.open();
    await expect.poll(() => session.status().state).toBe("closed");
    expect(cycles).toHaveLength(gauge.truth.length);
    expect(session.status().spoolFile).toBeUndefined();
  });

  it("of a long file without a pattern begins with the file's first byte: the file waits for it", async () => {
    const path = join(root, "long.txt");
    const { bytes, gauge } = clampings(40, { rateHz: 1_000 }); // more than what may wait in memory
    expect(bytes.length).toBeGreaterThan(5_000_000);
    writeFileSync(path, bytes);
    const b = bench();
    const cycles: Cycle[] = [];
    const session = new Session(
      { ...b.settings, source: { kind: "file", path }, pattern: undefined },
      {
        clock: systemClock,
        makeSource: sourceMaker(() => undefined),
        listPorts: b.links.listPorts,
        spoolFolder: b.spoolFolder,
        onFault: () => {},
      },
      { changed: () => {}, readings: () => {}, cycle: (c) => cycles.push(c), gap: () => {} },
    );
    await session.open();
    await expect.poll(() => session.status().counters.bytes).toBeGreaterThanOrEqual(65_536);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(session.status()).toMatchObject({ state: "listening" });
    expect(session.status().counters.bytes).toBeLessThan(200_000);
    session.setPattern(usualPattern, 1_000);
    await expect.poll(() => session.status().state, { timeout: 10_000 }).toBe("closed");
    expect(cycles).toHaveLength(gauge.truth.length);
  });

  it("of a short file that has ended is read when its pattern comes", async () => {
    const path = join(root, "short.txt");
    writeFileSync(path, clampings(1).bytes.subarray(0, 900 * 14)); // ends inside the hold
    const b = bench();
    const cycles: Cycle[] = [];
    const session = new Session(
      { ...b.settings, source: { kind: "file", path }, pattern: undefined },
      {
        clock: systemClock,
        makeSource: sourceMaker(() => undefined),
        listPorts: b.links.listPorts,
        spoolFolder: b.spoolFolder,
        onFault: () => {},
      },
      { changed: () => {}, readings: () => {}, cycle: (c) => cycles.push(c), gap: () => {} },
    );
    await session.open();
    await expect.poll(() => session.status().state).toBe("closed");
    session.setPattern(usualPattern, 100);
    expect(cycles.map((c) => c.flags)).toEqual([["cut"]]);
  });

  it("that cannot be written is said, and measuring goes on", async () => {
    const b = bench();
    const blocked = join(root, "blocked");
    writeFileSync(blocked, "");
    const session = new Session(
      { ...b.settings, sessionId: randomUUID() },
      {
        clock: b.clock,
        makeSource: b.links.makeSource,
        listPorts: b.links.listPorts,
        spoolFolder: join(blocked, "x"),
        onFault: (c) => b.faults.push(c),
      },
      { changed: () => {}, readings: () => {}, cycle: () => {}, gap: () => {} },
    );
    await session.open();
    b.links.send(line);
    expect(session.status()).toMatchObject({ problem: { code: "spoolFailed" }, counters: { readings: 1 } });
    expect(b.faults).toHaveLength(1);
    await session.close();
  });
});
