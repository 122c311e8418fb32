import { describe, expect, it } from "vitest";
import { everyMinute } from "../../../main/jobs/everyMinute.ts";
import { ManualClock } from "../../support/ManualClock.ts";

describe("everyMinute", () => {
  it("begins after the first screen, and calls once a minute until it is ended", async () => {
    const clock = new ManualClock();
    let calls = 0;
    const stop = everyMinute(clock, async () => {
      calls += 1;
    });
    expect(calls).toBe(0);
    await clock.advance(10_000);
    expect(calls).toBe(1);
    await clock.advance(5 * 60_000);
    expect(calls).toBe(6);
    stop();
    await clock.advance(600_000);
    expect(calls).toBe(6);
    expect(clock.pending).toBe(0);
  });

  it("never runs beside itself, and does not come back when it is ended in the middle", async () => {
    const clock = new ManualClock();
    let done = () => {};
    let calls = 0;
    const stop = everyMinute(clock, () => {
      calls += 1;
      return new Promise((finished) => {
        done = finished;
      });
    });
    await clock.advance(600_000);
    expect(calls).toBe(1);
    stop();
    done();
    await clock.advance(600_000);
    expect(calls).toBe(1);
  });
});
