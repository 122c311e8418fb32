import { EventEmitter } from "node:events";
import { beforeEach, describe, expect, it, vi } from "vitest";

type Options = { webPreferences: Record<string, unknown> };
const made: { options: Options; window: StandInWindow }[] = [];

/** A stand-in for the `electron` module: as much of a window as ours touches. */
class StandInWindow extends EventEmitter {
  shown = false;
  loaded = "";
  openHandler: ((details: { url: string }) => { action: string }) | undefined;
  webContents = Object.assign(new EventEmitter(), {
    setWindowOpenHandler: (handler: (details: { url: string }) => { action: string }) => {
      this.openHandler = handler;
    },
  });
  constructor(options: Options) {
    super();
    made.push({ options, window: this });
  }
  show() {
    this.shown = true;
  }
  async loadURL(url: string) {
    this.loaded = url;
  }
}
vi.mock("electron", () => ({ BrowserWindow: StandInWindow }));

const { openWindow, harden } = await import("../../../../main/host/electron/window.ts");

beforeEach(() => {
  made.length = 0;
  openWindow("/preload.cjs");
});

describe("Electron's window", () => {
  it("is sandboxed, isolated and without Node", () => {
    expect(made[0]!.options.webPreferences).toMatchObject({
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webviewTag: false,
    });
  });

  it("opens no other window and goes to no other page", () => {
    const { window } = made[0]!;
    expect(window.openHandler!({ url: "https://evil.example" })).toEqual({ action: "deny" });
    const go = (url: string) => {
      let prevented = false;
      window.webContents.emit("will-navigate", { preventDefault: () => (prevented = true) }, url);
      return prevented;
    };
    expect(go("https://evil.example/")).toBe(true);
    expect(go("app://holdfast.evil/")).toBe(true);
    expect(go("app://holdfast/index.html")).toBe(false);
  });

  it("shows itself only when the page is drawn", () => {
    const { window } = made[0]!;
    expect([window.loaded, window.shown]).toEqual(["app://holdfast/index.html", false]);
    window.emit("ready-to-show");
    expect(window.shown).toBe(true);
  });

  it("grants no permission and sends the policy with every answer", () => {
    const granted: boolean[] = [];
    let headers: Record<string, string[]> = {};
    harden({
      setPermissionRequestHandler: (handler: (...args: unknown[]) => void) =>
        handler(undefined, "media", (yes: boolean) => granted.push(yes)),
      setPermissionCheckHandler: (handler: () => boolean) => granted.push(handler()),
      webRequest: {
        onHeadersReceived: (
          handler: (details: unknown, answer: (r: { responseHeaders: Record<string, string[]> }) => void) => void,
        ) =>
          handler({ responseHeaders: {} }, (r) => {
            headers = r.responseHeaders;
          }),
      },
    } as never); // as much of a session as `harden` touches
    expect(granted).toEqual([false, false]);
    expect(headers["Content-Security-Policy"]![0]).toContain("script-src 'self'");
  });
});
