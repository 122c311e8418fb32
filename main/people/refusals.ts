import { AppError } from "../../app/contract/result.ts";
import { type Right, type Role, rights } from "../../app/people/rights.ts";

const acts: Readonly<Record<Right, string>> = {
  accept: "Filing a check",
  void: "Taking a filed check out of the count",
  limits: "Changing what checks are judged by",
  releaseStop: "Releasing a stop",
  proof: "Filing a proof, or changing what readings are corrected by",
  restore: "Putting other records in place, or taking them over",
  people: "Changing people, roles and PINs",
};

const either = (right: Right) => new Intl.ListFormat("en", { type: "disjunction" }).format(rights[right]);

/** What is answered when an act is not this person's, or nobody knows whose it is. Nothing was done each time. */
export const refusals = {
  who: (right: Right) =>
    new AppError("refused", `${acts[right]} needs a name. Choose who is on shift, then do it again.`, {
      key: "people.who",
      asks: { what: "who", right },
    }),
  role: (right: Right, role: Role) =>
    new AppError("refused", `${acts[right]} is for a ${either(right)}, not for a ${role}. Ask one of them to do it.`, {
      key: "people.role",
      asks: { what: "role", right },
    }),
  pin: (right: Right, operatorId: string) =>
    new AppError("refused", `${acts[right]} needs this person's PIN.`, {
      key: "people.pin",
      asks: { what: "pin", right, operatorId },
    }),
  wrongPin: () =>
    new AppError("refused", "This is not the PIN. Try again, or let a keeper reset it.", { key: "people.wrongPin" }),
  wait: (waitMs: number) => {
    const seconds = Math.ceil(waitMs / 1000);
    return new AppError("refused", `Too many wrong PINs. Wait ${seconds} seconds, or let a keeper reset it.`, {
      key: "people.wait",
      figures: { seconds },
    });
  },
};
