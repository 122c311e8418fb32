import { contextBridge, ipcRenderer } from "electron";

/** The window's whole reach: one call, one listener. `on` gives its undo back, since the bridge wraps callbacks. */
contextBridge.exposeInMainWorld("holdfast", {
  call: (name: string, input: unknown) => ipcRenderer.invoke("holdfast:call", name, input),
  on: (listener: (push: unknown) => void) => {
    const forward = (_event: unknown, push: unknown) => listener(push);
    ipcRenderer.on("holdfast:push", forward);
    ipcRenderer.send("holdfast:join");
    return () => {
      ipcRenderer.off("holdfast:push", forward);
    };
  },
  acknowledge: (seq: number) => ipcRenderer.send("holdfast:ack", seq),
});
