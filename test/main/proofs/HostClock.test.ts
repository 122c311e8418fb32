import { describe, expect, it } from "vitest";
import { HostClock } from "../../../main/proofs/HostClock.ts";
import { StreamLog } from "../../../main/proofs/StreamLog.ts";
import { seededUniform } from "../../support/proofStreams.ts";

/** Arrivals of a gauge of `rateHz` whose stream counts its time by `saidHz`, told in bursts of up to half a second. */
function arrivals(
  rateHz: number,
  saidHz: number,
  seconds: number,
  hear: (ownS: number, arrivedS: number, trueS: number) => void,
) {
  const uniform = seededUniform(7);
  let due = 0;
  let held: { own: number; trueS: number }[] = [];
  for (let i = 0; i < seconds * rateHz; i += 1) {
    const trueS = 1_000 + i / rateHz;
    held.push({ own: i / saidHz, trueS });
    if (trueS < due) continue;
    for (const { own, trueS: t } of held) hear(own, trueS + 0.002, t);
    held = [];
    due = trueS + 0.5 * uniform();
  }
}

describe("HostClock", () => {
  it("brings a stream onto the host's clock to some hundredths of a second, through bursts", () => {
    const clock = new HostClock();
    let last = { own: 0, trueS: 0 };
    arrivals(25, 25, 90, (own, arrived, trueS) => {
      clock.note(own, arrived);
      last = { own, trueS };
    });
    expect(Math.abs(clock.hostS(last.own) - last.trueS)).toBeLessThan(0.03);
  });

  it("does so where the rate was learned 4 % off, now and a minute back", () => {
    const clock = new HostClock();
    const all: { own: number; trueS: number }[] = [];
    arrivals(25, 24, 90, (own, arrived, trueS) => {
      clock.note(own, arrived);
      all.push({ own, trueS });
    });
    for (const { own, trueS } of [all.at(-1)!, all.at(-700)!, all.at(-1_400)!])
      expect(Math.abs(clock.hostS(own) - trueS)).toBeLessThan(0.1);
  });
});

describe("StreamLog", () => {
  const batch = (forcesN: number[], timesS: number[]) => ({ n: forcesN.length, forcesN, timesS });

  it("keeps the last minutes, leaves out what was no reading, and notes overload", () => {
    const log = new StreamLog();
    for (let s = 0; s < 900; s += 1) log.push(batch([s, Number.NaN, s + 0.5], [s, s + 0.25, s + 0.5]), 5_000 + s + 0.5);
    expect(log.count).toBeLessThan(4 * 240 + 10);
    const tail = log.tail(10);
    expect([tail.value[0], tail.value[tail.value.length - 1]]).toEqual([889.5, 899.5]);
    expect(tail.tS[tail.tS.length - 1]).toBeCloseTo(5_899.5, 6);
    expect(log.intervalS).toBeCloseTo(0.5, 9);
    expect(log.overloadAtS).toBeUndefined();
    log.push(batch([Number.POSITIVE_INFINITY], [900]), 5_901);
    expect([log.overloadAtS, log.lastN]).toEqual([5_901, 899.5]);
    log.clear();
    expect([log.count, log.overloadAtS, log.tail(5).tS.length]).toEqual([0, undefined, 0]);
  });

  it("averages a fast gauge to two hundred readings a second, and leaves a slow one as it is", () => {
    const ramp = (rateHz: number) => {
      const log = new StreamLog();
      for (let i = 0; i < 10 * rateHz; i += 1) log.push(batch([i / rateHz], [i / rateHz]), 50 + i / rateHz);
      const { tS, value } = log.tail(60);
      for (let i = 0; i < tS.length; i += 1) expect(tS[i]! - 50 - value[i]!).toBeCloseTo(0, 6); // mean times with mean forces
      return log.count;
    };
    expect(ramp(5_000)).toBeLessThanOrEqual(2_010);
    expect(ramp(5_000)).toBeGreaterThan(1_000);
    expect(ramp(100)).toBe(1_000);
  });

  it("goes by arrival where the stream has no time of its own", () => {
    const log = new StreamLog();
    log.push(batch([1, 2, 3], [Number.NaN, Number.NaN, Number.NaN]), 10);
    log.push(batch([4], [Number.NaN]), 11);
    const { tS, value } = log.tail(60);
    expect([tS[0], tS[2]]).toEqual([expect.closeTo(10, 4), expect.closeTo(11, 4)]);
    expect([...(value as number[])]).toEqual([1, 2.5, 4]); // a burst has no times between
    expect([...(tS as number[])].every((t, i, all) => i === 0 || t > all[i - 1]!)).toBe(true);
  });
});
