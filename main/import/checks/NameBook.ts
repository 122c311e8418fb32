import type { NameAnswer, NamedThing, UnknownName } from "../../../app/contract/importViews.ts";
import type { Db } from "../../store/db.ts";
import { operatorList } from "../../store/records/operators.ts";
import { registered } from "../../store/records/register.ts";
import { plainLabel } from "../Twins.ts";

/** So many unknown names are told. */
const TOLD = 5_000;

/** What a name in the file stands for: an id of the register, or what was said of it; undefined: nobody knows yet. */
export type Meaning = NameAnswer["to"] | undefined;

/** Reads the names of spindles, tools and people in a file by the register and by what the user said about the others. */
export class NameBook {
  readonly #known: Readonly<Record<NamedThing, ReadonlyMap<string, string>>>;
  readonly #answers: ReadonlyMap<string, NameAnswer["to"]>;
  readonly #unknown = new Map<string, { readonly thing: NamedThing; readonly name: string; rows: number }>();

  constructor(known: NameBook["known"], answers: readonly NameAnswer[]) {
    this.#known = known;
    this.#answers = new Map(answers.map(({ thing, name, to }) => [keyOf(thing, name), to]));
  }

  get known(): Readonly<Record<NamedThing, ReadonlyMap<string, string>>> {
    return this.#known;
  }

  find(thing: NamedThing, name: string): Meaning {
    const answer = this.#answers.get(keyOf(thing, name));
    const known = this.#known[thing].get(plainLabel(name));
    if (answer === undefined && known !== undefined) return known;
    this.#note(thing, name);
    return answer;
  }

  /** Names that the register does not know: spindles first, which have to be settled, then most rows first. */
  unknown(): UnknownName[] {
    const order = (one: { readonly thing: NamedThing }) => Number(one.thing !== "spindle");
    const all = [...this.#unknown.values()].sort((a, b) => order(a) - order(b) || b.rows - a.rows).slice(0, TOLD);
    return all.map((one) => ({ ...one, to: this.#answers.get(keyOf(one.thing, one.name)) }));
  }

  #note(thing: NamedThing, name: string): void {
    const key = keyOf(thing, name);
    const there = this.#unknown.get(key);
    if (there === undefined) this.#unknown.set(key, { thing, name: name.trim().slice(0, 200), rows: 1 });
    else there.rows += 1;
  }
}

const keyOf = (thing: NamedThing, name: string) => `${thing} ${plainLabel(name.trim().slice(0, 200))}`;

/** Every name and serial number of the register, by how it is compared; of two the same, the one in use holds. */
export function knownNames(db: Db): NameBook["known"] {
  const spindles = registered(db, "spindle");
  const machines = Map.groupBy(spindles, (s) => plainLabel(s.machine));
  const alone = [...machines].flatMap(([machine, those]) =>
    those.length === 1 ? [{ ...those[0]!, name: machine }] : [],
  );
  const tools = (kind: "adapter" | "gauge") =>
    registered(db, kind).flatMap((tool) => {
      const id = "adapterId" in tool ? tool.adapterId : tool.gaugeId;
      return [tool.serial ?? "", tool.name].map((name) => ({ id, name, state: tool.state }));
    });
  const people = operatorList(db).flatMap(({ operatorId: id, state, person }) =>
    [person?.initials ?? "", person?.name ?? ""].map((name) => ({ id, name, state })),
  );
  const places = [...alone, ...spindles].map(({ spindleId: id, name, state }) => ({ id, name, state }));
  return {
    spindle: byName(places),
    adapter: byName(tools("adapter")),
    gauge: byName(tools("gauge")),
    operator: byName(people),
  };
}

type Named = { readonly id: string; readonly name: string; readonly state: "inUse" | "retired" };

/** Later ones hold: names go before serial numbers and machines, what is in use before what is retired. */
function byName(all: readonly Named[]): Map<string, string> {
  const inOrder = [...all.filter((one) => one.state === "retired"), ...all.filter((one) => one.state === "inUse")];
  return new Map(inOrder.filter(({ name }) => name !== "").map(({ id, name }) => [plainLabel(name), id]));
}
