import { describe, expect, it } from "vitest";
import type { Pen } from "../../../renderer/chart/Pen.ts";
import { SvgPen } from "../../../renderer/chart/SvgPen.ts";
import { tracePath } from "../../../renderer/chart/tracePath.ts";

const pen = () => new SvgPen((text) => text.length * 7);
const parsed = (one: SvgPen) => {
  const page = new DOMParser().parseFromString(one.document(100, 50, 'a < b & "c"'), "image/svg+xml");
  expect(page.querySelector("parsererror")).toBeNull();
  return page;
};

describe("SvgPen", () => {
  it("writes well-formed SVG whatever the words are", () => {
    const one = pen();
    one.fillText('<Mill> & "3"', 5, 6);
    const page = parsed(one);
    expect(page.querySelector("title")!.textContent).toBe('a < b & "c"');
    expect(page.querySelector("text")!.textContent).toBe('<Mill> & "3"');
  });

  it("places strokes by translation and scale, and forgets them on restore", () => {
    const one = pen();
    one.save();
    one.translate(10, 20);
    one.scale(2, 2);
    one.lineWidth = 3;
    one.beginPath();
    one.moveTo(1, 1);
    one.lineTo(2, 5);
    one.stroke();
    one.restore();
    one.beginPath();
    one.lineTo(1, 1);
    one.lineTo(2, 5);
    one.stroke();
    const [scaled, plain] = [...parsed(one).querySelectorAll("path")];
    expect(scaled!.getAttribute("d")).toBe("M12 22L14 30");
    expect(scaled!.getAttribute("stroke-width")).toBe("6");
    expect(plain!.getAttribute("d")).toBe("M1 1L2 5");
    expect(plain!.getAttribute("stroke-width")).toBe("1");
  });

  it("turns the last two digits of a colour and the pen's alpha into one opacity", () => {
    const one = pen();
    one.fillStyle = "#0f6a9a80";
    one.globalAlpha = 0.5;
    one.fillRect(0, 0, 4, 4);
    const path = parsed(one).querySelector("path")!;
    expect(path.getAttribute("fill")).toBe("#0f6a9a");
    expect(Number(path.getAttribute("fill-opacity"))).toBeCloseTo(0.25, 2);
  });

  it("clips what comes until it is restored", () => {
    const one = pen();
    one.save();
    one.beginPath();
    one.rect(0, 0, 10, 10);
    one.clip();
    one.fillRect(0, 0, 90, 90);
    one.restore();
    one.fillRect(0, 0, 90, 90);
    const [inside, outside] = [...parsed(one).querySelectorAll("svg > path")];
    expect(inside!.getAttribute("clip-path")).toBe("url(#clip1)");
    expect(outside!.getAttribute("clip-path")).toBeNull();
  });
});

describe("tracePath", () => {
  const traced = (d: string) => {
    const calls: string[] = [];
    const one = {
      beginPath: () => calls.push("begin"),
      closePath: () => calls.push("close"),
      moveTo: (x: number, y: number) => calls.push(`m ${x} ${y}`),
      lineTo: (x: number, y: number) => calls.push(`l ${x} ${y}`),
    };
    tracePath(one as unknown as Pen, d); // the four calls it makes
    return calls;
  };
  it("reads strokes as SVG means them: more pairs after M are lines, small letters are relative", () => {
    expect(traced("M1 2 3 4h2V9l-1-1z")).toEqual(["begin", "m 1 2", "l 3 4", "l 5 4", "l 5 9", "l 4 8", "close"]);
  });
  it("refuses a curve", () => {
    expect(() => traced("M0 0C1 1 2 2 3 3")).toThrow(RangeError);
  });
});
