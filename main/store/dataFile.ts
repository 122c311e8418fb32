import { homedir } from "node:os";
import { join } from "node:path";

type Place = {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
  readonly home: string;
};

const here = (): Place => ({ env: process.env, platform: process.platform, home: homedir() });

/**
 * The folder of data file, spool and settings: `HOLDFAST_HOME`, else where this system keeps a user's program data.
 * @see XDG Base Directory Specification, XDG_DATA_HOME; a relative path there is to be ignored
 */
export function dataFolder({ env, platform, home }: Place = here()): string {
  if (env.HOLDFAST_HOME) return env.HOLDFAST_HOME;
  if (platform === "win32") return join(env.LOCALAPPDATA || join(home, "AppData", "Local"), "Holdfast");
  if (platform === "darwin") return join(home, "Library", "Application Support", "Holdfast");
  const xdg = env.XDG_DATA_HOME;
  return join(xdg?.startsWith("/") ? xdg : join(home, ".local", "share"), "holdfast");
}

/** The data file of this user. The demo has its own: invented data never lies among real. */
export function dataFile(demo: boolean, place: Place = here()): string {
  return join(dataFolder(place), demo ? "demo.sqlite" : "holdfast.sqlite");
}
