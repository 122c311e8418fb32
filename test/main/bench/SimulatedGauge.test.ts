import { afterEach, describe, expect, it } from "vitest";
import { SimulatedGauge } from "../../../main/bench/SimulatedGauge.ts";

describe("SimulatedGauge", () => {
  const gauge = new SimulatedGauge(["--reference", "0"]);
  afterEach(() => gauge.close());

  it("is one program however many ports are opened at once", async () => {
    const first = gauge.start();
    const second = gauge.start();
    await first;
    const running = gauge.running;
    await second;
    expect(running).toBeDefined();
    expect(gauge.running).toBe(running);
  });
});
