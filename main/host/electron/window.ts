import { BrowserWindow, type Session } from "electron";
import { CONTENT_SECURITY_POLICY } from "../loopback/staticFiles.ts";
import { PAGE_ORIGIN } from "./pageOrigin.ts";

/** One window: no Node in it, its own world for the preload, sandboxed, no other page, no other window. */
export function openWindow(preload: string): BrowserWindow {
  const window = new BrowserWindow({
    width: 1280,
    height: 800,
    minWidth: 320,
    minHeight: 480,
    show: false,
    title: "Holdfast",
    autoHideMenuBar: true,
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
      spellcheck: false,
      navigateOnDragDrop: false,
    },
  });
  window.once("ready-to-show", () => window.show());
  window.webContents.setWindowOpenHandler(() => ({ action: "deny" }));
  window.webContents.on("will-navigate", (event, url) => {
    if (!url.startsWith(`${PAGE_ORIGIN}/`)) event.preventDefault();
  });
  window.webContents.on("will-attach-webview", (event) => event.preventDefault());
  void window.loadURL(`${PAGE_ORIGIN}/index.html`);
  return window;
}

/** Nothing a page asks for is granted, and every answer carries the policy. */
export function harden(session: Session): void {
  session.setPermissionRequestHandler((_contents, _permission, grant) => grant(false));
  session.setPermissionCheckHandler(() => false);
  session.webRequest.onHeadersReceived((details, answer) => {
    answer({ responseHeaders: { ...details.responseHeaders, "Content-Security-Policy": [CONTENT_SECURITY_POLICY] } });
  });
}
