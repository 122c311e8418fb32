import { connect, type Socket } from "node:net";
import type { ByteSink, ByteSource } from "./ByteSource.ts";
import { LinkError } from "./LinkProblem.ts";

export type TcpOptions = {
  readonly host: string;
  readonly port: number;
  /** How long a connection may take; default 5 s. */
  readonly timeoutMs?: number | undefined;
  /** What to call it; default host and port. */
  readonly label?: string | undefined;
};

/**
 * Bytes from a TCP port: a serial device server, or the simulated gauge. Keep-alive probes are on, because
 * a device server that loses its power says nothing; the session's own watchdog is quicker.
 */
export function tcpSource(options: TcpOptions): ByteSource {
  const name = `${options.host}:${options.port}`;
  const label = options.label ?? name;
  let socket: Socket | undefined;
  let closed = false;

  return {
    label,
    open(sink) {
      if (socket !== undefined) throw new Error("a byte source is opened once");
      const opened = connect({
        host: options.host,
        port: options.port,
        noDelay: true,
        keepAlive: true,
        keepAliveInitialDelay: 5_000,
      });
      socket = opened;
      return waitForConnection(opened, name, options.timeoutMs ?? 5_000, () => closed).then(() => {
        listen(opened, name, sink, () => closed);
      });
    },
    write(bytes) {
      return new Promise((resolve, reject) => {
        if (socket === undefined || closed) reject(new LinkError("portGone", `${name} is not connected`));
        else socket.write(Uint8Array.from(bytes), (cause) => (cause ? reject(problemOf(cause, name)) : resolve()));
      });
    },
    async close() {
      closed = true;
      socket?.destroy();
    },
  };
}

function waitForConnection(socket: Socket, name: string, timeoutMs: number, isClosed: () => boolean): Promise<void> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => {
      reject(
        new LinkError("timeout", `${name} did not answer within ${timeoutMs / 1000} s; check address, cable and power`),
      );
      socket.destroy();
    }, timeoutMs);
    // Stays on for the socket's life: an error without a listener would end the program. 'close' follows and tells.
    socket.on("error", (cause) => reject(problemOf(cause, name)));
    socket.once("connect", () => {
      clearTimeout(timer);
      if (!isClosed()) resolve();
    });
    socket.once("close", () => {
      clearTimeout(timer);
      reject(new LinkError("aborted", `connecting to ${name} was called off`));
    });
  });
}

function listen(socket: Socket, name: string, sink: ByteSink, isClosed: () => boolean): void {
  socket.on("data", (chunk) => {
    if (!isClosed()) sink.onBytes(chunk);
  });
  socket.once("close", () => {
    if (!isClosed()) sink.onClosed({ code: "portGone", message: `${name} has closed the connection` });
  });
}

function problemOf(cause: NodeJS.ErrnoException, name: string): LinkError {
  switch (cause.code) {
    case "ECONNREFUSED":
      return new LinkError(
        "refused",
        `${name} refuses the connection; check the port number, and whether another program is connected`,
        cause,
      );
    case "ENOTFOUND":
    case "EAI_AGAIN":
      return new LinkError("hostUnknown", `${name}: there is no such host on this network; check the address`, cause);
    case "ETIMEDOUT":
    case "EHOSTUNREACH":
    case "ENETUNREACH":
      return new LinkError("timeout", `${name} cannot be reached; check address, cable and power`, cause);
    default:
      return new LinkError("linkFault", `${name}: the connection failed (${cause.code ?? cause.message})`, cause);
  }
}
