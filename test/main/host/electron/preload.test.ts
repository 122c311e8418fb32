import { EventEmitter } from "node:events";
import { describe, expect, it, vi } from "vitest";

type Bridge = {
  call: (name: string, input: unknown) => Promise<unknown>;
  on: (listener: (push: unknown) => void) => () => void;
  acknowledge: (seq: number) => void;
};

const exposed: Record<string, Bridge> = {};
const sent: unknown[][] = [];
const renderer = Object.assign(new EventEmitter(), {
  invoke: async (...args: unknown[]) => args,
  send: (...args: unknown[]) => sent.push(args),
});
vi.mock("electron", () => ({
  contextBridge: { exposeInMainWorld: (name: string, api: Bridge) => Object.assign(exposed, { [name]: api }) },
  ipcRenderer: renderer,
}));
await import("../../../../main/host/electron/preload.ts");

describe("the preload", () => {
  it("shows the page three functions and nothing of Electron", () => {
    expect(Object.keys(exposed)).toEqual(["holdfast"]);
    expect(Object.keys(exposed.holdfast!).sort()).toEqual(["acknowledge", "call", "on"]);
  });

  it("carries calls and acknowledgements on fixed channels", async () => {
    expect(await exposed.holdfast!.call("works.save", { a: 1 })).toEqual(["holdfast:call", "works.save", { a: 1 }]);
    exposed.holdfast!.acknowledge(5);
    expect(sent).toContainEqual(["holdfast:ack", 5]);
  });

  it("gives pushes without Electron's event, and stops when undone", () => {
    const got: unknown[] = [];
    const undo = exposed.holdfast!.on((push) => got.push(push));
    renderer.emit("holdfast:push", { secret: "event" }, { seq: 1 });
    undo();
    renderer.emit("holdfast:push", {}, { seq: 2 });
    expect(got).toEqual([{ seq: 1 }]);
  });
});
