import { act, fireEvent, screen } from "@testing-library/react";
import { afterAll, afterEach, beforeAll, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp } from "../../../support/coreInTemp.ts";
import { closePage, standInBrowser } from "../../../support/page.tsx";
import { pageOnCore } from "../../../support/pageOnCore.tsx";
import { roundWorks } from "../../../support/roundWorks.ts";

let core: CoreInTemp;
beforeAll(async () => {
  standInBrowser();
  core = await coreInTemp();
  await roundWorks(core, [10, 14]);
}, 60_000);
afterEach(closePage);
afterAll(() => core.close());

const until = async (what: string, holds: () => boolean) => {
  for (let i = 0; i < 500; i += 1) {
    if (holds()) return;
    await act(() => new Promise((done) => setTimeout(done, 20)));
  }
  expect.fail(`it did not come to this in ten seconds: ${what}`);
};
const read = async (lines: readonly string[]) => {
  await pageOnCore(core, "#/dock");
  await until("the form", () => screen.queryByLabelText("File with readings") !== null);
  const file = Object.assign(new File([""], "m.txt"), { text: async () => lines.join("\n") });
  fireEvent.change(screen.getByLabelText("File with readings"), { target: { files: [file] } });
};

it("says which dates do not exist, and what a reading without one gets for its time", async () => {
  await read([
    "number;date;time;force;unit",
    "1;28.02.26;09:10;10.02;kN",
    "2;31.02.26;09:20;10.01;kN",
    "3;28.02.26;24:00;10.03;kN",
    "4;28.02.26;25:00;14.01;kN",
  ]);
  await until("the dates", () => screen.queryByText(/^2 readings bear a date or time that does not exist/) !== null);
  expect(screen.getByText(/the first: 31\.02\.26 09:20\).*the time of this docking/)).toBeTruthy();
  expect(screen.getAllByText(/31\.02\.26 09:20 does not exist/).length).toBeGreaterThan(0);
  expect(screen.getAllByText(/28\.02\.26 25:00 does not exist/).length).toBeGreaterThan(0);
  expect(screen.queryByText(/24:00 does not exist/)).toBeNull(); // the end of that day
}, 60_000);

it.each([
  [
    "was cut in a line",
    [
      "COUNT 4",
      "1;28.02.26;09:10;10.02;kN",
      "2;28.02.26;09:20;10.01;kN",
      "3;28.02.26;09:30;14.01;kN",
      "4;28.02.26;09:",
    ],
  ],
  [
    "has fewer readings than its gauge says",
    ["COUNT 4", "1;28.02.26;09:10;10.02;kN", "2;28.02.26;09:20;10.01;kN", "3;28.02.26;09:30;14.01;kN"],
  ],
])(
  "a memory that %s is said not to be whole, loudly and before it is filed",
  async (_, lines) => {
    await read(lines);
    await until("what is missing", () => screen.queryByText(/^Not all of it came: 3 readings, 4 announced/) !== null);
  },
  60_000,
);

it("a line whose checksum is wrong is not read, and the memory is said not to be whole", async () => {
  const xor = (body: string) => {
    const sum = [...body].reduce((all, c) => all ^ c.charCodeAt(0), 0);
    return sum.toString(16).toUpperCase().padStart(2, "0");
  };
  const bodies = [10.02, 10.01, 10.05, 14.01, 14.02].map((kN, i) => `${i + 1};28.02.26;09:1${i};${kN.toFixed(2)};kN`);
  const lines = bodies.map((body) => `${body}*${xor(body)}`);
  lines[3] = lines[3]!.replace("14.01", "74.01"); // one digit turned on the way
  await read(lines);
  await until("what is missing", () => screen.queryByText(/^Not all of it came: 4 readings/) !== null);
  expect(screen.queryByText(/74\.01/)).toBeNull();
}, 60_000);
