import { AppError } from "../../app/contract/result.ts";
import { type PersonFacts, rolesCount } from "../../app/people/keepers.ts";
import { askedEachTime, may, type Right } from "../../app/people/rights.ts";
import type { Db } from "../store/db.ts";
import { type OperatorRecord, operatorList } from "../store/records/operators.ts";
import { isPin } from "./pinHash.ts";
import { refusals } from "./refusals.ts";
import { WrongTries } from "./WrongTries.ts";

export type PeopleOptions = {
  readonly db: Db;
  /** Whom the tag of the series in work names. */
  readonly tagged: () => string | undefined;
  /** A clock that never goes back. */
  readonly monotonicMs: () => number;
};

/** After so long the one on shift is asked for again. */
const SHIFT_MS = 12 * 3_600_000;
/** A right PIN holds so long after the person's last act. */
const HOLDS_MS = 10 * 60_000;
/** Who says yes to one act has so long to let it follow. */
const ONE_ACT_MS = 60_000;

/**
 * Who may do what. Protection against slips, not against whoever owns the PC: everything it knows lies in files of that
 * user. While nobody keeps the works' people, it lets everything pass.
 */
export class People {
  readonly #options: PeopleOptions;
  readonly #tries: WrongTries;
  #shift: { readonly operatorId: string; readonly sinceMs: number } | undefined;
  /** By operator and right: until when the PIN need not be given again. */
  readonly #holds = new Map<string, number>();
  readonly #oneAct = new Map<Right, { readonly operatorId: string; readonly untilMs: number }>();

  constructor(options: PeopleOptions) {
    this.#options = options;
    this.#tries = new WrongTries(options.monotonicMs);
  }

  /** Somebody was chosen in the tag: the shift begins, or ends. */
  begin(operatorId: string | undefined): void {
    if (operatorId !== this.#shift?.operatorId) this.#holds.clear();
    this.#shift = operatorId === undefined ? undefined : { operatorId, sinceMs: this.#options.monotonicMs() };
  }

  /**
   * Whose act it is.
   * @param named  whom the call itself names
   * @returns  undefined: nobody is chosen, and nobody has to be
   * @throws AppError  with `asks`: who, whose role or whose PIN is wanted
   */
  actor(right: Right, named: string | undefined): string | undefined {
    const people = operatorList(this.#options.db);
    const tagged = this.#options.tagged();
    if (!rolesCount(people.map(factsOf))) return named ?? tagged;
    const forOne = this.#forOneAct(right);
    // A check is filed under the name in its tag: nobody stands in there.
    const whose = right === "accept" ? (named ?? this.#onShift(tagged)) : (forOne ?? named ?? this.#onShift(tagged));
    const person = people.find((one) => one.operatorId === whose && one.state === "inUse");
    if (person === undefined) throw refusals.who(right);
    if (!may(person.role, right)) throw refusals.role(right, person.role);
    if (person.person?.pin !== undefined && forOne !== whose && !this.#held(person.operatorId, right))
      throw refusals.pin(right, person.operatorId);
    this.#oneAct.delete(right);
    this.#hold(person.operatorId, right);
    return person.operatorId;
  }

  /** A person says yes to the next act of a kind, with the PIN where one is set. @throws AppError */
  async confirm(operatorId: string, right: Right, pin: string | undefined): Promise<void> {
    const person = this.#find(operatorId);
    if (!may(person.role, right)) throw refusals.role(right, person.role);
    await this.checkPin(person, pin);
    this.#oneAct.set(right, { operatorId, untilMs: this.#options.monotonicMs() + ONE_ACT_MS });
    this.#hold(operatorId, right, true);
  }

  /** @throws AppError  wrong, missing, or too many tries; nothing where the person has no PIN */
  async checkPin({ operatorId, person }: OperatorRecord, pin: string | undefined): Promise<void> {
    if (person?.pin === undefined) return;
    const waitMs = this.#tries.waitMs(operatorId);
    if (waitMs > 0) throw refusals.wait(waitMs);
    this.#tries.tried(operatorId);
    if (pin === undefined || !(await isPin(pin, person.pin))) throw refusals.wrongPin();
    this.#tries.forget(operatorId);
  }

  /** The PIN was changed or taken away: what was given before holds no longer. */
  forget(operatorId: string): void {
    this.#tries.forget(operatorId);
    for (const key of this.#holds.keys()) if (key.startsWith(operatorId)) this.#holds.delete(key);
    for (const [right, one] of this.#oneAct) if (one.operatorId === operatorId) this.#oneAct.delete(right);
  }

  #find(operatorId: string): OperatorRecord {
    const found = operatorList(this.#options.db).find((one) => one.operatorId === operatorId);
    if (found?.state !== "inUse")
      throw new AppError("notFound", "This person is not on the list any more.", { key: "people.gone" });
    return found;
  }

  /** The tag keeps a name over nights and restarts; who it is, is asked again at the next act. */
  #onShift(tagged: string | undefined): string | undefined {
    const shift = this.#shift;
    if (shift === undefined || shift.operatorId !== tagged) return undefined;
    return this.#options.monotonicMs() - shift.sinceMs < SHIFT_MS ? tagged : undefined;
  }

  #forOneAct(right: Right): string | undefined {
    const one = this.#oneAct.get(right);
    return one !== undefined && this.#options.monotonicMs() < one.untilMs ? one.operatorId : undefined;
  }

  #held(operatorId: string, right: Right): boolean {
    return this.#options.monotonicMs() < (this.#holds.get(`${operatorId} ${right}`) ?? 0);
  }

  /** From a right PIN on, each act keeps it for a while longer. */
  #hold(operatorId: string, right: Right, given = false): void {
    if (askedEachTime.has(right) || (!given && !this.#held(operatorId, right))) return;
    this.#holds.set(`${operatorId} ${right}`, this.#options.monotonicMs() + HOLDS_MS);
  }
}

export const factsOf = ({ operatorId, role, state, person }: OperatorRecord): PersonFacts => ({
  operatorId,
  role,
  state,
  named: person !== undefined,
});
