import { act, screen } from "@testing-library/react";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { RoundView } from "../../../../app/contract/roundViews.ts";
import { ByteServer } from "../../../support/ByteServer.ts";
import { type CoreInTemp, coreInTemp } from "../../../support/coreInTemp.ts";
import { clampings, usualPattern } from "../../../support/gaugeLines.ts";
import { closePage, press, standInBrowser } from "../../../support/page.tsx";
import { pageOnCore } from "../../../support/pageOnCore.tsx";

const SPINDLES = 20;
const tapers = ["HSK-A63", "SK 40"];

async function twentySpindles(core: CoreInTemp): Promise<{ round: RoundView; gaugeId: string }> {
  const { gauge } = await core.call("gauges.save", { name: "Gauge 1", capacityN: 30_000, state: "inUse" });
  for (const taper of tapers)
    await core.call("adapters.save", {
      name: `Adapter ${taper}`,
      taper,
      scale: 1,
      scaleUncertainty: 0.001,
      assumed: false,
      version: 1,
      state: "inUse",
    });
  const stops: { spindleId: string }[] = [];
  for (let i = 0; i < SPINDLES; i += 1) {
    const row = await core.call("spindles.save", {
      name: `Mill ${i + 1}`,
      machine: `Mill ${i + 1}`,
      area: "hall A",
      taper: tapers[i % 2]!,
      limits: { minimumN: 14_400, warningN: 15_300, nominalN: 18_000 },
      order: i,
      state: "inUse",
    });
    stops.push({ spindleId: row.spindle.spindleId });
  }
  const { today } = await core.call("rounds.due");
  const { gaugeId } = gauge;
  const round = await core.call("rounds.save", { name: "Hall A", on: today, gaugeId, made: "byHand", stops });
  return { round, gaugeId };
}

describe("a round of twenty by keyboard or footswitch", () => {
  const server = new ByteServer();
  let core: CoreInTemp;
  let acts = 0;
  const key = (name: string) => {
    acts += 1;
    return press(name);
  };
  const until = async (holds: () => boolean) => {
    for (let i = 0; i < 300; i += 1) {
      if (holds()) return;
      await act(() => new Promise((done) => setTimeout(done, 20)));
    }
    expect.fail("it did not come to that in six seconds");
  };

  beforeAll(async () => {
    standInBrowser();
    await server.listen();
    core = await coreInTemp();
  });
  afterAll(async () => {
    closePage();
    await core.close();
    await server.close();
  });

  it("takes at most three acts a spindle, zero and filing among them, and files each to its own", async () => {
    const { round, gaugeId } = await twentySpindles(core);
    const { patternId } = await core.call("link.usePattern", {
      name: "usual",
      pattern: JSON.parse(JSON.stringify({ ...usualPattern, rateHz: 100 })),
      gaugeId,
    });
    await core.call("link.open", { source: { kind: "tcp", host: "127.0.0.1", port: server.port }, gaugeId, patternId });
    await server.connected();
    const page = await pageOnCore(core, "#/measure");
    await act(async () => {
      const answer = await page.client.call("rounds.lead", { roundId: round.roundId });
      if (answer.ok) page.draft.setState({ draft: answer.value });
    });
    const { bytes } = clampings(3);
    const draft = () => page.draft.getState().draft!;
    let changes = 0;
    for (const [i, stop] of round.stops.entries()) {
      await until(() => draft().tag.spindleId === stop.spindleId && screen.queryByText(`Stop ${i + 1}`) !== null);
      if (screen.queryByText(/^(Change the adapter: |Put .* on the gauge$)/) !== null) changes += 1;
      // The gauge lies in the hand: a moment of rest, and its zero.
      await server.send(bytes.subarray(0, 4 * 100 * 14));
      await until(() => page.live.getState().live.word === "atRest");
      const before = acts;
      await key("z");
      await server.send(bytes);
      await until(() => draft().cycles.length === 3);
      await key(" ");
      await until(() => draft().cycles.length === 0);
      expect(acts - before).toBeLessThanOrEqual(3);
    }
    await until(() => screen.queryByText(`The round is done: all ${SPINDLES} measured`) !== null);
    expect(acts / SPINDLES).toBeLessThanOrEqual(3);
    // The first adapter is put on, and the second one taken for the other taper: nothing between them.
    expect(changes).toBe(1 + round.adapterChanges);
    const { stops, state } = await core.call("rounds.get", { roundId: round.roundId });
    expect(state).toBe("done");
    for (const stop of stops) {
      const { rows } = await core.call("checks.list", { spindleId: stop.spindleId, limit: 5 });
      expect(rows.map((row) => [row.n, row.adapterId])).toEqual([[3, stop.adapterId]]);
    }
  }, 60_000);
});
