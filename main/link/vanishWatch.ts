import { stat } from "node:fs/promises";

/**
 * Calls `onGone` once when the device node of a port has gone from the file system, and answers how to call the
 * watch off. The driver alone does not always tell: a hang-up between two reads makes its read answer no bytes,
 * and it then reads on for ever. The system does not give the name to another device while the old one is held
 * open, so a missing node is a sure sign. Windows has no such nodes, and its driver does tell.
 */
export function vanishWatch(path: string, onGone: () => void, everyMs = 250): () => void {
  if (process.platform === "win32") return () => {};
  let over = false;
  const timer = setInterval(() => {
    stat(path).catch((cause: NodeJS.ErrnoException) => {
      if (over || cause.code !== "ENOENT") return;
      over = true;
      clearInterval(timer);
      onGone();
    });
  }, everyMs);
  timer.unref();
  return () => {
    over = true;
    clearInterval(timer);
  };
}
