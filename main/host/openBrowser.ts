import { spawn } from "node:child_process";

/** Opens the user's browser; answers false where there is none to open, and the address must be typed. */
export function openBrowser(address: string, platform: NodeJS.Platform, env: NodeJS.ProcessEnv): Promise<boolean> {
  if (env.HOLDFAST_NO_BROWSER === "1") return Promise.resolve(false);
  if (platform === "linux" && !env.DISPLAY && !env.WAYLAND_DISPLAY) return Promise.resolve(false);
  const [command, args]: readonly [string, readonly string[]] =
    platform === "win32"
      ? ["rundll32", ["url.dll,FileProtocolHandler", address]]
      : [platform === "darwin" ? "open" : "xdg-open", [address]];
  return new Promise((done) => {
    const child = spawn(command, args, { stdio: "ignore", detached: true });
    child.once("error", () => done(false));
    child.once("spawn", () => {
      child.unref();
      done(true);
    });
  });
}
