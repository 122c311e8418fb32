import type { Role } from "./rights.ts";

/** Of a person what rights hang on. */
export type PersonFacts = {
  readonly operatorId: string;
  readonly role: Role;
  readonly state: "inUse" | "retired";
  /** Whether a name is kept here: who came with records taken over from elsewhere has none, and no say. */
  readonly named: boolean;
};

export const isKeeper = (one: PersonFacts): boolean => one.role === "keeper" && one.state === "inUse" && one.named;

/** Roles count from the first keeper on; before, one person is everything. */
export const rolesCount = (people: readonly PersonFacts[]): boolean => people.some(isKeeper);

/** Whether nobody could hand out rights any more without this person. */
export function isLastKeeper(people: readonly PersonFacts[], operatorId: string): boolean {
  const keepers = people.filter(isKeeper);
  return keepers.length === 1 && keepers[0]!.operatorId === operatorId;
}
