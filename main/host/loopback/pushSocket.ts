import type { WebSocket } from "ws";
import { PageFeed } from "../PageFeed.ts";
import type { PushHub } from "../PushHub.ts";
import type { Passes } from "./Passes.ts";

const AUTHENTICATE_WITHIN_MS = 5_000;
/** A socket this far behind is no page that draws: it is closed, and asks for a snapshot when it comes back. */
const MAX_BEHIND_BYTES = 8 * 1024 * 1024;

/** One page's socket: its first message must carry the token; after that it hears the hub and acknowledges readings. */
export function servePushes(socket: WebSocket, passes: Passes, hub: PushHub): void {
  let leave: (() => void) | undefined;
  let feed: PageFeed | undefined;
  const late = setTimeout(() => socket.close(4401, "no token"), AUTHENTICATE_WITHIN_MS);

  socket.on("message", (data) => {
    const message = parse(data);
    if (feed !== undefined) {
      if (message?.ack !== undefined) feed.acknowledge();
      return;
    }
    if (!passes.holds(message?.token)) {
      socket.close(4401, "wrong token");
      return;
    }
    clearTimeout(late);
    feed = new PageFeed(
      (push) => {
        if (socket.bufferedAmount > MAX_BEHIND_BYTES) socket.terminate();
        else if (socket.readyState === socket.OPEN) socket.send(JSON.stringify(push));
      },
      { now: () => performance.now(), later },
    );
    leave = hub.join(feed);
    socket.send(JSON.stringify({ seq: hub.seq, event: "page.joined", data: null }));
  });
  socket.on("error", () => socket.terminate());
  socket.on("close", () => {
    clearTimeout(late);
    leave?.();
  });
}

function later(run: () => void, ms: number): () => void {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
}

function parse(data: unknown): { token?: unknown; ack?: unknown } | undefined {
  try {
    const value: unknown = JSON.parse(String(data));
    return typeof value === "object" && value !== null ? value : undefined;
  } catch {
    return undefined;
  }
}
