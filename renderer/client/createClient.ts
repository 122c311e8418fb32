import type { Push } from "../../app/contract/events.ts";
import type { Output } from "../../app/contract/methods.ts";
import type { Result } from "../../app/contract/result.ts";
import { afterDrawn } from "./afterDrawn.ts";
import type { Client, Connection, Transport } from "./Client.ts";
import { PushRouter } from "./PushRouter.ts";

/** The client over any transport. Every batch of readings is acknowledged when it has been drawn. */
export function createClient(transport: Transport): Client {
  let connection: Connection = "connecting";
  const watching = new Set<(connection: Connection) => void>();
  const gaps = new Set<() => void>();
  const router = new PushRouter(() => {
    for (const listener of gaps) listener();
  });

  const heard = (push: Push) => {
    router.take(push);
    if (push.event === "readings.arrived") afterDrawn(() => transport.acknowledge(push.seq));
  };
  const changed = (now: Connection) => {
    connection = now;
    for (const listener of watching) listener(now);
  };
  transport.open(heard, changed);

  return {
    // The core vouches for its outputs; the border checks inputs.
    call: (name, input) => transport.call(name, input) as Promise<Result<Output<typeof name>>>,
    on: (event, listener) => router.on(event, listener),
    onConnection: (listener) => {
      watching.add(listener);
      listener(connection);
      return () => watching.delete(listener);
    },
    onGap: (listener) => {
      gaps.add(listener);
      return () => gaps.delete(listener);
    },
    caughtUp: (seq) => router.caughtUp(seq),
    close: () => transport.close(),
  };
}
