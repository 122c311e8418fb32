import type { Push } from "../../app/contract/events.ts";
import type { Result } from "../../app/contract/result.ts";
import type { Transport } from "./Client.ts";

/** What the preload script exposes. */
export type Bridge = {
  readonly call: (name: string, input: unknown) => Promise<Result<unknown>>;
  readonly on: (listener: (push: Push) => void) => () => void;
  readonly acknowledge: (seq: number) => void;
};

/** Electron's window: the core lives as long as the window does, so the connection is never lost. */
export function electronTransport(bridge: Bridge): Transport {
  let undo: (() => void) | undefined;
  return {
    call: (name, input) => bridge.call(name, input),
    open: (heard, changed) => {
      undo = bridge.on(heard);
      changed("open");
    },
    acknowledge: (seq) => bridge.acknowledge(seq),
    close: () => undo?.(),
  };
}
