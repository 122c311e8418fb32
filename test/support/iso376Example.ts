import type { ProofReading } from "../../app/proof/data/ProofReading.ts";
import published from "../published/iso376-classes.json" with { type: "json" };

/** The worked example of the published file as readings, in the order a laboratory takes them. */
export function iso376Example(): readonly ProofReading[] {
  const {
    force_kN: forces,
    X1,
    X2,
    X3,
    X4_decreasing: X4,
    X5,
    X6_decreasing: X6,
    i0,
    i_f,
    i30,
    i300,
  } = published.worked_example.inputs;
  const series = (run: string, positionDeg: number, direction: "up" | "down", shown: readonly number[]) => {
    const rows = shown.map((indication, i) => ({
      reference: forces[i]!,
      indication,
      direction,
      run,
      step: String(i + 1),
      positionDeg,
    }));
    return direction === "down" ? rows.toReversed() : rows;
  };
  const one = (indication: number, direction: ProofReading["direction"], reference = 0): ProofReading => ({
    reference,
    indication,
    direction,
    run: "1",
    step: undefined,
    positionDeg: 0,
  });
  return [
    one(i0, "zeroBefore"),
    ...series("1", 0, "up", X1),
    one(i30, "creep30"),
    one(i300, "creep300"),
    one(i_f, "zeroAfter"),
    ...series("2", 0, "up", X2),
    ...series("3", 120, "up", X3),
    ...series("3", 120, "down", X4),
    ...series("4", 240, "up", X5),
    ...series("4", 240, "down", X6),
  ];
}
