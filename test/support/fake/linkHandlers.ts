import type { LinkView } from "../../../app/contract/linkViews.ts";
import type { Handlers } from "../../../app/contract/methods.ts";
import { closedLink, type FakeState } from "../fakeCore.ts";

type Names =
  | "ports.list"
  | "ports.find"
  | "link.open"
  | "link.close"
  | "link.learn"
  | "link.usePattern"
  | "link.tail"
  | "zero.take"
  | "simulated.command";

export function linkHandlers(state: FakeState): Pick<Handlers, Names> {
  const link = (view: LinkView) => {
    state.link = view;
    state.say("link.changed", view);
    return view;
  };
  return {
    "ports.list": () => ({
      ports: [
        { path: "/dev/ttyUSB0", label: "ttyUSB0 (USB Serial)", usb: { vendorId: "0000" }, obstacle: undefined },
        {
          path: "/dev/ttyUSB1",
          label: "ttyUSB1 (USB Serial)",
          usb: undefined,
          obstacle: {
            code: "noPermission",
            message: "You may not open this port. Join the group dialout and sign in again.",
          },
        },
      ],
      hint: undefined,
    }),
    "ports.find": () => ({ jobId: "find" }),
    "link.open": ({ source, gaugeId }) => {
      const gauge = state.gauges.find((row) => row.gauge.gaugeId === gaugeId) ?? state.gauges[0];
      const opened = link({
        ...closedLink,
        state: "open",
        source,
        label: source.kind === "simulated" ? "simulated gauge" : source.kind === "serial" ? source.path : "gauge",
        gaugeId: gauge?.gauge.gaugeId,
        patternName: "number and unit",
        unit: "kN",
        rateHz: 100,
        resolutionN: 10,
        counters: { bytes: 120_400, lines: 9_640, readings: 9_631, rejected: 9, byReason: { frame: 6, checksum: 3 } },
      });
      state.say("draft.changed", state.series.change({ tag: { ...state.series.draft.tag, gaugeId: opened.gaugeId } }));
      return opened;
    },
    "link.close": () => link(closedLink),
    "link.learn": () => ({
      pattern: { version: 1 },
      confidence: 0.97,
      lines: [
        { raw: "   17.92 kN", forceN: 17_920, state: "live", rejected: undefined },
        { raw: "   17.9", forceN: undefined, state: undefined, rejected: "frame" },
        { raw: "   OL", forceN: undefined, state: "overload", rejected: undefined },
      ],
      undecided: [{ field: "unit", question: "Which unit do the numbers have?" }],
      rateHz: 100,
      refused: undefined,
      setting: { baud: 9600, dataBits: 8, parity: "none", stopBits: 1 },
    }),
    "link.usePattern": () => ({ patternId: state.works.worksId }),
    "link.tail": () => ({
      lines: [
        { raw: "   17.92 kN", forceN: 17_920, state: "live", rejected: undefined },
        { raw: "   17.9", forceN: undefined, state: undefined, rejected: "frame" },
        { raw: "   17.93 kN", forceN: 17_930, state: "live", rejected: undefined },
      ],
    }),
    "zero.take": () => ({ beforeN: 12, afterN: 0 }),
    "simulated.command": ({ command, forceN }) => {
      if (command === "clamp") state.gauge.clamp(forceN);
      if (command === "release") state.gauge.release();
      if (command === "unplug")
        link({ ...state.link, state: "waiting", problem: { code: "gone", message: "The gauge was unplugged." } });
      if (command === "plug") link({ ...state.link, state: "open", problem: undefined });
      return { done: true };
    },
  };
}
