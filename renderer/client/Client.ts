import type { EventName, Events, Push } from "../../app/contract/events.ts";
import type { Input, MethodName, Output } from "../../app/contract/methods.ts";
import type { Result } from "../../app/contract/result.ts";

/**
 * How the page stands to the program. `lost`: it is being looked for again, nothing typed is gone. `refused`: the
 * program does not know this page; only an address opened from the program lets it in.
 */
export type Connection = "connecting" | "open" | "lost" | "refused";

/** The page's one way to the core, whatever carries it. */
export type Client = {
  readonly call: <M extends MethodName>(name: M, input: Input<M>) => Promise<Result<Output<M>>>;
  /** Hears one event; answers its undo. */
  readonly on: <E extends EventName>(event: E, listener: (data: Events[E]) => void) => () => void;
  /** Hears each change of the connection, the present one at once. */
  readonly onConnection: (listener: (connection: Connection) => void) => () => void;
  /** Pushes were missed, or the program was joined anew: ask for `state.snapshot`, then tell its number to `caughtUp`. */
  readonly onGap: (listener: () => void) => () => void;
  readonly caughtUp: (seq: number) => void;
  readonly close: () => void;
};

/** What carries calls and pushes: Electron's bridge, or HTTP and a socket. */
export type Transport = {
  readonly call: (name: string, input: unknown) => Promise<Result<unknown>>;
  readonly open: (heard: (push: Push) => void, changed: (connection: Connection) => void) => void;
  readonly acknowledge: (seq: number) => void;
  readonly close: () => void;
};
