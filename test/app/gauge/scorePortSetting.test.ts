import { describe, expect, it } from "vitest";
import {
  bestPortSetting,
  leastPortScore,
  type PortSetting,
  scorePortSetting,
} from "../../../app/gauge/scorePortSetting.ts";
import { bytesOfText, formats, lcg, shownReadings, streamOf } from "./formats.ts";

const good = streamOf(formats[0]!, shownReadings(formats[0]!, 40));
const ones = (code: number) => [...code.toString(2)].filter((bit) => bit === "1").length % 2;
const evenBits = Uint8Array.from(good, (c) => (ones(c.charCodeAt(0)) === 0 ? c.charCodeAt(0) : c.charCodeAt(0) | 0x80));
const setting = (baudRate: number, dataBits: 7 | 8 = 8, parity: PortSetting["parity"] = "none"): PortSetting => ({
  baudRate,
  dataBits,
  parity,
});
const random = lcg(2);
const garbage = Uint8Array.from({ length: 2000 }, () => Math.floor(random() * 256));

describe("port settings", () => {
  it("finds the one under which the lines decode", () => {
    const captures = [
      { setting: setting(115_200), bytes: garbage },
      { setting: setting(9600), bytes: bytesOfText(good) },
      { setting: setting(4800), bytes: garbage.map((byte) => byte & 0xf8) },
    ];
    expect(bestPortSetting(captures)?.setting).toEqual(setting(9600));
  });

  it("prefers seven bits with parity to eight bits that need it explained", () => {
    const captures = [
      { setting: setting(9600), bytes: evenBits },
      { setting: setting(9600, 7, "even"), bytes: bytesOfText(good) },
    ];
    expect(bestPortSetting(captures)?.setting).toEqual(setting(9600, 7, "even"));
    expect(scorePortSetting(captures[0]!).score).toBeGreaterThan(leastPortScore);
  });

  it("finds none in noise, in silence and in a line cut short", () => {
    for (const bytes of [garbage, new Uint8Array(0), bytesOfText("12.3")]) {
      expect(bestPortSetting([{ setting: setting(9600), bytes }])).toBeUndefined();
    }
  });

  it("takes lines with a torque for a setting that is right", () => {
    const torque = bytesOfText(good.replaceAll("kN", "Nm"));
    const found = bestPortSetting([{ setting: setting(2400), bytes: torque }]);
    expect(found).toMatchObject({ setting: setting(2400), learned: { kind: "torque" } });
  });

  it("is sure enough after three lines", () => {
    const three = bytesOfText(good.split("\r\n").slice(0, 3).join("\r\n").concat("\r\n"));
    expect(bestPortSetting([{ setting: setting(1200), bytes: three }])?.setting).toEqual(setting(1200));
  });
});
