import { openStore } from "../store/open.ts";
import { openReader } from "../store/openReader.ts";
import { operatorList, putPerson, readOperator } from "../store/records/operators.ts";
import { StoreError } from "../store/StoreError.ts";
import { type Command, type CommandIo, UsageError } from "./Command.ts";
import { dataFileOf, dataOptions } from "./dataOptions.ts";
import { parseOptions } from "./parseOptions.ts";

/** Who is known to the records; and the way out when the last keeper's PIN is forgotten: whoever owns the PC may take it away. */
export const command: Command = {
  usage:
    "[--data FILE | --demo] [--take-pin NUMBER] [--json]   list people; --take-pin takes a forgotten PIN away, which is filed",
  async run(args, io) {
    const { values } = parseOptions(args, { ...dataOptions, "take-pin": { type: "string" } });
    const path = dataFileOf(values);
    const demo = values.demo === true;
    try {
      if (values["take-pin"] !== undefined) takePin(path, demo, values["take-pin"]);
      list(path, values.json === true, io);
      return 0;
    } catch (cause) {
      throw cause instanceof StoreError ? new UsageError(cause.message) : cause;
    }
  },
};

function list(path: string, json: boolean, io: CommandIo): void {
  const db = openReader(path);
  try {
    const people = operatorList(db).map(({ operatorId, role, state, person }) => ({
      operatorId,
      initials: person?.initials ?? null,
      role,
      state,
      pin: person?.pin !== undefined,
    }));
    io.out(json ? `${JSON.stringify({ people })}\n` : people.map(line).join("") || "Nobody is on the list.\n");
  } finally {
    db.close();
  }
}

type Listed = {
  readonly operatorId: string;
  readonly initials: string | null;
  readonly role: string;
  readonly state: string;
  readonly pin: boolean;
};

const line = ({ operatorId, initials, role, state, pin }: Listed) =>
  `${operatorId}  ${(initials ?? "–").padEnd(8)} ${role}${state === "retired" ? ", retired" : ""}${pin ? ", with PIN" : ""}\n`;

function takePin(path: string, demo: boolean, operatorId: string): void {
  const store = openStore({ path, demo, now: Date.now });
  try {
    const person = readOperator(store.db, operatorId)?.person;
    if (person?.pin === undefined)
      throw new UsageError(`${operatorId} is nobody with a PIN; holdfast people lists the numbers`);
    const detail = `${operatorId}: taken away at the command line`;
    store.append([{ kind: "act", body: { what: "pinSet", detail, operatorId: null } }], {
      alsoInTransaction: (db) => putPerson(db, { ...person, pin: undefined }),
    });
  } finally {
    store.close();
  }
}
