import type { Push } from "../../app/contract/events.ts";
import type { Result } from "../../app/contract/result.ts";
import { backOff } from "./backOff.ts";
import type { Connection, Transport } from "./Client.ts";
import { type Door, forgetPass, takePass } from "./pass.ts";

/** The host closes with this when it does not know the token. */
const NOT_LET_IN = 4401;

type LoopbackParts = {
  readonly door: Door;
  readonly socket: () => WebSocket;
};

/**
 * HTTP for calls, one socket for pushes. A lost socket is opened again for as long as the page stands; a call made
 * while the program cannot be reached answers a failure at once, so nothing on the screen waits for ever.
 */
export function loopbackTransport({ door, socket: newSocket }: LoopbackParts): Transport {
  const pass = takePass(door).catch(() => undefined);
  let tell: (connection: Connection) => void = () => {};
  let socket: WebSocket | undefined;
  let failed = 0;
  let retry: ReturnType<typeof setTimeout> | undefined;
  let closed = false;

  const refused = (): Result<never> => {
    closed = true;
    forgetPass(door);
    socket?.close();
    tell("refused");
    return failure("pageRefused", "This page is not known to the program. Open a page from the program.");
  };

  async function call(name: string, input: unknown): Promise<Result<unknown>> {
    const token = await pass;
    if (token === undefined || closed) return refused();
    try {
      const answer = await door.fetch("/call", {
        method: "POST",
        headers: { "Content-Type": "application/json", Authorization: `Bearer ${token}` },
        body: JSON.stringify({ name, input }),
      });
      if (answer.status === 401) return refused();
      if (!answer.ok) return failure("callFailed", `The program answered with ${answer.status}. Try again.`);
      return (await answer.json()) as Result<unknown>; // our own host's answer
    } catch {
      return failure("coreAway", "The program cannot be reached. What was filed is safe; what is typed stays here.");
    }
  }

  async function join(heard: (push: Push) => void): Promise<void> {
    const token = await pass;
    if (closed) return;
    if (token === undefined) {
      refused();
      return;
    }
    const page = newSocket();
    socket = page;
    page.onopen = () => page.send(JSON.stringify({ token }));
    page.onmessage = (message) => {
      failed = 0;
      tell("open");
      heard(JSON.parse(String(message.data)) as Push); // our own host's message
    };
    page.onclose = ({ code }) => {
      if (closed) return;
      if (code === NOT_LET_IN) {
        refused();
        return;
      }
      tell("lost");
      retry = setTimeout(() => join(heard), backOff(failed));
      failed += 1;
    };
  }

  return {
    call,
    open: (heard, changed) => {
      let last: Connection | undefined;
      tell = (now) => {
        if (now !== last) changed(now);
        last = now;
      };
      join(heard);
    },
    acknowledge: (seq) => {
      if (socket?.readyState === WebSocket.OPEN) socket.send(JSON.stringify({ ack: seq }));
    },
    close: () => {
      closed = true;
      clearTimeout(retry);
      socket?.close();
    },
  };
}

function failure(key: string, message: string): Result<never> {
  return { ok: false, error: { code: "link", message, key } };
}
