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
 */
export function sourceMaker(simulator: () => Simulator | undefined): (source: Source) => ByteSource {
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
        if (running === undefined) throw new LinkError("simulatorFailed", "the simulated gauge is not running");
        return tcpSource({ ...running.address, label: "simulated gauge" });
      }
    }
  };
}
