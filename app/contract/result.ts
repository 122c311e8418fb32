/**
 * Every fault that crosses the border, as a closed list. The message says in plain words what happened,
 * what is safe and what to do; causes go to the log.
 */
export type ErrorCode =
  | "badRequest" // the call itself is wrong: a fault of the page
  | "invalid" // what the user entered cannot be right
  | "notFound"
  | "conflict" // somebody or something else was first
  | "refused" // the program will not do this now, and says why
  | "link" // port, cable, gauge
  | "diskFull"
  | "readOnly"
  | "damaged"
  | "internal";

export type Failure = {
  readonly code: ErrorCode;
  readonly message: string;
  /** Which words the page may put in the place of `message`, in its own language. */
  readonly key?: string | undefined;
  /** The field of the input it is about, as a path. */
  readonly field?: string | undefined;
};

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Failure };

/** A fault meant for the operator. Anything else that is thrown becomes `internal`. */
export class AppError extends Error {
  override name = "AppError";
  readonly code: ErrorCode;
  readonly key: string | undefined;
  readonly field: string | undefined;
  constructor(code: ErrorCode, message: string, more: { key?: string; field?: string; cause?: unknown } = {}) {
    super(message, more.cause === undefined ? undefined : { cause: more.cause });
    this.code = code;
    this.key = more.key;
    this.field = more.field;
  }
}
