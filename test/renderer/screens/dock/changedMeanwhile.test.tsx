import { act, fireEvent, screen } from "@testing-library/react";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { RoundView } from "../../../../app/contract/roundViews.ts";
import { type CoreInTemp, coreInTemp } from "../../../support/coreInTemp.ts";
import { closePage, standInBrowser } from "../../../support/page.tsx";
import { pageOnCore } from "../../../support/pageOnCore.tsx";
import { roundWorks } from "../../../support/roundWorks.ts";

describe("a round that somebody else changes meanwhile", () => {
  let core: CoreInTemp;
  let round: RoundView;
  const button = (name: RegExp) => screen.queryByRole("button", { name }) as HTMLButtonElement | null;
  const until = async (what: string, holds: () => boolean) => {
    for (let i = 0; i < 500; i += 1) {
      if (holds()) return;
      await act(() => new Promise((done) => setTimeout(done, 20)));
    }
    expect.fail(`it did not come to this in ten seconds: ${what}`);
  };

  beforeAll(async () => {
    standInBrowser();
    core = await coreInTemp();
    const { spindleIds } = await roundWorks(core);
    const { today } = await core.call("rounds.due");
    // Its proof is past due: filing wants a reason.
    const gauge = (await core.call("gauges.list"))[0]!.gauge;
    await core.call("gauges.save", { ...gauge, dueOn: "2020-01-01", provedOn: "2019-01-01" });
    round = await core.call("rounds.save", {
      name: "Hall A",
      on: today,
      gaugeId: gauge.gaugeId,
      made: "byHand",
      stops: spindleIds.slice(0, 3).map((spindleId) => ({ spindleId })),
    });
  });
  afterAll(async () => {
    closePage();
    await core.close();
  });

  it("is shown anew on Dock, with the answers and the reason that were given", async () => {
    await pageOnCore(core, `#/dock/${round.roundId}`);
    await until("the form", () => screen.queryByLabelText("File with readings") !== null);
    await until("its round", () => (screen.getByLabelText("Round") as HTMLSelectElement).value === round.roundId);
    const lines = [...round.stops.map((s) => `${s.location};${(s.expectedN! / 1000).toFixed(2)};kN`), "1;0.02;kN"];
    const file = Object.assign(new File([""], "m.txt"), { text: async () => `loc;force;unit\n${lines.join("\n")}\n` });
    fireEvent.change(screen.getByLabelText("File with readings"), { target: { files: [file] } });
    await until("the question", () => button(/^Leave out$/) !== null);
    fireEvent.click(button(/^Leave out$/)!);
    fireEvent.change(screen.getByLabelText(/^A reason is wanted/), { target: { value: "proof is booked" } });
    await until("all answered", () => button(/^File 3 checks/)?.disabled === false);

    const { roundId, name, on, stops, gaugeId } = round;
    const fewer = stops.slice(0, 2).map(({ spindleId }) => ({ spindleId }));
    await core.call("rounds.save", { roundId, name, on, gaugeId, made: "byHand", stops: fewer });
    fireEvent.click(button(/^File 3 checks/)!);
    await until("what happened", () => screen.queryByText(/This round was changed meanwhile/) !== null);
    await until(
      "the round as it stands",
      () => screen.queryByRole("rowheader", { name: new RegExp(stops[2]!.name) }) === null,
    );
    expect((screen.getByLabelText(/^A reason is wanted/) as HTMLInputElement).value).toBe("proof is booked");
    expect(screen.getByText(/✓ Leave out/)).toBeTruthy();
    expect((await core.call("rounds.get", { roundId })).stops.map((stop) => stop.done?.checkId)).toEqual([
      expect.any(String), // from when the works were made
      expect.any(String),
    ]);
  }, 60_000);
});
