import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { setImmediate as nextTurn } from "node:timers/promises";
import { WebSocketServer } from "ws";
import type { Log } from "../../log.ts";
import type { Core } from "../Core.ts";
import { refusal } from "./guard.ts";
import { jsonPieces } from "./jsonPieces.ts";
import { Passes } from "./Passes.ts";
import { servePushes } from "./pushSocket.ts";
import { readJson } from "./readJson.ts";
import { readRemembered, remember } from "./remembered.ts";
import { SAFE_HEADERS, sendStatic } from "./staticFiles.ts";

/** So much of a long answer is written before others have their turn. */
const MOST_AT_ONCE = 256 * 1024;
const MAX_BODY_BYTES = 24 * 1024 * 1024;

export type LoopbackOptions = {
  readonly core: Core;
  /** The built page. */
  readonly pageFolder: string;
  /** Port and token hashes of the last run, so that open pages find their way back. */
  readonly rememberIn: string;
  /** Asked for by the user; else the last run's port, else a free one. */
  readonly port?: number | undefined;
  readonly now: () => number;
  readonly log: Log;
};

export type Loopback = {
  readonly port: number;
  /** An address with a fresh one-time code: for the browser, never for a log. */
  readonly address: () => string;
  readonly close: () => Promise<void>;
};

/** Serves page, calls and pushes on 127.0.0.1. Everything is refused before it is read unless host, origin and token are ours. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const remembered = readRemembered(options.rememberIn);
  const passes = new Passes(options.now, remembered.tokenHashes);
  let port = 0;

  const server = createServer({ maxHeaderSize: 16_384 }, (request, response) => {
    answer(request, response).catch((cause) => {
      options.log.error("a request failed", cause);
      response.destroy();
    });
  });
  server.requestTimeout = 30_000;
  server.headersTimeout = 10_000;
  const sockets = new WebSocketServer({ noServer: true, maxPayload: 4_096, perMessageDeflate: false });
  server.on("upgrade", (request, socket, head) => {
    const why = refusal(request.headers, port, true) ?? (request.url === "/push" ? undefined : "wrong path");
    if (why !== undefined) {
      socket.end("HTTP/1.1 403 Forbidden\r\nConnection: close\r\n\r\n");
      return;
    }
    sockets.handleUpgrade(request, socket, head, (page) => servePushes(page, passes, options.core.hub));
  });

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const isCall = request.method === "POST";
    if (refusal(request.headers, port, isCall) !== undefined) return status(response, 403);
    const path = (request.url ?? "/").split("?")[0]!;
    if (request.method === "GET") return sendStatic(options.pageFolder, path, response);
    if (!isCall) return status(response, 405);
    if (path === "/call" && !passes.holds(bearer(request))) return status(response, 401);
    const body = await readJson(request, MAX_BODY_BYTES);
    if ("refused" in body) return status(response, body.refused);
    const message = (body.value ?? {}) as { code?: unknown; name?: unknown; input?: unknown }; // each is checked where it is used
    if (path === "/call") return json(response, await options.core.call(message.name, message.input));
    if (path !== "/session") return status(response, 404);
    const token = typeof message.code === "string" ? passes.exchange(message.code) : undefined;
    if (token === undefined) return status(response, 401);
    remember(options.rememberIn, { port, tokenHashes: passes.tokenHashes });
    return json(response, { token });
  }

  port = await listen(server, options.port ?? remembered.port, options.port !== undefined);
  remember(options.rememberIn, { port, tokenHashes: passes.tokenHashes });
  return {
    port,
    address: () => `http://127.0.0.1:${port}/#code=${passes.newCode()}`,
    close: () =>
      new Promise((done) => {
        for (const page of sockets.clients) page.terminate();
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

const bearer = (request: IncomingMessage) => /^Bearer (\S+)$/.exec(request.headers.authorization ?? "")?.[1];

function status(response: ServerResponse, code: number): void {
  response.writeHead(code, { ...SAFE_HEADERS, "Content-Type": "text/plain; charset=utf-8", Connection: "close" });
  response.end();
}

async function json(response: ServerResponse, value: unknown): Promise<void> {
  response.writeHead(200, { ...SAFE_HEADERS, "Content-Type": "application/json", "Cache-Control": "no-store" });
  let text = "";
  for (const piece of jsonPieces(value)) {
    text += piece;
    if (text.length < MOST_AT_ONCE) continue;
    response.write(text);
    text = "";
    await nextTurn();
  }
  response.end(text);
}

/** The wanted port, or a free one when another program holds it and the user did not insist. */
async function listen(server: ReturnType<typeof createServer>, wanted: number, insist: boolean): Promise<number> {
  const on = (port: number) =>
    new Promise<number>((done, fail) => {
      server.once("error", fail);
      server.listen({ host: "127.0.0.1", port, exclusive: true }, () => {
        server.off("error", fail);
        done((server.address() as AddressInfo).port); // a TCP server's address
      });
    });
  try {
    return await on(wanted);
  } catch (cause) {
    if (insist || wanted === 0) throw cause;
    return on(0);
  }
}
