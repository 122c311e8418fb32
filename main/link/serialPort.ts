import type { SerialPort } from "serialport";
import type { SerialSetting } from "../../app/contract/linkViews.ts";
import type { ByteSink, ByteSource } from "./ByteSource.ts";
import { LinkError } from "./LinkProblem.ts";
import { serialProblem } from "./serialProblem.ts";
import { vanishWatch } from "./vanishWatch.ts";

export type SerialOptions = {
  readonly path: string;
  readonly setting: SerialSetting;
  readonly label?: string | undefined;
  /** The driver to use; absent: the system's. A test hands in one of its own. */
  readonly binding?: SerialBinding | undefined;
};

/** A port as the driver lists it. Only the path is sure. */
export type DriverPort = {
  readonly path: string;
  readonly manufacturer?: string | undefined;
  readonly serialNumber?: string | undefined;
  readonly pnpId?: string | undefined;
  readonly vendorId?: string | undefined;
  readonly productId?: string | undefined;
  readonly friendlyName?: string | undefined;
};

/** The driver's two doors; what an open port can do is the driver's own affair. */
export type SerialBinding = {
  list(): Promise<readonly DriverPort[]>;
  open(options: never): Promise<unknown>;
};

/** Bytes from a serial port. A port that vanishes ends the source with `portGone`. */
export function serialSource(options: SerialOptions): ByteSource {
  const { path } = options;
  let port: SerialPort | undefined;
  let opened = false;
  let closed = false;
  let stopWatching = () => {};

  return {
    label: options.label ?? path,
    async open(sink) {
      if (opened) throw new Error("a byte source is opened once");
      opened = true;
      const made = await makePort(options);
      await new Promise<void>((resolve, reject) => made.open((cause) => (cause ? reject(cause) : resolve()))).catch(
        async (cause: Error) => {
          throw await serialProblem(cause, path);
        },
      );
      port = made;
      if (closed) {
        await closePort(made);
        throw new LinkError("aborted", `opening ${path} was called off`);
      }
      stopWatching = listen(made, path, sink, () => closed, options.binding === undefined);
    },
    write(bytes) {
      return new Promise((resolve, reject) => {
        if (port === undefined || closed) reject(new LinkError("portGone", `${path} is not open`));
        else port.write(Buffer.from(bytes), (cause) => (cause ? serialProblem(cause, path).then(reject) : resolve()));
      });
    },
    async close() {
      if (closed) return;
      closed = true;
      stopWatching();
      if (port !== undefined) await closePort(port);
    },
  };
}

/** The ports the system's driver knows. @throws LinkError `driverMissing`, or the driver's own error */
export async function driverPorts(): Promise<readonly DriverPort[]> {
  return (await loadDriver()).SerialPort.list();
}

/** Loaded when first needed: without a driver for this machine everything but serial ports still works. */
async function loadDriver(): Promise<typeof import("serialport")> {
  try {
    return await import("serialport");
  } catch (cause) {
    throw new LinkError(
      "driverMissing",
      "the serial driver cannot be loaded on this machine; a gauge can still be read over the network or from a file",
      cause,
    );
  }
}

async function makePort({ path, setting, binding }: SerialOptions): Promise<SerialPort> {
  const { SerialPort } = await loadDriver();
  const line = {
    path,
    baudRate: setting.baud,
    dataBits: setting.dataBits,
    parity: setting.parity,
    stopBits: setting.stopBits,
  };
  // Typed for the system's own driver only; the class takes any that has the two doors.
  const driver = binding === undefined ? {} : ({ binding } as object);
  const port = new SerialPort({ ...line, ...driver, autoOpen: false, lock: true });
  port.on("error", () => {}); // each call reports its own; an error without a listener would end the program
  return port;
}

/** Answers how to stop watching. */
function listen(
  port: SerialPort,
  path: string,
  sink: ByteSink,
  isClosed: () => boolean,
  hasNode: boolean, // a driver handed in has none
): () => void {
  let over = false;
  const end = () => {
    if (over) return;
    over = true;
    callOff();
    void closePort(port);
    if (!isClosed()) sink.onClosed({ code: "portGone", message: `${path} has gone: check plug and cable` });
  };
  port.on("data", (chunk: Buffer) => {
    if (!over && !isClosed() && chunk.length > 0) sink.onBytes(chunk);
  });
  port.on("close", end);
  port.on("end", end);
  const callOff = hasNode ? vanishWatch(path, end) : () => {};
  return callOff;
}

function closePort(port: SerialPort): Promise<void> {
  return new Promise((resolve) => {
    if (!port.isOpen || port.closing) resolve();
    else port.close(() => resolve()); // a port that vanished meanwhile is closed too
  });
}
