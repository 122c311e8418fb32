import { act, fireEvent, screen } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, openPage, press, scan, settle, standInBrowser } from "../../support/page.tsx";

const at = async (hash: string) => {
  const page = await openPage(hash);
  await settle();
  return page;
};
/** The hash has changed; jsdom says so a turn later. */
const arrive = async () => {
  await act(() => new Promise((done) => setTimeout(done, 0)));
  await settle();
};

describe("a label scanned", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it.each(["#/spindles", "#/rounds", "#/gauges", "#/records", "#/setup"])("on %s opens its spindle", async (hash) => {
    const { fake } = await at(hash);
    const { spindleId, name } = fake.state.spindles[2]!.spindle;
    await scan(`HOLDFAST:S:${spindleId}`);
    await arrive();
    expect(location.hash).toBe(`#/spindles/${spindleId}`);
    expect(screen.getByText(`Scanned: ${name}`)).toBeTruthy();
  });

  it.each(["#/spindles", "#/rounds", "#/gauges", "#/records"])(
    "on %s shows its adapter, the focus on the row, and opens its gauge",
    async (hash) => {
      const { fake } = await at(hash);
      const { adapterId } = fake.state.adapters[1]!.adapter;
      await scan(adapterId);
      await arrive();
      expect(document.activeElement?.getAttribute("data-thing")).toBe(adapterId);
      const { gaugeId } = fake.state.gauges[0]!.gauge;
      await scan(gaugeId);
      await arrive();
      expect(location.hash).toBe(`#/gauges/${gaugeId}`);
    },
  );

  it("that names nothing changes nothing and says so", async () => {
    await at("#/records");
    await scan("Mill 99");
    await arrive();
    expect(location.hash).toBe("#/records");
    expect(screen.getByText(/Nothing here is called “Mill 99”/)).toBeTruthy();
  });

  it("into a field is typed there and opens nothing", async () => {
    const { fake } = await at("#/spindles");
    const field = screen.getAllByRole("textbox")[0]!;
    field.focus();
    await act(async () => {
      for (const key of [...fake.state.spindles[2]!.spindle.name, "Enter"]) fireEvent.keyDown(field, { key });
    });
    await arrive();
    expect(location.hash).toBe("#/spindles");
  });

  it("is told from a finger: slow keys and an Enter open nothing", async () => {
    const { fake } = await at("#/records");
    for (const key of [...fake.state.spindles[2]!.spindle.name, "Enter"]) await press(key);
    await arrive();
    expect(location.hash).toBe("#/records");
  });

  it("on Dock chooses the gauge, goes to the spindle's row, and never leaves what is being matched", async () => {
    const { fake } = await at("#/dock");
    const { gaugeId } = fake.state.gauges[1]!.gauge;
    await scan(gaugeId);
    expect((screen.getByLabelText("Gauge") as HTMLSelectElement).value).toBe(gaugeId);
    const value = (fake.state.spindles[0]!.last?.valueN ?? 0) / 1000;
    const file = Object.assign(new File(["x"], "memory.txt"), { text: async () => String(value) });
    await act(async () => {
      fireEvent.change(screen.getByLabelText("File with readings"), { target: { files: [file] } });
    });
    await settle();
    const { spindleId } = fake.state.spindles[0]!.spindle;
    await scan(spindleId);
    await arrive();
    expect(document.activeElement?.closest("[data-thing]")?.getAttribute("data-thing")).toBe(spindleId);
    await scan(fake.state.adapters[0]!.adapter.adapterId);
    await arrive();
    expect(location.hash).toBe("#/dock");
  });

  it("on Measure chooses the gauge as well", async () => {
    const { fake, core } = await at("#/measure");
    await scan(fake.state.gauges[1]!.gauge.name);
    expect(core.draft.getState().draft?.tag.gaugeId).toBe(fake.state.gauges[1]!.gauge.gaugeId);
  });
});
