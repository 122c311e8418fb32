import { EventEmitter } from "node:events";
import type { IpcMain } from "electron";
import { describe, expect, it } from "vitest";
import { bridge } from "../../../../main/host/electron/bridge.ts";
import { PushHub } from "../../../../main/host/PushHub.ts";

/** A stand-in for Electron's `ipcMain`: one handler a name, listeners by name. */
class StandInIpc extends EventEmitter {
  readonly handlers = new Map<string, (...args: unknown[]) => unknown>();
  handle(name: string, handler: (...args: unknown[]) => unknown) {
    this.handlers.set(name, handler);
  }
  removeHandler(name: string) {
    this.handlers.delete(name);
  }
}

function pageAt(url: string) {
  const sent: unknown[] = [];
  const mainFrame = { url };
  const sender = Object.assign(new EventEmitter(), {
    id: 7,
    mainFrame,
    isDestroyed: () => false,
    send: (_channel: string, push: unknown) => sent.push(push),
  });
  return { sent, sender, event: { sender, senderFrame: mainFrame }, innerFrame: { sender, senderFrame: { url } } };
}

function built() {
  const ipc = new StandInIpc();
  const hub = new PushHub();
  const calls: unknown[] = [];
  const close = bridge(ipc as unknown as IpcMain, {
    hub,
    call: async (name, input) => {
      calls.push([name, input]);
      return { ok: true, value: 1 };
    },
  }); // the stand-in has what bridge uses
  return { ipc, hub, calls, close };
}

describe("the bridge between Electron's window and the core", () => {
  it("carries a call from our own page", async () => {
    const { ipc, calls } = built();
    const page = pageAt("app://holdfast/index.html");
    expect(await ipc.handlers.get("holdfast:call")!(page.event, "works.save", { a: 1 })).toEqual({
      ok: true,
      value: 1,
    });
    expect(calls).toEqual([["works.save", { a: 1 }]]);
  });

  it.each([["https://evil.example/"], ["app://holdfast.evil/index.html"], ["file:///etc/passwd"]])(
    "does not hear %s",
    async (url) => {
      const { ipc, hub, calls } = built();
      const page = pageAt(url);
      expect(await ipc.handlers.get("holdfast:call")!(page.event, "works.save", {})).toMatchObject({ ok: false });
      ipc.emit("holdfast:join", page.event);
      expect([calls, hub.pages]).toEqual([[], 0]);
    },
  );

  it("does not hear a frame inside our page", async () => {
    const { ipc, calls } = built();
    const page = pageAt("app://holdfast/index.html");
    expect(await ipc.handlers.get("holdfast:call")!(page.innerFrame, "works.save", {})).toMatchObject({ ok: false });
    expect(calls).toEqual([]);
  });

  it("sends pushes to a page that joined, once even when it joins again, until it is gone", () => {
    const { ipc, hub } = built();
    const page = pageAt("app://holdfast/index.html");
    ipc.emit("holdfast:join", page.event);
    ipc.emit("holdfast:join", page.event);
    expect(hub.pages).toBe(1);
    hub.say("register.changed", { what: "gauges" });
    expect(page.sent.at(-1)).toEqual({ seq: 1, event: "register.changed", data: { what: "gauges" } });
    page.sender.emit("destroyed");
    expect(hub.pages).toBe(0);
  });

  it("takes everything down when it is closed", () => {
    const { ipc, hub, close } = built();
    ipc.emit("holdfast:join", pageAt("app://holdfast/index.html").event);
    close();
    expect([ipc.handlers.size, ipc.eventNames(), hub.pages]).toEqual([0, [], 0]);
  });
});
