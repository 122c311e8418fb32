import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import type { Asked } from "../../../app/contract/result.ts";
import { AppError } from "../../../app/contract/result.ts";
import { fakeOperator } from "../../support/fake/fakeRegister.ts";
import { FAKE_PIN } from "../../support/fake/peopleHandlers.ts";
import { closePage, faults, openPage, type Page, settle, standInBrowser } from "../../support/page.tsx";

const KEEPER = "01900000-0000-7000-8000-00000000aaaa";
const dialog = () => within(screen.getByRole("dialog"));
const pad = async (digits: string) => {
  for (const digit of digits) fireEvent.click(dialog().getByRole("button", { name: digit }));
};
const enter = async () => {
  fireEvent.submit(screen.getByRole("dialog").querySelector("form")!);
  await settle();
};

/** A page whose works has a keeper with a PIN. */
async function staffed(hash: string): Promise<Page> {
  const page = await openPage(hash, { demo: false });
  page.fake.state.operators.push({ ...fakeOperator(KEEPER, "Kay Ashdown", "keeper"), hasPin: true });
  await act(async () => page.fake.say("register.changed", { what: "operators" }));
  await settle();
  return page;
}

/** The next voiding is refused for want of what is asked; then it goes through. */
function refuseOnce(page: Page, asks: Asked): string[] {
  const calls: string[] = [];
  const handle = page.fake.handlers["checks.void"];
  const confirm = page.fake.handlers["people.confirm"];
  let open = false;
  Object.assign(page.fake.handlers, {
    "people.confirm": async (input: Parameters<typeof confirm>[0]) => {
      await confirm(input);
      calls.push(`confirmed ${input.operatorId.slice(-4)} for ${input.right}`);
      open = true;
      return { done: true };
    },
    "checks.void": (input: Parameters<typeof handle>[0]) => {
      if (!open) throw new AppError("refused", "This is for a planner or keeper.", { key: "people.role", asks });
      calls.push("voided");
      return handle(input);
    },
  });
  return calls;
}

async function voidOne(page: Page): Promise<{ answer: unknown }> {
  const held: { answer: unknown } = { answer: "none yet" };
  const checkId = page.fake.state.checks[0]!.checkId;
  await act(async () => {
    void page.core.client.call("checks.void", { checkId, reason: "typed wrong" }).then((result) => {
      held.answer = result.ok;
    });
  });
  await settle();
  return held;
}

describe("an act that is not everybody's", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("asks whose it may be, takes the PIN on the pad, and is then done", async () => {
    const page = await staffed("#/measure");
    const calls = refuseOnce(page, { what: "role", right: "void" });
    const held = await voidOne(page);
    expect(dialog().getByText(/Taking a filed check out of the count is for: planner, calibration lab/)).toBeTruthy();
    expect(dialog().queryByRole("button", { name: /Operator 1/ })).toBeNull(); // a technician may not
    expect(await faults()).toEqual([]);
    fireEvent.click(dialog().getByRole("button", { name: /Kay Ashdown/ }));
    await settle();
    expect(await faults()).toEqual([]);
    await pad("1111");
    await enter();
    expect(dialog().getByText("This is not the PIN.")).toBeTruthy();
    expect(dialog().getByLabelText<HTMLInputElement>("PIN").value).toBe("");
    await pad(`${FAKE_PIN}9`);
    fireEvent.click(dialog().getByRole("button", { name: "Delete the last digit" }));
    await enter();
    expect(screen.queryByRole("dialog")).toBeNull();
    expect(calls).toEqual(["confirmed aaaa for void", "voided"]);
    expect(held.answer).toBe(true);
  });

  it("is done by one without a PIN at a touch", async () => {
    const page = await staffed("#/measure");
    const calls = refuseOnce(page, { what: "role", right: "void" });
    await voidOne(page);
    fireEvent.click(dialog().getByRole("button", { name: /Operator 2/ }));
    await settle();
    expect(calls.at(-1)).toBe("voided");
  });

  it("asks for the PIN alone where it is the person's own act, typed as well as tapped", async () => {
    const page = await staffed("#/measure");
    const calls = refuseOnce(page, { what: "pin", right: "void", operatorId: KEEPER });
    await voidOne(page);
    expect(dialog().getByText("PIN of Kay Ashdown")).toBeTruthy();
    fireEvent.change(dialog().getByLabelText("PIN"), { target: { value: `a${FAKE_PIN}` } });
    await enter();
    expect(calls).toEqual(["confirmed aaaa for void", "voided"]);
  });

  it("comes back refused when nobody answers, and nothing was done", async () => {
    const page = await staffed("#/measure");
    const calls = refuseOnce(page, { what: "role", right: "void" });
    const held = await voidOne(page);
    fireEvent.click(dialog().getByRole("button", { name: "Cancel" }));
    await settle();
    expect(held.answer).toBe(false);
    expect(calls).toEqual([]);
    expect(screen.queryByRole("dialog")).toBeNull();
  });

  it("asks who is on shift, puts the name into the tag, and goes on", async () => {
    const page = await staffed("#/measure");
    const handle = page.fake.handlers["checks.void"];
    const tagged = () => page.fake.state.series.draft.tag.operatorId;
    Object.assign(page.fake.handlers, {
      "checks.void": (input: Parameters<typeof handle>[0]) => {
        if (tagged() === undefined)
          throw new AppError("refused", "A name is needed.", { asks: { what: "who", right: "void" } });
        return handle(input);
      },
    });
    const held = await voidOne(page);
    expect(dialog().getByText("Who is on shift?")).toBeTruthy();
    expect(await faults()).toEqual([]);
    fireEvent.click(dialog().getByRole("button", { name: /Operator 1/ }));
    await settle();
    expect(tagged()).toBe(page.fake.state.operators[0]!.operatorId);
    expect(held.answer).toBe(true);
  });
});

