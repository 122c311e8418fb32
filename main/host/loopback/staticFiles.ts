import { createReadStream, statSync } from "node:fs";
import type { ServerResponse } from "node:http";
import { extname, join, normalize, sep } from "node:path";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".json": "application/json",
};

/** What the page may load and talk to; nothing from anywhere else. The Electron window uses the same. */
export const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "media-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

export const SAFE_HEADERS: Readonly<Record<string, string>> = {
  "Content-Security-Policy": CONTENT_SECURITY_POLICY,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
};

/** Sends a built file of the page; every path that is no file answers the page itself, which finds its own way. */
export function sendStatic(folder: string, urlPath: string, response: ServerResponse): void {
  const file = findFile(folder, urlPath) ?? findFile(folder, "/index.html");
  if (file === undefined) {
    response.writeHead(503, { ...SAFE_HEADERS, "Content-Type": "text/plain; charset=utf-8" });
    response.end("The page has not been built. Stop the program and start it with npm start.\n");
    return;
  }
  const lasting = file.includes(`${sep}assets${sep}`); // their names carry a hash
  response.writeHead(200, {
    ...SAFE_HEADERS,
    "Content-Type": types[extname(file)] ?? "application/octet-stream",
    "Cache-Control": lasting ? "public, max-age=31536000, immutable" : "no-store",
  });
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
}

function findFile(folder: string, urlPath: string): string | undefined {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return undefined;
  }
  if (decoded.includes("\0")) return undefined;
  const path = join(folder, normalize(decoded));
  if (!path.startsWith(folder + sep)) return undefined;
  return statSync(path, { throwIfNoEntry: false })?.isFile() ? path : undefined;
}
