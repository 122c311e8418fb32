import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { app, BrowserWindow, ipcMain, net, protocol, session } from "electron";
import { openProgram } from "../../program.ts";
import { programRoot } from "../../programRoot.ts";
import { bridge } from "./bridge.ts";
import { harden, openWindow } from "./window.ts";

/** Electron's main process: the same program behind a window of its own. Anything worth testing stands elsewhere. */
const built = join(programRoot, "out");
const pageFolder = join(built, "renderer");

protocol.registerSchemesAsPrivileged([
  { scheme: "app", privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);

if (app.requestSingleInstanceLock()) void start();
else app.quit(); // the first window comes forward instead

async function start(): Promise<void> {
  await app.whenReady();
  const program = await openProgram({ demo: process.argv.includes("--demo"), host: "electron" });
  protocol.handle("app", (request) => serve(request.url));
  harden(session.defaultSession);
  bridge(ipcMain, program.core);
  const preload = join(built, "preload", "preload.cjs");
  openWindow(preload);
  app.on("second-instance", () => BrowserWindow.getAllWindows()[0]?.focus());
  app.on("activate", () => BrowserWindow.getAllWindows().length === 0 && openWindow(preload));
  app.on("window-all-closed", () => app.quit());
  let closing = false;
  app.on("before-quit", (event) => {
    if (closing) return;
    closing = true;
    event.preventDefault();
    void program.close().finally(() => app.quit());
  });
}

/** Files of the built page and nothing beside them. */
function serve(address: string): Promise<Response> {
  const path = join(pageFolder, decodeURIComponent(new URL(address).pathname));
  if (!path.startsWith(pageFolder)) return Promise.resolve(new Response(null, { status: 404 }));
  return net.fetch(pathToFileURL(path).href);
}