describe("people in Setup", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);
  const section = () => within(screen.getByRole("region", { name: "Operators" }));

  it("says that everybody may do everything while nobody is keeper, and offers no PIN", async () => {
    await openPage("#/setup", { demo: false });
    expect(section().getByText(/Everybody may do everything/)).toBeTruthy();
    expect(section().getByText(/guards against slips/)).toBeTruthy();
    expect(section().queryByRole("button", { name: /PIN/ })).toBeNull();
    fireEvent.click(section().getByRole("button", { name: "Edit: Operator 1" }));
    fireEvent.change(dialog().getByLabelText("Role"), { target: { value: "keeper" } });
    expect(dialog().getByText(/With the first keeper roles begin to count/)).toBeTruthy();
    expect(await faults()).toEqual([]);
  });

  it("sets a PIN, twice the same, and refuses one that is short or not repeated", async () => {
    const page = await staffed("#/setup");
    fireEvent.click(section().getByRole("button", { name: "Set a PIN: Operator 1" }));
    await pad("12");
    await enter();
    expect(dialog().getByText("Four to eight digits.")).toBeTruthy();
    await pad("34");
    await enter();
    expect(dialog().getByLabelText("New PIN once more")).toBeTruthy();
    await pad("9999");
    await enter();
    expect(dialog().getByText("The two are not the same. Begin again.")).toBeTruthy();
    await pad("1234");
    await enter();
    await pad("1234");
    expect(await faults()).toEqual([]);
    await enter();
    expect(page.fake.state.operators[0]!.hasPin).toBe(true);
    expect(screen.queryByRole("dialog")).toBeNull();
  });

  it("changes a PIN with the old one, or takes it away; a forgotten one goes to a keeper", async () => {
    const page = await staffed("#/setup");
    const sent: object[] = [];
    const handle = page.fake.handlers["people.setPin"];
    Object.assign(page.fake.handlers, {
      "people.setPin": (input: Parameters<typeof handle>[0]) => {
        sent.push(input);
        return handle(input);
      },
    });
    const open = () => fireEvent.click(section().getByRole("button", { name: "Change the PIN: Kay Ashdown" }));
    open();
    await pad(FAKE_PIN);
    await enter();
    for (const _ of "ab") {
      await pad("7531");
      await enter();
    }
    open();
    fireEvent.click(dialog().getByRole("button", { name: "Forgotten: a keeper resets it" }));
    fireEvent.click(dialog().getByRole("button", { name: "No PIN any more" }));
    await settle();
    expect(sent).toEqual([
      { operatorId: KEEPER, pin: "7531", oldPin: FAKE_PIN },
      { operatorId: KEEPER, pin: null },
    ]);
  });

  it("takes a name out, leaving initials or nothing", async () => {
    const page = await staffed("#/setup");
    fireEvent.click(section().getByRole("button", { name: "Edit: Operator 1" }));
    fireEvent.click(dialog().getByRole("button", { name: "Take the name out …" }));
    expect(dialog().getByText(/Copies made before still hold the name/)).toBeTruthy();
    expect(await faults()).toEqual([]);
    fireEvent.click(dialog().getByRole("button", { name: "Leave nothing" }));
    await settle();
    expect(page.fake.state.operators[0]!.fullName).toBeUndefined();
    expect(section().getByText(/name erased/)).toBeTruthy();
    expect(section().queryByRole("button", { name: /Set a PIN: Operator 1/ })).toBeNull();
  });

  it("shows people by their initials on this PC", async () => {
    const page = await openPage("#/setup", { demo: false });
    fireEvent.click(screen.getByLabelText("Show people by their initials on this PC"));
    await settle();
    expect(page.fake.state.settings.initials).toBe(true);
  });
});

describe("the tag on Measure", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("wants a name once roles count, asks who is on shift, and ends the shift", async () => {
    const page = await staffed("#/measure");
    const part = () => screen.getByRole("button", { name: /^operator/ });
    expect(part().className).toBe("wanted");
    fireEvent.click(part());
    expect(dialog().getByText("Who is on shift?")).toBeTruthy();
    fireEvent.click(dialog().getByText("Kay Ashdown"));
    await settle();
    expect(part().textContent).toContain("keeper of the records");
    fireEvent.click(part());
    fireEvent.click(dialog().getByRole("button", { name: "End the shift" }));
    await settle();
    expect(page.fake.state.series.draft.tag.operatorId ?? undefined).toBeUndefined();
  });
});
