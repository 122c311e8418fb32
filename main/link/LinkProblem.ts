/** What can be wrong between cable and core. A closed list: every screen has words for each. */
export type LinkProblemCode =
  | "portGone" // it was there and went away: unplugged, switched off, driver reset
  | "portUnknown" // no such port on this machine
  | "portBusy" // another program holds it
  | "portForbidden" // it exists and this user may not open it
  | "driverMissing" // the serial driver of the program itself cannot be loaded here
  | "settingRefused" // the device does not take this baud rate, data bits or parity
  | "hostUnknown" // the name of a network host leads nowhere
  | "refused" // the network host answers and refuses
  | "timeout" // nothing answered in time
  | "noAnswer" // the gauge did not answer a request
  | "fileUnreadable"
  | "simulatorFailed"
  | "spoolFailed" // the record on disk cannot be written; measuring goes on without it
  | "aborted"
  | "linkFault"; // none of the above; the message carries the system's own word

/** What happened and what to do, in plain words; `message` stands alone on a screen. */
export type LinkProblem = { readonly code: LinkProblemCode; readonly message: string };

/** A fault of the link, for the operator. Everything a byte source rejects with is one. */
export class LinkError extends Error {
  override name = "LinkError";
  readonly code: LinkProblemCode;
  constructor(code: LinkProblemCode, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
  }
  get problem(): LinkProblem {
    return { code: this.code, message: this.message };
  }
}
