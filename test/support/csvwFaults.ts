/**
 * What stands against a description of tables, by the W3C Recommendation "Metadata Vocabulary for Tabular Data" (2015):
 * sections 5.3 (groups), 5.4 (tables), 5.5 (schemas), 5.6 (columns), 5.7 (inherited), 5.9 (dialects), 5.11 (datatypes).
 * Names with a colon are common properties, which may stand anywhere (5.8).
 */
export function csvwFaults(document: unknown): string[] {
  const faults: string[] = [];
  const say = (where: string, what: string) => void faults.push(`${where}: ${what}`);
  if (!isObject(document)) return ["no object"];
  const context = Array.isArray(document["@context"]) ? document["@context"][0] : document["@context"];
  if (context !== "http://www.w3.org/ns/csvw") say("document", "another @context");
  if (document.tables === undefined) aboutTable(document, "table", say);
  else {
    known(document, "group", [...anywhere, "@context", "tables", ...ofGroup], say);
    inherited(document, "group", say);
    dialect(document.dialect, "group", say);
    if (!Array.isArray(document.tables) || document.tables.length === 0) say("group", "no tables");
    else for (const [i, table] of document.tables.entries()) aboutTable(table, `table ${i}`, say);
  }
  return faults;
}

type Say = (where: string, what: string) => void;
type Members = Record<string, unknown>;
const isObject = (value: unknown): value is Members =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const anywhere = ["@id", "@type"];
const handedDown = [
  "aboutUrl",
  "datatype",
  "default",
  "lang",
  "null",
  "ordered",
  "propertyUrl",
  "required",
  "separator",
  "textDirection",
  "valueUrl",
];
const ofGroup = ["dialect", "notes", "tableDirection", "tableSchema", "transformations"];
const builtIn = new Set(
  (
    "anyAtomicType anyURI base64Binary boolean date dateTime dateTimeStamp decimal integer long int short byte nonNegativeInteger " +
    "positiveInteger unsignedLong unsignedInt unsignedShort unsignedByte nonPositiveInteger negativeInteger double duration " +
    "dayTimeDuration yearMonthDuration float gDay gMonth gMonthDay gYear gYearMonth hexBinary QName string normalizedString token " +
    "language Name NMTOKEN xml html json time number binary datetime any"
  ).split(" "),
);

function aboutTable(table: unknown, where: string, say: Say): void {
  if (!isObject(table)) {
    say(where, "no object");
    return;
  }
  known(table, where, [...anywhere, "@context", "url", "suppressOutput", ...ofGroup], say);
  inherited(table, where, say);
  dialect(table.dialect, where, say);
  if (typeof table.url !== "string") say(where, "no url");
  const schema = table.tableSchema;
  if (!isObject(schema)) return; // it may stand in a file of its own
  known(schema, `${where}, schema`, [...anywhere, "columns", "foreignKeys", "primaryKey", "rowTitles"], say);
  inherited(schema, `${where}, schema`, say);
  const columns = Array.isArray(schema.columns) ? schema.columns : [];
  const names = columns.flatMap((column) => (isObject(column) && column.name !== undefined ? [column.name] : []));
  if (new Set(names).size !== names.length) say(where, "two columns of one name");
  for (const key of [schema.primaryKey ?? []].flat())
    if (!names.includes(key)) say(where, `no column ${String(key)} for the primary key`);
  for (const [i, column] of columns.entries()) aboutColumn(column, `${where}, column ${i}`, say);
}

function aboutColumn(column: unknown, where: string, say: Say): void {
  if (!isObject(column)) {
    say(where, "no object");
    return;
  }
  known(column, where, [...anywhere, "name", "suppressOutput", "titles", "virtual"], say);
  inherited(column, where, say);
  const { name, titles } = column;
  if (name !== undefined && !(typeof name === "string" && /^(?!_)[\w.%-]+$/.test(name)))
    say(where, "a name that is none");
  const natural = [titles ?? []].flat().every((title) => typeof title === "string");
  if (!natural && !isObject(titles)) say(where, "titles that are none");
}

function inherited({ datatype, separator, required }: Members, where: string, say: Say): void {
  const base = isObject(datatype) ? (datatype.base ?? "string") : (datatype ?? "string");
  if (!builtIn.has(String(base))) say(where, `datatype ${String(base)}`);
  if (separator !== undefined && separator !== null && typeof separator !== "string")
    say(where, "a separator that is none");
  if (required !== undefined && typeof required !== "boolean") say(where, "required is true or false");
}

const booleans = ["doubleQuote", "header", "skipBlankRows", "skipInitialSpace"];
const counts = ["headerRowCount", "skipColumns", "skipRows"];
const texts = ["commentPrefix", "delimiter", "encoding"];

function dialect(value: unknown, where: string, say: Say): void {
  if (value === undefined || typeof value === "string") return;
  if (!isObject(value)) {
    say(where, "a dialect that is none");
    return;
  }
  const has = (names: readonly string[], type: string) => {
    for (const name of names)
      if (value[name] !== undefined && typeof value[name] !== type) say(`${where}, dialect`, name);
  };
  known(
    value,
    `${where}, dialect`,
    [...anywhere, ...booleans, ...counts, ...texts, "lineTerminators", "quoteChar", "trim"],
    say,
    false,
  );
  has(booleans, "boolean");
  has(counts, "number");
  has(texts, "string");
  const { quoteChar, lineTerminators } = value;
  if (quoteChar != null && typeof quoteChar !== "string") say(`${where}, dialect`, "quoteChar");
  if ([lineTerminators ?? []].flat().some((one) => typeof one !== "string"))
    say(`${where}, dialect`, "lineTerminators");
}

function known(members: Members, where: string, names: readonly string[], say: Say, hands = true): void {
  const all = new Set([...names, ...(hands ? handedDown : [])]);
  for (const name of Object.keys(members)) if (!name.includes(":") && !all.has(name)) say(where, `property ${name}`);
}
