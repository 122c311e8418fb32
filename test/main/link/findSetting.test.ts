import { describe, expect, it } from "vitest";
import type { SerialSetting } from "../../../app/contract/linkViews.ts";
import type { ByteSource } from "../../../main/link/ByteSource.ts";
import { findSetting, settingsTried } from "../../../main/link/findSetting.ts";
import { LinkError } from "../../../main/link/LinkProblem.ts";
import { usualGauge } from "../../../simulator/gauge/GaugeOptions.ts";
import type { LineFormatName } from "../../../simulator/gauge/lineFormats.ts";
import { SimulatedGauge } from "../../../simulator/gauge/SimulatedGauge.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import { ManualClock } from "../../support/ManualClock.ts";
import { received } from "../../support/serialLine.ts";

/** A port with a gauge behind it that sends under one setting, whatever the port is set to. */
function portWith(
  clock: ManualClock,
  sends: SerialSetting | "noise" | undefined,
  format: LineFormatName = "numberUnit",
) {
  const gauge = new SimulatedGauge({ ...usualGauge, format, rateHz: 20 });
  const noise = new Random(3);
  const next = (setting: SerialSetting) => {
    if (sends === undefined) return new Uint8Array(0);
    if (sends === "noise") return Uint8Array.from({ length: 40 }, () => noise.below(256));
    return received(gauge.advance(2), sends, setting);
  };
  const opened: SerialSetting[] = [];
  let open = 0;
  const makeSource = (setting: SerialSetting): ByteSource => {
    let over = false;
    let cancel = () => {};
    return {
      label: "port",
      async open(sink) {
        opened.push(setting);
        open += 1;
        expect(open).toBe(1);
        const tick = () => {
          const bytes = next(setting);
          if (!over && bytes.length > 0) sink.onBytes(bytes);
          cancel = clock.after(100, tick);
        };
        tick();
      },
      write: async () => {},
      async close() {
        if (!over) open -= 1;
        over = true;
        cancel();
      },
    };
  };
  return { makeSource, opened };
}

/** Lets time pass until the search is over. */
async function search(port: ReturnType<typeof portWith>, clock: ManualClock, signal = new AbortController().signal) {
  const progress: number[] = [];
  const total = new Set<number>();
  let over = false;
  const found = findSetting({
    makeSource: port.makeSource,
    clock,
    signal,
    onProgress: (p) => {
      progress.push(p.done);
      total.add(p.total);
    },
  }).finally(() => {
    over = true;
  });
  found.catch(() => {}); // looked at below
  while (!over) await clock.advance(100);
  expect(progress).toEqual(progress.map((_, i) => i));
  expect([...total]).toEqual([settingsTried.length]);
  return found;
}

const eightNone = (baud: number): SerialSetting => ({ baud, dataBits: 8, parity: "none", stopBits: 1 });

describe("findSetting", () => {
  it.each([1_200, 2_400, 4_800, 9_600, 19_200, 38_400, 57_600, 115_200])("finds %i baud", async (baud) => {
    const clock = new ManualClock();
    const found = await search(portWith(clock, eightNone(baud)), clock);
    expect(found).toMatchObject({ kind: "found", setting: { baud, dataBits: 8, parity: "none" } });
  });

  it.each(["even", "odd"] as const)("finds seven bits with %s parity from the bytes alone", async (parity) => {
    const clock = new ManualClock();
    const sends: SerialSetting = { baud: 4_800, dataBits: 7, parity, stopBits: 1 };
    const found = await search(portWith(clock, sends), clock);
    expect(found).toMatchObject({ kind: "found", setting: { baud: 4_800, dataBits: 7, parity } });
  });

  it.each(["bare", "status", "decimalComma", "checksum"] as const)(
    "finds it for lines of the kind %s",
    async (format) => {
      const clock = new ManualClock();
      const found = await search(portWith(clock, eightNone(19_200), format), clock);
      expect(found).toMatchObject({ kind: "found", setting: eightNone(19_200) });
    },
  );

  it("says that nothing came, after one round of the rates", async () => {
    const clock = new ManualClock();
    const port = portWith(clock, undefined);
    expect(await search(port, clock)).toEqual({ kind: "silent" });
    expect(port.opened).toHaveLength(8);
  });

  it("says when bytes come that are lines under no setting", async () => {
    const clock = new ManualClock();
    const port = portWith(clock, "noise");
    expect(await search(port, clock)).toMatchObject({ kind: "unclear" });
    expect(port.opened).toHaveLength(settingsTried.length);
  });

  it("says so too for a rate that is none of those tried", async () => {
    const clock = new ManualClock();
    const port = portWith(clock, { baud: 31_250, dataBits: 8, parity: "none", stopBits: 1 });
    expect(await search(port, clock)).toMatchObject({ kind: "unclear" });
  });

  it("can be stopped, and lets go of the port", async () => {
    const clock = new ManualClock();
    const port = portWith(clock, undefined);
    const stop = new AbortController();
    const found = findSetting({ makeSource: port.makeSource, clock, signal: stop.signal });
    found.catch(() => {}); // looked at below
    await clock.advance(1_000);
    stop.abort();
    await expect(found).rejects.toMatchObject({ code: "aborted" });
    const before = port.opened.length;
    await clock.advance(20_000);
    expect(port.opened).toHaveLength(before);
  });

  it("says why the port cannot be opened", async () => {
    const busy: ByteSource = {
      label: "port",
      open: () => Promise.reject(new LinkError("portBusy", "held")),
      write: async () => {},
      close: async () => {},
    };
    const found = findSetting({
      makeSource: () => busy,
      clock: new ManualClock(),
      signal: new AbortController().signal,
    });
    await expect(found).rejects.toMatchObject({ code: "portBusy" });
  });
});

describe("the line the search is tried on", () => {
  it("brings every byte whole when both sides are set alike", () => {
    const text = Buffer.from(Array.from({ length: 128 }, (_, i) => i));
    for (const setting of settingsTried) {
      expect(Buffer.from(received(text, setting, setting)).equals(text)).toBe(true);
    }
  });

  it("shows seven bits and even parity as eight bits with an even number of ones", () => {
    const got = received(
      Buffer.from("+12.34 kN\r\n"),
      { baud: 9_600, dataBits: 7, parity: "even", stopBits: 1 },
      eightNone(9_600),
    );
    for (const byte of got) expect(byte.toString(2).replaceAll("0", "").length % 2).toBe(0);
  });
});
