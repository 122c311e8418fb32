import { groupHint } from "./groupHint.ts";
import { LinkError } from "./LinkProblem.ts";

/** The driver speaks in the system's words, and only in words; what they mean to the operator stands here. */
const meanings: readonly (readonly [
  RegExp,
  "portUnknown" | "portBusy" | "portForbidden" | "settingRefused" | "portGone",
])[] = [
  [/no such (file|device)|does not exist|file not found|cannot find/i, "portUnknown"],
  [/permission denied|operation not permitted/i, "portForbidden"],
  // Windows says "access denied" when another program has the port.
  [/busy|locked|cannot lock|temporarily unavailable|access (is )?denied/i, "portBusy"],
  [/not a tty|inappropriate ioctl|invalid argument|setting|baud ?rate|parameter/i, "settingRefused"],
  [/no longer|disconnected|input\/output error|not configured|bad file descriptor|port is not open/i, "portGone"],
];

/** What the driver's error means and what to do. */
export async function serialProblem(cause: Error, path: string): Promise<LinkError> {
  const code = meanings.find(([words]) => words.test(cause.message))?.[1];
  switch (code) {
    case "portUnknown":
      return new LinkError(
        code,
        `${path}: there is no such port now; check plug and cable, then list the ports again`,
        cause,
      );
    case "portForbidden":
      return new LinkError(code, `${path} may not be opened: ${await groupHint(path)}`, cause);
    case "portBusy":
      return new LinkError(code, `${path} is held by another program; close that program and try again`, cause);
    case "settingRefused":
      return new LinkError(
        code,
        `${path} does not take this setting (${cause.message}); try another baud rate, data bits or parity`,
        cause,
      );
    case "portGone":
      return new LinkError(code, `${path} has gone: check plug and cable`, cause);
    default:
      return new LinkError("linkFault", `${path} cannot be opened: ${cause.message}`, cause);
  }
}
