import { once } from "node:events";
import { createServer, type Server, type Socket } from "node:net";
import { drainedOrClosed } from "../../simulator/output/drainedOrClosed.ts";

/** Serves a stream over TCP to one taker at a time, as fast as it is taken, and drops the line when told. */
export class ByteServer {
  port = 0;
  #server: Server | undefined;
  #socket: Socket | undefined;
  #connected: (() => void) | undefined;

  async listen(): Promise<void> {
    this.#server = createServer((socket) => {
      socket.on("error", () => {}); // a killed taker resets the line
      this.#socket = socket;
      this.#connected?.();
    });
    this.#server.listen(0, "127.0.0.1");
    await once(this.#server, "listening");
    this.port = (this.#server.address() as { port: number }).port; // a listening TCP server has no other form of address
  }

  /** Resolves when a taker is there. */
  async connected(): Promise<void> {
    if (this.#socket !== undefined && !this.#socket.destroyed) return;
    await new Promise<void>((resolve) => {
      this.#connected = resolve;
    });
  }

  /** Resolves when the system has taken the bytes; answers whether they could be sent at all. */
  async send(bytes: Uint8Array): Promise<boolean> {
    const socket = this.#socket;
    if (socket === undefined || socket.destroyed) return false;
    if (!socket.write(bytes)) await drainedOrClosed(socket);
    return !socket.destroyed;
  }

  /** Ends the line once everything sent has gone. */
  async drop(): Promise<void> {
    const socket = this.#socket;
    this.#socket = undefined;
    if (socket === undefined || socket.destroyed) return;
    socket.end();
    await once(socket, "close");
  }

  async close(): Promise<void> {
    this.#socket?.destroy();
    await new Promise((resolve) => this.#server?.close(resolve));
  }
}
