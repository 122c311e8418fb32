import { EventEmitter } from "node:events";
import { registerHooks } from "node:module";

/**
 * Preloaded with `--import`: whoever imports `electron` gets this stand-in, which has what the main process uses, opens no
 * window, and carries calls that come from the parent process as `{ id, name, input }`.
 */
const page = Object.assign(new EventEmitter(), {
  id: 1,
  mainFrame: { url: "app://holdfast/index.html" },
  isDestroyed: () => false,
  send: () => undefined,
  setWindowOpenHandler: () => undefined,
});

class StandInWindow extends EventEmitter {
  static opened: StandInWindow[] = [];
  static getAllWindows = () => StandInWindow.opened;
  webContents = page;
  constructor(options: { webPreferences: { preload: string } }) {
    super();
    StandInWindow.opened.push(this);
    process.send?.({ opened: options.webPreferences.preload });
  }
  show() {}
  focus() {}
  async loadURL(url: string) {
    process.send?.({ loads: url });
  }
}

const handlers = new Map<string, (event: unknown, ...args: unknown[]) => unknown>();
const app = Object.assign(new EventEmitter(), {
  requestSingleInstanceLock: () => true,
  whenReady: async () => undefined,
  quit() {
    const event = { stopped: false, preventDefault: () => (event.stopped = true) };
    app.emit("before-quit", event);
    if (!event.stopped) process.exit(0);
  },
});

const standIn = {
  app,
  BrowserWindow: StandInWindow,
  ipcMain: Object.assign(new EventEmitter(), {
    handle: (name: string, handler: (event: unknown, ...args: unknown[]) => unknown) => handlers.set(name, handler),
  }),
  net: { fetch: () => Promise.resolve(new Response()) },
  protocol: { registerSchemesAsPrivileged: () => undefined, handle: () => undefined },
  session: {
    defaultSession: {
      setPermissionRequestHandler: () => undefined,
      setPermissionCheckHandler: () => undefined,
      webRequest: { onHeadersReceived: () => undefined },
    },
  },
};

process.on("message", async ({ id, name, input }: { id: number; name: string; input: unknown }) => {
  if (name === "quit") return app.quit();
  const event = { sender: page, senderFrame: page.mainFrame };
  process.send?.({ id, result: await handlers.get("holdfast:call")?.(event, name, input) });
});

Object.assign(globalThis, { electronStandIn: standIn });
const source = Object.keys(standIn)
  .map((name) => `export const ${name} = globalThis.electronStandIn.${name};`)
  .join("\n");
registerHooks({
  resolve: (specifier, context, next) =>
    specifier === "electron" ? { url: "stand-in:electron", shortCircuit: true } : next(specifier, context),
  load: (url, context, next) =>
    url === "stand-in:electron" ? { format: "module", source, shortCircuit: true } : next(url, context),
});
