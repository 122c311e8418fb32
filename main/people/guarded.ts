import { type Handlers, type MethodName, methods } from "../../app/contract/methods.ts";
import type { Right } from "../../app/people/rights.ts";
import { type Ground, needs } from "./needs.ts";
import type { People } from "./People.ts";

/** Whose act it is, for a handler that files it. */
export type By = { readonly operatorId: string | undefined };

type AnyHandler = (input: unknown, by: By) => unknown;

/** Puts the question whose act it is before every handler that needs a right; a call that takes a name gets the one found. */
export function guarded(handlers: Handlers, people: People, ground: Ground): Handlers {
  const names = Object.keys(handlers) as MethodName[]; // the handlers' own keys
  return Object.fromEntries(
    names.map((name) => [name, guard(name, handlers[name] as AnyHandler, people, ground)]), // paired by name
  ) as unknown as Handlers;
}

function guard(name: MethodName, handle: AnyHandler, people: People, ground: Ground): AnyHandler {
  const need = needs[name] as Right | ((input: unknown, ground: Ground) => Right | undefined) | undefined; // by name
  if (need === undefined) return handle;
  const takesName = "operatorId" in (methods[name].input as { shape?: object }).shape! && !meansAnother.has(name);
  return (input, _by) => {
    const right = typeof need === "function" ? need(input, ground) : need;
    if (right === undefined) return handle(input, { operatorId: ground.tagged() });
    const named = takesName ? (input as { operatorId?: string | null }).operatorId : undefined;
    const operatorId = people.actor(right, named ?? undefined);
    const whole = takesName && operatorId !== undefined ? { ...(input as object), operatorId } : input;
    return handle(whole, { operatorId });
  };
}

/** Here `operatorId` is whom it is about, not who does it. */
const meansAnother: ReadonlySet<MethodName> = new Set<MethodName>([
  "operators.save",
  "people.hide",
  "people.setPin",
  "people.export",
]);
