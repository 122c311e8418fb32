import { once } from "node:events";
import { createServer } from "node:net";
import { createInterface } from "node:readline";
import type { Readable, Writable } from "node:stream";
import type { Control } from "./Control.ts";

/** Reads command lines and answers each with one line of JSON, in order; resolves at the end of the input. */
export async function serveCommands(control: Control, input: Readable, output: Writable): Promise<void> {
  for await (const line of createInterface({ input })) {
    if (line.trim() === "") continue;
    const reply = await control.run(line);
    output.write(`${JSON.stringify(reply)}\n`);
  }
}

/** The same on a TCP port of this machine; answers the port's number. It keeps no program running. */
export async function openControlPort(control: Control, port: number): Promise<number> {
  const server = createServer((socket) => {
    socket.on("error", () => {}); // the end of the lines follows
    serveCommands(control, socket, socket).catch(() => socket.destroy());
    socket.unref();
  });
  server.listen(port, "127.0.0.1").unref();
  await once(server, "listening");
  return (server.address() as { port: number }).port; // a listening TCP server has no other form of address
}
