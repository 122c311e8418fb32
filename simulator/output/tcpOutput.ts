import { once } from "node:events";
import { createServer, type Server, type Socket } from "node:net";
import { drainedOrClosed } from "./drainedOrClosed.ts";
import type { Output, Received } from "./Output.ts";

/**
 * The gauge on a TCP port of this machine, as a serial device server shows one. A second taker puts the first
 * off the line. Bytes nobody takes are lost.
 * @param port  0: any free one; it stays the same over unplugging
 */
export async function tcpOutput(port: number, received: Received): Promise<Output> {
  let socket: Socket | undefined;
  const accept = (taker: Socket) => {
    socket?.destroy();
    socket = taker;
    taker.setNoDelay(true);
    taker.on("data", received);
    taker.on("error", () => {}); // 'close' follows
    taker.on("close", () => {
      if (socket === taker) socket = undefined;
    });
  };
  let server: Server | undefined = await listenOn(port, accept);
  const { port: chosen } = server.address() as { port: number }; // a listening TCP server has no other form of address
  const unplug = async () => {
    socket?.destroy();
    socket = undefined;
    const open = server;
    server = undefined;
    if (open !== undefined) await new Promise((resolve) => open.close(resolve));
  };
  return {
    address: { kind: "tcp", host: "127.0.0.1", port: chosen },
    get taken() {
      return socket !== undefined;
    },
    send: (bytes) => socket === undefined || socket.write(bytes),
    async drained() {
      const taker = socket;
      if (taker?.writableNeedDrain) await drainedOrClosed(taker);
    },
    unplug,
    async plug() {
      server ??= await listenOn(chosen, accept);
    },
    close: unplug,
  };
}

async function listenOn(port: number, accept: (socket: Socket) => void): Promise<Server> {
  const server = createServer(accept);
  server.listen(port, "127.0.0.1");
  await once(server, "listening");
  return server;
}
