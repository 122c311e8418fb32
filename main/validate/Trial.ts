/** What a published check asks for and what came out here. */
export type Trial = {
  /** Which case of the file, in words. */
  readonly name: string;
  readonly source: string;
  readonly expected: number | string;
  readonly got: number | string | undefined;
  /** How far numbers may differ: relative, absolute, or not at all. */
  readonly within?: { readonly relative: number } | { readonly absolute: number };
};

/** A published file as data; each runner knows the form of its own. */
// biome-ignore lint/suspicious/noExplicitAny: data of many forms, read by the one runner that knows it; a wrong form fails its case
export type Published = any;

/** Runs the checks of one published file against the program. */
export type Runner = (data: Published) => Trial[];

/** Whether what came out is what was asked for. */
export function passes({ expected, got, within }: Trial): boolean {
  if (typeof expected === "string" || typeof got !== "number" || within === undefined) return got === expected;
  const off = Math.abs(got - expected);
  return "absolute" in within ? off <= within.absolute : off <= within.relative * Math.abs(expected);
}

/** The source of a file or of one of its cases, in one line. */
export function sourceLine(source: Published): string {
  const one = Array.isArray(source) ? source[0] : source;
  if (one === undefined || typeof one === "string") return String(one ?? "stated in the file");
  return [one.title, one.number ?? one.version, one.section, one.year].filter((part) => part !== undefined).join(", ");
}
