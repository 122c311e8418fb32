import type { Client } from "./Client.ts";
import { createClient } from "./createClient.ts";
import { type Bridge, electronTransport } from "./electronTransport.ts";
import { loopbackTransport } from "./loopbackTransport.ts";

/** The client for where this page runs: Electron's window when its bridge is there, else the loopback host. */
export function connect(page: Window & { readonly holdfast?: Bridge }): Client {
  if (page.holdfast !== undefined) return createClient(electronTransport(page.holdfast));
  const door = {
    location: page.location,
    history: page.history,
    storage: page.sessionStorage,
    fetch: (input: RequestInfo | URL, init?: RequestInit) => page.fetch(input, init),
  };
  const address = `${page.location.protocol === "https:" ? "wss" : "ws"}://${page.location.host}/push`;
  return createClient(loopbackTransport({ door, socket: () => new WebSocket(address) }));
}
