import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { WebSocket } from "ws";
import { type Loopback, startLoopback } from "../../../../main/host/loopback/server.ts";
import { PushHub } from "../../../../main/host/PushHub.ts";
import { silentLog } from "../../../../main/log.ts";

let folder: string;
let host: Loopback;
let hub: PushHub;
let nowMs: number;

const start = (port?: number) =>
  startLoopback({
    core: { hub, call: async (name, input) => ({ ok: true, value: { name, input } }) },
    pageFolder: folder,
    rememberIn: join(folder, "pass", "loopback.json"),
    port,
    now: () => nowMs,
    log: silentLog,
  });

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "holdfast-loopback-"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>page</title>");
  hub = new PushHub();
  nowMs = 1_000_000;
  host = await start();
});

afterEach(async () => {
  await host.close();
  rmSync(folder, { recursive: true, force: true });
});

const base = () => `http://127.0.0.1:${host.port}`;
const code = () => new URL(host.address()).hash.slice("#code=".length);

/** A request with headers that `fetch` would not let us set. */
function send(method: string, path: string, headers: Record<string, string>, body = ""): Promise<number> {
  return new Promise((done, fail) => {
    const r = request({ host: "127.0.0.1", port: host.port, method, path, headers }, (response) => {
      response.resume();
      done(response.statusCode ?? 0);
    });
    r.on("error", fail);
    r.end(body);
  });
}

const ownHeaders = () => ({ origin: base(), "content-type": "application/json" });

async function token(): Promise<string> {
  const response = await fetch(`${base()}/session`, {
    method: "POST",
    headers: ownHeaders(),
    body: JSON.stringify({ code: code() }),
  });
  return ((await response.json()) as { token: string }).token;
}

const call = (bearer: string, name: string, more: Record<string, string> = {}) =>
  send(
    "POST",
    "/call",
    { host: `127.0.0.1:${host.port}`, ...ownHeaders(), authorization: `Bearer ${bearer}`, ...more },
    JSON.stringify({ name }),
  );

function open(
  origin = base(),
  path = "/push",
): Promise<{ socket: WebSocket; messages: unknown[]; closed: Promise<number> }> {
  const socket = new WebSocket(`ws://127.0.0.1:${host.port}${path}`, { origin });
  const messages: unknown[] = [];
  socket.on("message", (data) => messages.push(JSON.parse(String(data))));
  const closed = new Promise<number>((done) => socket.on("close", (n) => done(n)));
  return new Promise((done, fail) => {
    socket.on("open", () => done({ socket, messages, closed }));
    socket.on("error", fail);
  });
}

const until = async (holds: () => boolean) => {
  for (let i = 0; i < 200 && !holds(); i += 1) await new Promise((done) => setTimeout(done, 5));
  expect(holds()).toBe(true);
};

describe("the loopback host", () => {
  it("listens on 127.0.0.1 only and serves the page under a strict policy", async () => {
    const response = await fetch(`${base()}/`);
    expect(response.status).toBe(200);
    expect(response.headers.get("content-security-policy")).toContain("script-src 'self'");
    expect(response.headers.get("content-security-policy")).not.toContain("unsafe");
    await expect(fetch(`http://[::1]:${host.port}/`)).rejects.toThrow();
  });

  it("refuses a foreign host name before it answers anything", async () => {
    expect(await send("GET", "/", { host: `evil.example:${host.port}` })).toBe(403);
    expect(await send("POST", "/session", { ...ownHeaders(), host: `evil.example:${host.port}` }, "{}")).toBe(403);
  });

  it("refuses a foreign or missing origin on every call", async () => {
    const good = await token();
    expect(await call(good, "state.snapshot")).toBe(200);
    expect(await call(good, "state.snapshot", { origin: "http://evil.example" })).toBe(403);
    const { origin: _, ...without } = ownHeaders();
    expect(await send("POST", "/call", { ...without, authorization: `Bearer ${good}` }, "{}")).toBe(403);
  });

  it("takes no call without the token, and none that is not JSON", async () => {
    const good = await token();
    expect(await call("wrong", "state.snapshot")).toBe(401);
    expect(await call(good, "state.snapshot", { "content-type": "text/plain" })).toBe(415);
    expect(await send("POST", "/call", { ...ownHeaders(), authorization: `Bearer ${good}` }, "{not json")).toBe(400);
  });

  it("does not read a body of more than its limit", async () => {
    const good = await token();
    const status = await send(
      "POST",
      "/call",
      { ...ownHeaders(), authorization: `Bearer ${good}` },
      `"${"x".repeat(25 * 1024 * 1024)}"`,
    ).catch(() => 413);
    expect(status).toBe(413);
  });

  it("gives one token for one code, and none after a minute", async () => {
    const once = code();
    const ask = (value: string) =>
      fetch(`${base()}/session`, { method: "POST", headers: ownHeaders(), body: JSON.stringify({ code: value }) }).then(
        (r) => r.status,
      );
    expect(await ask(once)).toBe(200);
    expect(await ask(once)).toBe(401);
    const late = code();
    nowMs += 60_001;
    expect(await ask(late)).toBe(401);
    expect(await ask("")).toBe(401);
  });

  it("closes a socket whose first message lacks the token, and refuses a foreign one before the upgrade", async () => {
    await expect(open("http://evil.example")).rejects.toThrow(/403/);
    await expect(open(base(), "/other")).rejects.toThrow(/403/);
    const page = await open();
    page.socket.send(JSON.stringify({ token: "wrong" }));
    expect(await page.closed).toBe(4401);
    expect(hub.pages).toBe(0);
  });

  it("sends events to a page that showed its token", async () => {
    const page = await open();
    page.socket.send(JSON.stringify({ token: await token() }));
    await until(() => hub.pages === 1);
    hub.say("register.changed", { what: "gauges" });
    await until(() => page.messages.length === 2);
    expect(page.messages[1]).toEqual({ seq: 1, event: "register.changed", data: { what: "gauges" } });
    page.socket.close();
    await until(() => hub.pages === 0);
  });

  it("takes the same port again after a restart and still knows its pages, from a file only the user can read", async () => {
    const good = await token();
    const { port } = host;
    await host.close();
    host = await start();
    expect(host.port).toBe(port);
    expect(await call(good, "state.snapshot")).toBe(200);
    const path = join(folder, "pass", "loopback.json");
    expect(readFileSync(path, "utf8")).not.toContain(good);
    if (process.platform !== "win32") expect(statSync(path).mode & 0o777).toBe(0o600);
  });

  it("takes another port when another program holds the last one, but not when the user asked for it", async () => {
    const second = await start();
    expect(second.port).not.toBe(host.port);
    await second.close();
    await expect(start(host.port)).rejects.toThrow(/EADDRINUSE/);
  });

  it("serves nothing outside the page's folder", async () => {
    for (const path of ["/../../../../etc/passwd", "/%2e%2e/%2e%2e/etc/passwd", "/..%2f..%2fetc%2fpasswd", "/%00"]) {
      const status = await send("GET", path, { host: `127.0.0.1:${host.port}` });
      expect(status).toBe(200); // the page itself
    }
    expect(await (await fetch(`${base()}/..%2f..%2fetc%2fpasswd`)).text()).toContain("<title>page</title>");
  });
});
