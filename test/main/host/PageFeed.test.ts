import { describe, expect, it } from "vitest";
import type { Push, ReadingsBatch } from "../../../app/contract/events.ts";
import { PageFeed } from "../../../main/host/PageFeed.ts";
import { PushHub } from "../../../main/host/PushHub.ts";
import { thin } from "../../../main/host/thin.ts";

const live = { forceN: 0, word: "atRest", greatestN: undefined, zeroN: undefined, holdingS: undefined } as const;
const batch = (from: number, n: number, f = (i: number) => i): ReadingsBatch => ({
  t: Array.from({ length: n }, (_, i) => from + i),
  forceN: Array.from({ length: n }, (_, i) => f(from + i)),
  timed: true,
  live,
});

/** A feed on a clock that only the test moves. */
function onTestClock() {
  const sent: Push[] = [];
  let nowMs = 0;
  let due: { at: number; run: () => void } | undefined;
  const feed = new PageFeed((push) => sent.push(push), {
    now: () => nowMs,
    later: (run, ms) => {
      due = { at: nowMs + ms, run };
      return () => {
        due = undefined;
      };
    },
  });
  const advance = (ms: number) => {
    nowMs += ms;
    const waiting = due;
    if (waiting !== undefined && waiting.at <= nowMs) {
      due = undefined;
      waiting.run();
    }
  };
  return { feed, sent, advance };
}

const sizes = (sent: readonly Push[]) => sent.map((p) => (p.data as ReadingsBatch).t.length);

describe("PageFeed", () => {
  it("sends at most twenty batches a second, even to a page that acknowledges at once", () => {
    const { feed, sent, advance } = onTestClock();
    for (let ms = 0; ms < 999; ms += 1) {
      feed.readings(0, batch(ms, 1));
      feed.acknowledge();
      advance(1);
    }
    expect(sent.length).toBeLessThanOrEqual(20);
    expect(sent.length).toBeGreaterThanOrEqual(19);
  });

  it("holds the next batch until the page has drawn the last one", () => {
    const { feed, sent, advance } = onTestClock();
    feed.readings(0, batch(0, 1));
    advance(60);
    feed.readings(0, batch(1, 1));
    advance(60);
    expect(sizes(sent)).toEqual([1]);
    feed.acknowledge();
    expect(sizes(sent)).toEqual([1, 1]);
  });

  it("goes on after two seconds when an acknowledgement was lost", () => {
    const { feed, sent, advance } = onTestClock();
    feed.readings(0, batch(0, 1));
    feed.readings(0, batch(1, 1));
    advance(2_000);
    expect(sizes(sent)).toEqual([1, 1]);
  });

  it("thins what piles up and keeps its greatest and least reading", () => {
    const late = onTestClock();
    late.feed.readings(0, batch(0, 1));
    for (let i = 0; i < 100; i += 1)
      late.feed.readings(
        0,
        batch(1 + i * 1_000, 1_000, (t) => (t === 54_321 ? 9e9 : t === 60_000 ? -9e9 : t)),
      );
    late.advance(100);
    late.feed.acknowledge();
    const { t, forceN } = late.sent[1]!.data as ReadingsBatch;
    expect(t.length).toBeLessThanOrEqual(2_000);
    expect(Math.max(...forceN)).toBe(9e9);
    expect(Math.min(...forceN)).toBe(-9e9);
    expect(t[0]).toBe(1);
    expect(t.at(-1)).toBe(100_000);
  });

  it("sends events at once and never thins them", () => {
    const { feed, sent } = onTestClock();
    for (let seq = 1; seq <= 500; seq += 1) feed.event({ seq, event: "register.changed", data: { what: "spindles" } });
    expect(sent.map((p) => p.seq)).toEqual(Array.from({ length: 500 }, (_, i) => i + 1));
  });

  it("numbers events for all pages alike and lets readings carry the last number", () => {
    const hub = new PushHub();
    const { feed, sent } = onTestClock();
    hub.say("register.changed", { what: "gauges" });
    hub.join(feed);
    hub.readings(batch(0, 3));
    hub.say("register.changed", { what: "gauges" });
    expect(sent.map((p) => [p.event, p.seq])).toEqual([
      ["readings.arrived", 1],
      ["register.changed", 2],
    ]);
  });
});

describe("thin", () => {
  it("gives short runs back as they are", () => {
    const t = [1, 2, 3];
    expect(thin(t, t, 10)).toEqual({ t, forceN: t });
  });

  it("keeps times rising and both ends", () => {
    const t = Array.from({ length: 10_000 }, (_, i) => i);
    const kept = thin(
      t,
      t.map((i) => Math.sin(i)),
      100,
    ).t;
    expect(kept.every((v, i) => i === 0 || v > kept[i - 1]!)).toBe(true);
    expect([kept[0], kept.at(-1)]).toEqual([0, 9_999]);
    expect(kept.length).toBeLessThanOrEqual(400);
  });
});
