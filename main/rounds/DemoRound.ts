import { AppError } from "../../app/contract/result.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Round } from "../../app/ledger/round.ts";
import type { SimulatedGauge } from "../bench/SimulatedGauge.ts";
import type { PushHub } from "../host/PushHub.ts";
import type { Store } from "../store/Store.ts";
import { demoStops, walkBegan, walkDemo } from "./demoWalk.ts";
import { planRound } from "./planRound.ts";
import { toRoundView } from "./toRoundView.ts";
import { worksDay } from "./worksDay.ts";

export type DemoRoundDeps = {
  readonly store: Store;
  readonly simulated: SimulatedGauge;
  readonly works: () => Works;
  readonly now: () => number;
  readonly hub: PushHub;
};

/** Its clock first, so that what it shows can be compared, then the memory. */
const REQUEST = "TIME\rDUMP\r";

/** The demo's round: made once, walked by the simulated gauge, and brought back as often as it is docked. */
export class DemoRound {
  readonly #deps: DemoRoundDeps;
  #walked: Round | undefined;
  /** Each walk goes another way, the first of every demo the same. */
  #walks = 0;

  constructor(deps: DemoRoundDeps) {
    this.#deps = deps;
  }

  /** @throws AppError  outside the demo, where nothing invented may be filed, or without spindles to walk to */
  async comeBack(anew: boolean): Promise<{ readonly round: Round; readonly request: string }> {
    const { store, simulated } = this.#deps;
    if (!store.demo)
      throw new AppError("refused", "The simulated gauge walks rounds in the demo only. Open the demo first.", {
        key: "demoOnly",
      });
    await simulated.start();
    if (anew || this.#walked === undefined) this.#walked = await this.#walk();
    return { round: this.#walked, request: REQUEST };
  }

  async #walk(): Promise<Round> {
    const { store, simulated, works, now, hub } = this.#deps;
    const stops = demoStops(store.db);
    if (stops === undefined || simulated.running === undefined)
      throw new AppError("refused", "The demo has too few spindles in use for a round.", { key: "noDemoRound" });
    const on = worksDay(walkBegan(stops.spindles.length, now()), works().timeZone);
    const round = planRound(
      store.db,
      {
        name: `Demo ${on}`,
        on,
        gaugeId: stops.gaugeId,
        made: "byHand",
        stops: stops.spindles.map(({ spindle }) => ({ spindleId: spindle.spindleId })),
      },
      store.newId(),
    );
    store.append([{ kind: "round", body: round }]);
    hub.say("round.changed", toRoundView(store.db, round, works()));
    this.#walks += 1;
    await walkDemo(simulated.running, round, this.#walks, now());
    return round;
  }
}
