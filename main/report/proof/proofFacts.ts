import type { ProofPage } from "../../../app/contract/proofViews.ts";
import type { Proof } from "../../../app/ledger/proof.ts";
import { ownPlanName } from "../../../app/proof/plan/ownPlanName.ts";
import { methodTexts } from "../../../app/words/proofMethodTexts.ts";
import { drawFacts, type Fact } from "../pdf/drawFacts.ts";
import type { ProofPaper } from "./ProofPaper.ts";

type Pair = readonly [label: string, value: string | null | undefined];

const told = (pairs: readonly Pair[]): Fact[] =>
  pairs.flatMap(([label, value]) => (value === null || value === undefined || value === "" ? [] : [[label, value]]));

/** What was proved, for whom, when and by whom. @param who  the operator as reports name people */
export function drawSubject(paper: ProofPaper, { proof }: ProofPage, who: string | undefined): void {
  const { sheet, write, words, chosen } = paper;
  const { gauge, adapter, offsetMinutes } = proof;
  const named = (tool: { name: string; serial?: string | undefined }) =>
    tool.serial === undefined ? tool.name : `${tool.name}, ${words.serial} ${tool.serial}`;
  const at = (iso: string) => write.wallTime(Date.parse(iso), offsetMinutes);
  sheet.heading(words.what);
  drawFacts(
    sheet,
    told([
      [words.gauge, named(gauge)],
      [words.capacity, chosen(gauge.capacityN)],
      [words.adapter, adapter === null ? words.noAdapter : named(adapter)],
      [words.resolution, proof.choices.resolutionN === null ? undefined : chosen(proof.choices.resolutionN)],
      [words.customer, proof.customer],
      [words.workOrder, proof.workOrder],
      [words.state, words[`as.${proof.as}`]],
      [words.on, write.plainDay(proof.on)],
      [words.begun, `${at(proof.startedAt)} – ${at(proof.provedAt)}`],
      [words.by, who ?? words.notNamed],
      [words.next, proof.dueOn === null ? words.noNext : write.plainDay(proof.dueOn)],
      [words.note, proof.note],
    ]),
  );
}

/** By which method and under what conditions. */
export function drawMethod({ sheet, write, words, chosen }: ProofPaper, { proof }: ProofPage): void {
  const { plan, conditions } = proof;
  const runs = plan.runs.map(({ run, positionDeg, falling }) => {
    const said = words.runIs(run, write.digits(positionDeg));
    return falling ? words.runFalls(said) : said;
  });
  const { temperatureC, temperatureRangeK, humidity, pressurePa } = conditions;
  const range = temperatureRangeK === null ? "" : words.changed(write.digits(temperatureRangeK, 3));
  sheet.heading(words.how);
  drawFacts(
    sheet,
    told([
      [words.method, methodTexts[write.language][plan.method]],
      [words.edition, proof.edition ?? words.noEdition],
      [words.plan, ownPlanName(plan)],
      [words.loads, words.loadsAre(plan.loadsN.length, chosen(plan.loadsN[0]), chosen(plan.loadsN.at(-1)))],
      [words.runs, runs.join("; ")],
      [words.preloads, String(plan.preloads)],
      [words.times, words.timesAre(write.digits(plan.dwellS), write.digits(plan.readS), write.digits(plan.restS))],
      [words.temperature, temperatureC === null ? words.notRead : `${write.digits(temperatureC, 4)} °C${range}`],
      [words.humidity, humidity === null ? words.notRead : write.percent(humidity, 0)],
      [words.pressure, pressurePa === null ? words.notRead : `${write.number(pressurePa / 100, 1)} hPa`],
    ]),
  );
}

/** What it was proved against, and what that is traceable by. */
export function drawTrace({ sheet, write, words }: ProofPaper, { proof }: ProofPage): void {
  const { reference, site, offset } = proof;
  const { transducer, weights, typed } = reference;
  const dueOn = transducer?.dueOn ?? typed?.dueOn;
  sheet.heading(words.trace);
  drawFacts(
    sheet,
    told([
      [
        words.reference,
        reference.serial === undefined ? reference.name : `${reference.name}, ${words.serial} ${reference.serial}`,
      ],
      [words.kind, words[`kind.${reference.kind}`]],
      [words.certificate, reference.certificate ?? words.noCertificate],
      [words.class, transducer?.class],
      [words.calibrated, transducer && write.plainDay(transducer.calibratedOn)],
      [words.due, dueOn && write.plainDay(dueOn)],
      [words.standardShare, shareOf(proof, write.percent)],
      [words.weights, weights?.weights.map(({ label }) => label).join(", ")],
      [words.gravity, site && `${write.number(site.gravity, 5)} m/s² (u = ${write.digits(site.gravityStandard, 2)})`],
      [
        words.air,
        site && `${write.number(site.airDensityKgM3, 4)} kg/m³ (u = ${write.digits(site.airDensityStandardKgM3, 2)})`,
      ],
      [words.offset, offset && `${write.number(offset.offsetS, 3)} ± ${write.number(offset.halfWidthS, 3)} s`],
    ]),
  );
}

/** The reference's largest relative standard uncertainty over the loads that were taken. */
function shareOf({ takings }: Proof, percent: (share: number, digits: number) => string): string | undefined {
  const shares = takings.flatMap(({ referenceN, referenceStandardN, replaced }) =>
    referenceN > 0 && replaced === null ? [referenceStandardN / referenceN] : [],
  );
  const worst = Math.max(0, ...shares);
  return worst > 0 ? percent(worst, 4) : undefined;
}
