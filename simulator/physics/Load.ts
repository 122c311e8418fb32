import { RigLoad } from "../rig/RigLoad.ts";
import { type ClampingShape, forceOfClamping, peakTimeOf, type Release } from "./clampingShape.ts";

/** What one clamping really was: times in seconds from switching on, forces in newtons without zero and noise. */
export type ClampingTruth = {
  readonly onS: number;
  /** When the release began; undefined while it holds. */
  readonly offS: number | undefined;
  /** Two seconds after the force has arrived; of a shorter hold, where it would have come to. */
  readonly settledN: number;
  /** The greatest force between any two readings. */
  readonly peakN: number;
};

type Clamping = {
  readonly onS: number;
  readonly shape: ClampingShape;
  release: Release | undefined;
  readonly slips: Slip[];
};
type Slip = { readonly atS: number; readonly share: number };
type Pulse = { readonly onS: number; readonly lastsS: number; readonly heightN: number; readonly flat: boolean };

/** What presses on the gauge, as a function of time: clampings one after another, knocks and overloads, or a rig. */
export class Load {
  /** The proving rig the gauge may stand in instead of a spindle. */
  readonly rig = new RigLoad();
  readonly #clampings: Clamping[] = [];
  #pulses: Pulse[] = [];

  /** True from the start of a clamping to its release. */
  get clamped(): boolean {
    const last = this.#clampings.at(-1);
    return last !== undefined && last.release === undefined;
  }

  /** When the last clamping began or, once it is over, when its release began; 0 before the first. */
  get changedS(): number {
    const last = this.#clampings.at(-1);
    return last === undefined ? 0 : last.onS + (last.release?.atS ?? 0);
  }

  clamp(onS: number, shape: ClampingShape): void {
    this.#clampings.push({ onS, shape, release: undefined, slips: [] });
  }

  /** Lets go. `residual` is the share of the force that stays. */
  release(atS: number, fallS: number, residual: number): void {
    const last = this.#clampings.at(-1);
    if (last !== undefined) last.release ??= { atS: atS - last.onS, fallS, residual };
  }

  /** The holder slips in the gripper: from here on a share of the force is gone. */
  slip(atS: number, share: number): void {
    this.#clampings.at(-1)?.slips.push({ atS, share });
  }

  /** A handling knock: half a sine. */
  knock(onS: number, lastsS: number, heightN: number): void {
    this.#pulses.push({ onS, lastsS, heightN, flat: false });
  }

  /** A press with a flat top, short ramps at both ends. */
  press(onS: number, lastsS: number, heightN: number): void {
    this.#pulses.push({ onS, lastsS, heightN, flat: true });
  }

  /** Force at a time not before those asked for earlier, newtons. */
  forceN(tS: number): number {
    const now = this.#clampings.at(-1);
    let forceN = this.rig.forceN(tS);
    if (now !== undefined) {
      let clampedN = forceOfClamping(now.shape, now.release, tS - now.onS);
      for (const slip of now.slips) if (tS >= slip.atS) clampedN *= 1 - slip.share;
      forceN += clampedN;
    }
    if (this.#pulses.length === 0) return forceN;
    for (const pulse of this.#pulses) forceN += forceOfPulse(pulse, tS);
    this.#pulses = this.#pulses.filter((pulse) => tS < pulse.onS + pulse.lastsS);
    return forceN;
  }

  get truth(): readonly ClampingTruth[] {
    return this.#clampings.map(truthOf);
  }
}

function truthOf({ onS, shape, release }: Clamping): ClampingTruth {
  const offS = release === undefined ? undefined : onS + release.atS;
  return { onS, offS, settledN: shape.settledN, peakN: greatestOf(shape, release) };
}

/** The crest of the first ring, or a force that crept above it later; a hold let go before is what it came to. */
function greatestOf(shape: ClampingShape, release: Release | undefined): number {
  const endS = release?.atS ?? peakTimeOf(shape) + 10;
  const crestS = Math.min(endS, peakTimeOf(shape));
  let greatest = forceOfClamping(shape, undefined, endS);
  // The creep factor moves the crest a little off its textbook place.
  for (let i = -200; i <= 200; i += 1) {
    const tS = Math.min(endS, crestS + (i / 200) * (0.25 / shape.ringHz));
    greatest = Math.max(greatest, forceOfClamping(shape, undefined, tS));
  }
  return greatest;
}

function forceOfPulse({ onS, lastsS, heightN, flat }: Pulse, tS: number): number {
  const passed = (tS - onS) / lastsS;
  if (passed <= 0 || passed >= 1) return 0;
  if (!flat) return heightN * Math.sin(Math.PI * passed);
  return heightN * Math.min(1, passed * 10, (1 - passed) * 10);
}
