import { z } from "zod";

/** A column of a table: its name, what its cells mean, and where in a record its value stands. */
export type Column = {
  readonly name: string;
  /** A built-in datatype of CSVW. */
  readonly datatype: "string" | "double" | "integer" | "boolean" | "date" | "dateTime" | "json";
  readonly path: readonly string[];
};

/** As much of a JSON Schema as our kinds use. */
type Schema = {
  readonly type?: string | readonly string[];
  readonly format?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly anyOf?: readonly Schema[];
  readonly enum?: readonly unknown[];
  readonly additionalProperties?: unknown;
};

/**
 * The columns of a kind of record, read off its own schema, so that a field added there is never missing here. What
 * is nested becomes `outer_inner`; lists and free forms are one cell of JSON.
 * @param leaveOut  fields that have a table of their own
 */
export function columnsOf(schema: z.ZodType, leaveOut: readonly string[] = []): Column[] {
  const root = z.toJSONSchema(schema, { unrepresentable: "any" }) as Schema; // what zod writes for our objects
  return fieldsOf(root, [], leaveOut);
}

function fieldsOf(schema: Schema, path: readonly string[], leaveOut: readonly string[]): Column[] {
  const named = Object.entries(schema.properties ?? {}).flatMap(([name, field]) =>
    path.length === 0 && leaveOut.includes(name) ? [] : columnsAt(field, [...path, name]),
  );
  const isOpen = schema.additionalProperties !== undefined && schema.additionalProperties !== false;
  return isOpen ? [...named, { name: "body", datatype: "json", path }] : named;
}

function columnsAt(schema: Schema, path: readonly string[]): Column[] {
  const field = schema.anyOf?.length === 2 ? (schema.anyOf.find((one) => one.type !== "null") ?? schema) : schema;
  if (field.properties !== undefined && field.additionalProperties === false) return fieldsOf(field, path, []);
  return [{ name: path.join("_"), datatype: datatypeOf(field), path }];
}

function datatypeOf({ type, format, enum: words }: Schema): Column["datatype"] {
  const only = Array.isArray(type) ? type.find((one) => one !== "null") : type;
  if (only === "number") return "double";
  if (only === "integer" || only === "boolean") return only;
  if (format === "date-time") return "dateTime";
  if (format === "date") return "date";
  return only === "string" || words !== undefined ? "string" : "json";
}

/** The value of a column in a record; undefined where there is none. */
export function valueAt(record: unknown, path: readonly string[]): unknown {
  let value = record;
  for (const name of path) {
    if (value === null || value === undefined) return undefined;
    value = (value as Record<string, unknown>)[name]; // a record its schema has seen
  }
  return value;
}
