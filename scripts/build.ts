import { buildWindow } from "./buildWindow.ts";

/** Everything Electron needs: main, preload and page, as `electron.config.ts` describes them. */
if (!(await buildWindow())) process.stdout.write("Nothing has changed since the last build.\n");
