/**
 * Reads the fields of a table that a laboratory may have corrected by hand: every field must be there and sensible,
 * a field too many is refused, since it is mostly a misspelt one.
 * @throws RangeError  says which field of which table, in words for the user
 */
export function tableFields(
  value: unknown,
  table: string,
  fields: readonly string[],
): Readonly<Record<string, unknown>> {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    throw new RangeError(`${table}: a table is a JSON object`);
  const record = value as Readonly<Record<string, unknown>>; // an object, as the line above has shown
  for (const field of fields)
    if (!Object.hasOwn(record, field)) throw new RangeError(`${table}: the field "${field}" is missing`);
  for (const field of Object.keys(record))
    if (!fields.includes(field)) throw new RangeError(`${table}: there is no field "${field}"`);
  return record;
}

/** A number above zero. */
export function positiveField(record: Readonly<Record<string, unknown>>, table: string, field: string): number {
  const value = record[field];
  if (typeof value !== "number" || !(value > 0 && Number.isFinite(value))) {
    throw new RangeError(`${table}: "${field}" must be a number above zero, got ${JSON.stringify(value)}`);
  }
  return value;
}

export function textField(record: Readonly<Record<string, unknown>>, table: string, field: string): string {
  const value = record[field];
  if (typeof value !== "string" || value === "")
    throw new RangeError(`${table}: "${field}" must be a text, got ${JSON.stringify(value)}`);
  return value;
}

export function flagField(record: Readonly<Record<string, unknown>>, table: string, field: string): boolean {
  const value = record[field];
  if (typeof value !== "boolean")
    throw new RangeError(`${table}: "${field}" must be true or false, got ${JSON.stringify(value)}`);
  return value;
}
