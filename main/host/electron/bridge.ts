import type { IpcMain, IpcMainEvent, IpcMainInvokeEvent } from "electron";
import type { Core } from "../Core.ts";
import { PageFeed } from "../PageFeed.ts";
import { PAGE_ORIGIN } from "./pageOrigin.ts";

type Sender = Pick<IpcMainEvent | IpcMainInvokeEvent, "sender" | "senderFrame">;

/** The only code that touches `ipcMain`. Who does not speak from our own page's main frame is not heard. */
export function bridge(ipc: IpcMain, core: Core): () => void {
  const feeds = new Map<number, { readonly feed: PageFeed; readonly leave: () => void }>();

  ipc.handle("holdfast:call", (event, name: unknown, input: unknown) => {
    if (!isOurs(event))
      return { ok: false, error: { code: "badRequest", message: "This page may not call the program." } };
    return core.call(name, input);
  });

  ipc.on("holdfast:join", (event) => {
    if (!isOurs(event)) return;
    const page = event.sender;
    leave(page.id);
    const feed = new PageFeed(
      (push) => {
        if (!page.isDestroyed()) page.send("holdfast:push", push);
      },
      { now: () => performance.now(), later },
    );
    feeds.set(page.id, { feed, leave: core.hub.join(feed) });
    page.once("destroyed", () => leave(page.id));
    page.send("holdfast:push", { seq: core.hub.seq, event: "page.joined", data: null });
  });

  ipc.on("holdfast:ack", (event) => {
    if (isOurs(event)) feeds.get(event.sender.id)?.feed.acknowledge();
  });

  function leave(pageId: number): void {
    feeds.get(pageId)?.leave();
    feeds.delete(pageId);
  }

  return () => {
    ipc.removeHandler("holdfast:call");
    ipc.removeAllListeners("holdfast:join");
    ipc.removeAllListeners("holdfast:ack");
    for (const id of [...feeds.keys()]) leave(id);
  };
}

function isOurs(event: Sender): boolean {
  const frame = event.senderFrame;
  // Node gives a scheme of our own the origin "null", so scheme and host are compared.
  return frame !== null && frame === event.sender.mainFrame && frame.url.startsWith(`${PAGE_ORIGIN}/`);
}

function later(run: () => void, ms: number): () => void {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
}
