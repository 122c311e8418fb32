import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { Control } from "./Control.ts";
import { openControlPort, serveCommands } from "./controlPort.ts";
import { gaugeFrom, memoryFrom, options, playerFrom, referenceFrom } from "./options.ts";
import { fileOutput } from "./output/fileOutput.ts";
import type { Output, Received } from "./output/Output.ts";
import { ptyOutput } from "./output/ptyOutput.ts";
import { tcpOutput } from "./output/tcpOutput.ts";
import { Player } from "./Player.ts";

/**
 * The simulated gauge as a program: lines go to a TCP port, a pseudo-terminal or a file; commands come on standard
 * input (and on a control port), each answered with a line of JSON. The first line printed says where it listens.
 */
async function main(): Promise<void> {
  const { values } = parseArgs({ options, strict: true });
  const gauge = gaugeFrom(values);
  const memory = memoryFrom(values, gauge, Date.now());
  const answer = memory && ((request: string) => memory.answer(request));
  const reference = referenceFrom(values, gauge);
  const playing = { ...playerFrom(values), answer }; // before anything is opened that would keep a refused program alive
  let player: Player | undefined;
  const output = await outputFor(values, (bytes) => player?.received(bytes));
  const second = reference && (await tcpOutput(Number(values.reference), () => {}));
  player = new Player(gauge, output, {
    ...playing,
    second: second && { until: (tS) => reference.until(tS), output: second },
  });
  const control = new Control(gauge, output, player, memory);
  const controlPort = values.control === undefined ? undefined : await openControlPort(control, Number(values.control));
  const say = values.file === "-" ? process.stderr : process.stdout;
  const more = { ...(controlPort === undefined ? {} : { controlPort }), ...(second && { reference: second.address }) };
  say.write(`${JSON.stringify({ ...output.address, ...more })}\n`);
  const commands = serveCommands(control, process.stdin, say);
  // Whoever started it has gone: it must not stay behind.
  if (values["stop-with-input"]) void commands.then(() => player.stop());
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => player.stop());
  await player.run();
  await output.close();
  await second?.close();
  process.stdin.destroy();
}

function outputFor(
  values: { tcp?: string; pty?: boolean | string; file?: string; path?: string },
  received: Received,
): Promise<Output> {
  if (values.file !== undefined) return fileOutput(values.file);
  if (values.pty) return ptyOutput(values.path ?? join(tmpdir(), `holdfast-gauge-${process.pid}`), received);
  return tcpOutput(Number(values.tcp ?? 0), received);
}

main().catch((cause: Error) => {
  process.stderr.write(`simulator: ${cause.message}\n`);
  process.exitCode = cause instanceof RangeError || "code" in cause ? 2 : 1;
  process.stdin.destroy();
});
