import type { Handlers } from "../../../app/contract/methods.ts";
import { AppError } from "../../../app/contract/result.ts";
import type { FakeState } from "../fakeCore.ts";
import { idsFrom } from "./fakeId.ts";

type Names = Exclude<Extract<keyof Handlers, `people.${string}` | `operators.${string}`>, "people.export">;

const newId = idsFrom(95_000);
/** The one PIN that is right here. */
export const FAKE_PIN = "2468";

export function peopleHandlers(state: FakeState): Pick<Handlers, Names> {
  const change = (operatorId: string, over: Partial<FakeState["operators"][number]>) => {
    const at = state.operators.findIndex((one) => one.operatorId === operatorId);
    const operator = { ...state.operators[at]!, ...over };
    state.operators[at] = operator;
    state.say("register.changed", { what: "operators" });
    return operator;
  };
  const wrong = () => new AppError("refused", "This is not the PIN.", { key: "people.wrongPin" });
  return {
    "operators.list": () => state.operators,
    "operators.save": ({ name, initials = name.slice(0, 1), role, state: held, operatorId }) => {
      if (operatorId !== undefined) return change(operatorId, { name, fullName: name, initials, role, state: held });
      const saved = { operatorId: newId(), name, fullName: name, initials, hasPin: false, role, state: held };
      state.operators = [...state.operators, saved];
      state.say("register.changed", { what: "operators" });
      return saved;
    },
    "people.confirm": ({ operatorId, pin }) => {
      const operator = state.operators.find((one) => one.operatorId === operatorId);
      if (operator?.hasPin === true && pin !== FAKE_PIN) throw wrong();
      return { done: true };
    },
    "people.setPin": ({ operatorId, pin, oldPin }) => {
      if (oldPin !== undefined && oldPin !== FAKE_PIN) throw wrong();
      return change(operatorId, { hasPin: pin !== null });
    },
    "people.hide": ({ operatorId, how }) =>
      how === "erase"
        ? change(operatorId, { name: operatorId.slice(-4), fullName: undefined, initials: undefined, hasPin: false })
        : change(operatorId, { name: "O", fullName: "O", initials: "O" }),
  };
}
