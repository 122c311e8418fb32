import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { describeInBrowser } from "./Browser.ts";
import type { Call } from "./HoldfastProcess.ts";
import { type InBrowser, programInBrowser } from "./programInBrowser.ts";

describeInBrowser("a PIN in the whole program", () => {
  let page: Page;
  let end: InBrowser["end"] | undefined;
  let call: Call;
  let complaints: string[];
  let spindleId: string;

  const dialog = (title: string) => page.getByRole("dialog", { name: title });
  const enter = async (pin: string) => {
    await page.getByRole("dialog").locator("input[type=password]").fill(pin);
    await page.keyboard.press("Enter");
  };
  const typed = async (text: string) => {
    const { seriesId } = (await call("state.snapshot")).draft;
    await call("series.tag", { seriesId, spindleId });
    await call("series.type", { seriesId, text });
  };
  const checkCount = async () => (await call("spindles.list"))[0]!.checkCount;

  beforeAll(async () => {
    ({ page, call, complaints, end } = await programInBrowser({
      settings: { sound: false },
      prepare: async (call) => {
        const place = { machine: "Mill 3", area: "", taper: "HSK-A63", state: "inUse" as const };
        const limits = { minimumN: 14_400, nominalN: 18_000 };
        spindleId = (await call("spindles.save", { name: "Mill 3", ...place, limits })).spindle.spindleId;
        await call("operators.save", { name: "Kay Lund", role: "keeper", state: "inUse" });
      },
    }));
    await page.getByRole("link", { name: "Setup" }).waitFor();
  }, 60_000);
  afterAll(async () => {
    await end?.();
  });

  it("is set by entering it twice; two that differ begin again", async () => {
    await page.getByRole("link", { name: "Setup" }).click();
    await page.getByRole("button", { name: "Set a PIN: Kay Lund" }).click();
    await dialog("PIN of Kay Lund").getByLabel("New PIN", { exact: true }).waitFor();
    await enter("2468");
    await page.getByLabel("New PIN once more").waitFor();
    await enter("2469");
    await page.getByText("The two are not the same. Begin again.").waitFor();
    for (const digit of "2468") await page.getByRole("button", { name: digit, exact: true }).click(); // with gloves
    await page.getByRole("button", { name: "Next" }).click();
    await page.getByLabel("New PIN once more").waitFor();
    await enter("2468");
    await dialog("Who is on shift?")
      .getByRole("button", { name: /Kay Lund/ })
      .click(); // whose act it is
    await page.getByText("The PIN is set.").waitFor();
    expect(await call("operators.list")).toMatchObject([{ fullName: "Kay Lund", hasPin: true }]);
    await page.getByRole("button", { name: "Change the PIN: Kay Lund" }).waitFor();
  });

  it("is asked for when a check is filed; a wrong one files nothing, the right one does, and it holds for the next", async () => {
    await typed("17.92 kN");
    await page.getByRole("link", { name: "Measure" }).click();
    await page.getByRole("button", { name: /^File 17\.92/ }).click();
    await dialog("PIN of Kay Lund").getByText("Filing a check").waitFor();
    await enter("1111");
    await page.getByText("This is not the PIN.").waitFor();
    expect(await checkCount()).toBe(0);
    await enter("2468");
    await page.locator(".toast.filed", { hasText: /17\.92.kN filed to Mill 3/ }).waitFor();
    expect(await checkCount()).toBe(1);
    await typed("17.90 kN");
    await page.getByRole("button", { name: /^File 17\.90/ }).click();
    await page.locator(".toast.filed", { hasText: /17\.90.kN filed to Mill 3/ }).waitFor();
    expect(await checkCount()).toBe(2);
  });

  it("tried out costs a wait, which the right one does not shorten, said with its seconds in both languages", async () => {
    const [check] = (await call("checks.list", { spindleId, limit: 1 })).rows;
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#/spindles/${spindleId}/checks/${check!.checkId}`);
    await page.getByRole("button", { name: "Make void" }).click();
    await dialog("Make this check void?").getByRole("textbox").fill("mistyped");
    await dialog("Make this check void?").getByRole("button", { name: "Make void" }).click();
    await dialog("PIN of Kay Lund").waitFor(); // taking a check out of the count asks each time
    for (const wrong of ["1111", "2222", "3333"]) {
      await enter(wrong);
      await page.getByText("This is not the PIN.").waitFor();
      await expect.poll(() => page.getByRole("dialog").locator("input[type=password]").inputValue()).toBe("");
    }
    await enter("2468");
    await page.getByText(/Too many wrong PINs\. Wait \d\d seconds/).waitFor();
    expect(await checkCount()).toBe(2);
    await call("settings.save", { language: "de" });
    await page.getByRole("dialog", { name: "PIN von Kay Lund" }).waitFor();
    await enter("2468");
    await page.getByText(/Zu viele falsche PINs\. \d\d Sekunden warten/).waitFor();
    await dialog("PIN von Kay Lund").getByRole("button", { name: "Abbrechen" }).click();
    expect(await checkCount()).toBe(2);
    expect(complaints).toEqual([]);
  }, 40_000);
});
