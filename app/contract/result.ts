import type { Right } from "../people/rights.ts";

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
  /** Figures that the words of the key name, by their place holders. */
  readonly figures?: Readonly<Record<string, number>> | undefined;
  /** The field of the input it is about, as a path. */
  readonly field?: string | undefined;
  /** What would let it pass: asked of the people there, then called again. */
  readonly asks?: Asked | undefined;
};

/** Whose name, role or PIN an act needs. */
export type Asked =
  | { readonly what: "who" | "role"; readonly right: Right }
  | { readonly what: "pin"; readonly right: Right; readonly operatorId: string };

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: Failure };

/** A fault meant for the operator. Anything else that is thrown becomes `internal`. */
export class AppError extends Error {
  override name = "AppError";
  readonly code: ErrorCode;
  readonly key: string | undefined;
  readonly figures: Failure["figures"];
  readonly field: string | undefined;
  readonly asks: Asked | undefined;
  constructor(
    code: ErrorCode,
    message: string,
    more: {
      key?: string;
      figures?: Readonly<Record<string, number>>;
      field?: string;
      asks?: Asked;
      cause?: unknown;
    } = {},
  ) {
    super(message, more.cause === undefined ? undefined : { cause: more.cause });
    this.code = code;
    this.key = more.key;
    this.figures = more.figures;
    this.field = more.field;
    this.asks = more.asks;
  }
}
