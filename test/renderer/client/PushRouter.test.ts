import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Push } from "../../../app/contract/events.ts";
import { PushRouter } from "../../../renderer/client/PushRouter.ts";

const settings = { theme: "dark", language: "en", sound: false, initials: false } as const;
const event = (seq: number): Push<"settings.changed"> => ({ seq, event: "settings.changed", data: settings });
const readings = (seq: number): Push<"readings.arrived"> => ({
  seq,
  event: "readings.arrived",
  data: {
    t: [],
    forceN: [],
    timed: true,
    live: { word: "atRest", forceN: 0, greatestN: 0, zeroN: 0, holdingS: undefined },
  },
});

describe("PushRouter", () => {
  const missed = vi.fn();
  const heard = vi.fn();
  let router: PushRouter;
  beforeEach(() => {
    missed.mockReset();
    heard.mockReset();
    router = new PushRouter(missed);
    router.on("settings.changed", heard);
  });

  it("holds events back until a snapshot has told where we are, then hands on only what is newer", () => {
    for (const seq of [4, 5, 6]) router.take(event(seq));
    expect(heard).not.toHaveBeenCalled();
    router.caughtUp(5);
    expect(heard).toHaveBeenCalledTimes(1);
  });

  it("reports a missing number and holds what follows", () => {
    router.caughtUp(5);
    router.take(event(6));
    router.take(event(8));
    expect(missed).toHaveBeenCalledTimes(1);
    expect(heard).toHaveBeenCalledTimes(1);
    router.caughtUp(7);
    expect(heard).toHaveBeenCalledTimes(2);
  });

  it("lets readings through at the present number and takes a higher one for a missed event", () => {
    const live = vi.fn();
    router.on("readings.arrived", live);
    router.caughtUp(5);
    router.take(readings(5));
    expect(missed).not.toHaveBeenCalled();
    router.take(readings(6));
    expect(missed).toHaveBeenCalledTimes(1);
    expect(live).toHaveBeenCalledTimes(2);
  });

  it("asks for a snapshot whenever the page has joined, also a program that counts from anew", () => {
    router.caughtUp(900);
    router.take({ seq: 3, event: "page.joined", data: null });
    expect(missed).toHaveBeenCalledTimes(1);
    router.caughtUp(3);
    router.take(event(4));
    expect(heard).toHaveBeenCalledTimes(1);
  });

  it("stops handing on after the undo", () => {
    const other = vi.fn();
    router.on("settings.changed", other)();
    router.caughtUp(0);
    router.take(event(1));
    expect(other).not.toHaveBeenCalled();
  });
});
