import type { Handlers, Parsed } from "../../app/contract/methods.ts";
import type { OperatorView } from "../../app/contract/recordViews.ts";
import { AppError } from "../../app/contract/result.ts";
import { isLastKeeper, rolesCount } from "../../app/people/keepers.ts";
import type { By } from "../people/guarded.ts";
import { factsOf } from "../people/People.ts";
import { hashPin } from "../people/pinHash.ts";
import {
  erasePerson,
  type OperatorRecord,
  operatorList,
  type Person,
  putPerson,
  readOperator,
} from "../store/records/operators.ts";
import type { EntryDraft } from "../store/Store.ts";
import type { Context } from "./Context.ts";
import { readSettings } from "./program.ts";
import { toOperatorView } from "./rows.ts";

type Part = Pick<Handlers, "operators.list" | "operators.save" | "people.confirm" | "people.setPin" | "people.hide">;

/** People: names, roles, PINs. The ledger gets what was done, under numbers; names and PINs stay outside it. */
export function peopleHandlers(context: Context): Part {
  const { store, hub, people } = context;
  const byInitials = () => readSettings(context).initials;
  const shown = (operatorId: string): OperatorView => toOperatorView(readOperator(store.db, operatorId)!, byInitials()); // just found or filed

  const changed = (operatorId: string): OperatorView => {
    hub.say("register.changed", { what: "operators" });
    context.series.refresh();
    return shown(operatorId);
  };

  const found = (operatorId: string): OperatorRecord => {
    const operator = readOperator(store.db, operatorId);
    if (operator === undefined)
      throw new AppError("notFound", "This person is not on the list any more.", { key: "people.gone" });
    return operator;
  };

  const refuseLastKeeper = (operatorId: string): void => {
    if (isLastKeeper(operatorList(store.db).map(factsOf), operatorId))
      throw new AppError(
        "refused",
        "This is the last keeper; without one nobody could give rights or reset a PIN. Make somebody else a keeper first.",
        { key: "people.lastKeeper" },
      );
  };

  const save = ({ name, initials, ...input }: Parsed<"operators.save">, by?: By): OperatorView => {
    const operatorId = input.operatorId ?? store.newId();
    const before = readOperator(store.db, operatorId);
    if (before !== undefined && (input.role !== "keeper" || input.state !== "inUse")) refuseLastKeeper(operatorId);
    const pin = before?.person?.pin;
    const person: Person = { operatorId, name, initials: initials ?? initialsOf(name), pin };
    store.append(
      [{ kind: "operator", body: { ...input, operatorId } }, ...roleActs(operatorId, before?.role, input.role, by)],
      { alsoInTransaction: (db) => putPerson(db, person) },
    );
    return changed(operatorId);
  };

  const setPin = async ({ operatorId, pin, oldPin }: Parsed<"people.setPin">, by?: By): Promise<OperatorView> => {
    const operator = found(operatorId);
    const { person } = operator;
    if (person === undefined)
      throw new AppError("refused", "Without a name there is no PIN. Give this person a name first.", {
        key: "people.noName",
      });
    if (pin !== null && !rolesCount(operatorList(store.db).map(factsOf)))
      throw new AppError(
        "refused",
        "A PIN needs a keeper who can reset it when it is forgotten. Give one person the role keeper first.",
        { key: "people.needsKeeper" },
      );
    if (oldPin !== undefined) await people.checkPin(operator, oldPin);
    const hash = pin === null ? undefined : await hashPin(pin);
    const own = oldPin !== undefined || by?.operatorId === operatorId;
    const done = pin === null ? "taken away" : person.pin === undefined ? "set" : "changed";
    const detail = `${operatorId}: ${done}${own ? "" : " by a keeper"}`;
    const doer = oldPin !== undefined ? operatorId : (by?.operatorId ?? null);
    store.append([{ kind: "act", body: { what: "pinSet", detail, operatorId: doer } }], {
      alsoInTransaction: (db) => putPerson(db, { ...person, pin: hash }),
    });
    people.forget(operatorId);
    return changed(operatorId);
  };

  const hide = ({ operatorId, how }: Parsed<"people.hide">, by?: By): OperatorView => {
    const { person } = found(operatorId);
    if (how === "erase") refuseLastKeeper(operatorId);
    if (person === undefined) return shown(operatorId);
    const detail = `${operatorId}: ${how === "erase" ? "erased" : "replaced by initials"}`;
    const doer = by?.operatorId ?? null;
    store.erasing(() =>
      store.append([{ kind: "act", body: { what: "nameErased", detail, operatorId: doer } }], {
        alsoInTransaction: (db) => {
          if (how === "erase") erasePerson(db, operatorId);
          else putPerson(db, { ...person, name: person.initials });
        },
      }),
    );
    if (how === "erase") people.forget(operatorId);
    return changed(operatorId);
  };

  return {
    "operators.list": () => {
      const initials = byInitials();
      return operatorList(store.db).map((one) => toOperatorView(one, initials));
    },
    "operators.save": save,
    "people.confirm": async ({ operatorId, right, pin }) => {
      await people.confirm(operatorId, right, pin);
      return { done: true };
    },
    "people.setPin": setPin,
    "people.hide": hide,
  };
}

/** A role that was changed, or a first one above measuring, is an act of its own. */
function roleActs(operatorId: string, before: string | undefined, after: string, by: By | undefined): EntryDraft[] {
  if (before === after || (before === undefined && after === "technician")) return [];
  const detail = `${operatorId}: ${before ?? "new"} to ${after}`;
  return [{ kind: "act", body: { what: "roleChanged", detail, operatorId: by?.operatorId ?? null } }];
}

/** First letters of the first and last word of a name: what is shown when names are hidden. */
function initialsOf(name: string): string {
  const words = name.trim().split(/\s+/);
  return [...new Set([words[0], words.at(-1)])]
    .map((word) => [...(word ?? "")][0] ?? "")
    .join("")
    .toLocaleUpperCase();
}
