import type { Source } from "../../app/contract/linkViews.ts";
import type { ByteSource } from "./ByteSource.ts";
import { fileSource } from "./file.ts";
import { LinkError } from "./LinkProblem.ts";
import { serialSource } from "./serialPort.ts";
import type { Simulator } from "./simulated.ts";
import { tcpSource } from "./tcp.ts";

/**
 * A byte source for what a page may ask to open.
 * @param simulator  the one that runs, looked up at each opening; undefined while there is none
 * @param instrument  which of the simulator's two
 */
export function sourceMaker(
  simulator: () => Simulator | undefined,
  instrument: "gauge" | "reference" = "gauge",
): (source: Source) => ByteSource {
  return (source) => {
    switch (source.kind) {
      case "serial":
        return serialSource(source);
      case "tcp":
        return tcpSource(source);
      case "file":
        return fileSource(source);
      case "simulated": {
        const running = simulator();
        const address = instrument === "gauge" ? running?.address : running?.reference;
        if (address === undefined) throw new LinkError("simulatorFailed", `the simulated ${instrument} is not running`);
        return tcpSource({ ...address, label: `simulated ${instrument}` });
      }
    }
  };
}
