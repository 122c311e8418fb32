import { act, fireEvent, screen } from "@testing-library/react";
import { afterAll, beforeAll, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp } from "../../../support/coreInTemp.ts";
import { acceptedAsShown } from "../../../support/fullMemory.ts";
import { closePage, standInBrowser } from "../../../support/page.tsx";
import { pageOnCore } from "../../../support/pageOnCore.tsx";
import { roundWorks } from "../../../support/roundWorks.ts";

let core: CoreInTemp;
beforeAll(async () => {
  standInBrowser();
  core = await coreInTemp();
  await roundWorks(core, [10, 14]);
}, 60_000);
afterAll(async () => {
  closePage();
  await core.close();
});

const until = async (what: string, holds: () => boolean) => {
  for (let i = 0; i < 500; i += 1) {
    if (holds()) return;
    await act(() => new Promise((done) => setTimeout(done, 20)));
  }
  expect.fail(`it did not come to this in ten seconds: ${what}`);
};

it("a reading without a date that equals the last one docked is left out aloud, and one act takes it as new", async () => {
  const text = "place;force;unit\nMill 1;10.00;kN\n";
  const view = await core.call("docking.read", { text });
  const reasons = Object.fromEntries(view.warnings.map(({ code }) => [code, "known and booked"]));
  expect((await core.call("docking.accept", { ...acceptedAsShown(view), answers: [], reasons })).rows).toHaveLength(1);

  await pageOnCore(core, "#/dock");
  await until("the form", () => screen.queryByLabelText("File with readings") !== null);
  const file = Object.assign(new File([""], "m.txt"), { text: async () => text });
  fireEvent.change(screen.getByLabelText("File with readings"), { target: { files: [file] } });
  await until("the doubt", () => screen.queryByText(/^One reading equals the last one docked/) !== null);
  expect(screen.queryByRole("button", { name: /^File \d+ checks/ })).toBeNull();
  fireEvent.click(screen.getByRole("button", { name: "No, all of them are new" }));
  await until("it is new", () => screen.queryByRole("button", { name: /^File 1 checks/ }) !== null);
  expect(screen.queryByText(/^One reading equals/)).toBeNull();
}, 60_000);
