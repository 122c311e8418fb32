import type { ProofPage } from "../../../app/contract/proofViews.ts";
import type { FiledTaking, Proof } from "../../../app/ledger/proof.ts";
import type { ProofResult } from "../../../app/proof/result/ProofResult.ts";
import { type DsiReal, dsiUnits, newtonsTo, plainReal, withExpanded, withStandard } from "./dsi.ts";

/**
 * A proof for other programs: every quantity with its unit, expanded uncertainty, coverage factor and coverage
 * probability by D-SI. What does not exist is null.
 */
export function proofJson({ proof, origin, seq, hash }: ProofPage): string {
  const { result } = proof;
  const document = {
    format: "holdfast-proof",
    version: 1,
    "@context": { si: "https://ptb.de/si" },
    proofId: proof.proofId,
    entry: { origin, seq, sha256: hash },
    program: proof.programVersion,
    accredited: proof.accreditation,
    item: { gauge: toolOf(proof.gauge), adapter: proof.adapter === null ? null : toolOf(proof.adapter) },
    customer: proof.customer,
    workOrder: proof.workOrder,
    as: proof.as,
    startedAt: proof.startedAt,
    provedAt: proof.provedAt,
    on: proof.on,
    dueOn: proof.dueOn,
    method: { name: proof.plan.method, edition: proof.edition, degree: result?.fit?.degree ?? null },
    reference: referenceOf(proof),
    conditions: conditionsOf(proof),
    judged: proof.judged,
    refused: proof.refused,
    refusedWhy: proof.refusedWhy ?? null,
    result: result === null ? null : resultOf(result),
    readings: proof.takings.map(readingOf),
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}

const toolOf = ({ name, serial }: { name: string; serial?: string | undefined }) => ({ name, serial: serial ?? null });

function referenceOf({ reference, site }: Proof) {
  const { name, kind, serial = null, certificate = null, transducer } = reference;
  return {
    name,
    serial,
    kind,
    certificate,
    class: transducer?.class ?? null,
    dueOn: transducer?.dueOn ?? reference.typed?.dueOn ?? null,
    gravity:
      site &&
      withStandard(
        { label: "local gravity", kind: "Acceleration", value: site.gravity, unit: dsiUnits.acceleration },
        site.gravityStandard,
      ),
    airDensity:
      site &&
      withStandard(
        { label: "air density", kind: "Density", value: site.airDensityKgM3, unit: dsiUnits.density },
        site.airDensityStandardKgM3,
      ),
  };
}

function conditionsOf({ conditions }: Proof) {
  const { temperatureC, temperatureRangeK, pressurePa, humidity } = conditions;
  const real = (label: string, kind: string, value: number | null, unit: string) =>
    value === null ? null : plainReal({ label, kind, value, unit });
  return {
    temperature: real("temperature", "CelsiusTemperature", temperatureC, dsiUnits.celsius),
    temperatureRange: real("temperature range", "TemperatureDifference", temperatureRangeK, dsiUnits.kelvin),
    pressure: real("air pressure", "AtmosphericPressure", pressurePa, dsiUnits.pascal),
    humidity: real("relative humidity", "RelativeHumidity", humidity, dsiUnits.one),
  };
}

const force = (label: string, value: number) => ({ label, kind: "Force", value, unit: dsiUnits.newton });
const share = (label: string, percent: number | null): DsiReal | null =>
  percent === null ? null : plainReal({ label, kind: "DimensionlessRatio", value: percent, unit: dsiUnits.percent });

function resultOf(result: ProofResult) {
  const { fit, uncertaintyCurve, coverage } = result;
  return {
    class: result.class,
    missing: result.missing,
    classRanges: result.classRanges.map((range) => ({
      class: range.class,
      from: plainReal(force("from", range.fromN)),
      to: plainReal(force("to", range.toN)),
    })),
    conformity: result.conformity,
    remarks: result.remarks,
    zeroChange: share("change of zero", result.zeroPct),
    creep: share("creep", result.creepPct),
    lowerLimitFactor:
      result.lowerLimitFactorN === null ? null : plainReal(force("lower limit factor", result.lowerLimitFactorN)),
    curve:
      fit === null
        ? null
        : fit.coefficients.map((value, i) =>
            withStandard({ label: `x^${i}`, value, unit: newtonsTo(1 - i) }, fit.coefficientSd[i]!),
          ),
    /** U² = constant² + (proportional x force)². */
    uncertaintyCurve: {
      constant: plainReal(force("constant", uncertaintyCurve.constantN)),
      proportional: plainReal({ label: "proportional", value: uncertaintyCurve.proportional, unit: dsiUnits.one }),
    },
    steps: result.steps.map((step) => stepOf(step, coverage)),
  };
}

function stepOf(step: ProofResult["steps"][number], coverage: number) {
  const { expandedN, coverageFactor, contributions, degreesOfFreedom } = step.uncertainty;
  return {
    reference: plainReal(force("reference force", step.referenceN)),
    n: step.n,
    net: plainReal(force("net indication", step.netN)),
    error: withExpanded(force("error", step.errorN), expandedN, coverageFactor, coverage),
    residual: step.residualN === null ? null : plainReal(force("residual", step.residualN)),
    repeatabilityWithTurning: share("b", step.b),
    repeatability: share("b'", step.bPrime),
    interpolation: share("fc", step.fc),
    reversibility: share("v", step.v),
    class: step.class,
    permissible: step.permissibleN === null ? null : plainReal(force("permissible error", step.permissibleN)),
    conformity: step.conformity,
    probabilityConforming: step.probabilityConforming,
    degreesOfFreedom,
    budget: contributions.map(({ source, standardN, degreesOfFreedom: freedom }) => ({
      source,
      degreesOfFreedom: freedom,
      standard: plainReal(force(source, standardN)),
    })),
  };
}

function readingOf(taking: FiledTaking) {
  const { at, run, positionDeg, direction, step, n, replaced } = taking;
  return {
    at,
    run,
    position: plainReal({ label: "position", kind: "Angle", value: positionDeg, unit: dsiUnits.degree }),
    direction,
    step,
    reference: withStandard(force("reference force", taking.referenceN), taking.referenceStandardN),
    indication: plainReal(force("indication", taking.indicationN)),
    n,
    replaced,
  };
}
