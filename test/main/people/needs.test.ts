import { describe, expect, it } from "vitest";
import { methods } from "../../../app/contract/methods.ts";
import { needs } from "../../../main/people/needs.ts";

/** Calls that are everybody's: looking, measuring, walking a round, settings of this PC, copies beside the records. */
const open = new Set(
  `state.snapshot settings.save program.openDemo program.leaveDemo program.validate job.stop
  records.verify records.backup records.export reports.make
  ports.list ports.find link.open link.close link.learn link.usePattern link.tail zero.take simulated.command
  series.tag series.describe series.drop series.takeAgain series.override series.type series.clear
  spindles.list spindles.fleet spindles.page adapters.list gauges.list operators.list register.preview
  checks.list checks.get checks.waveform checks.rejudge services.save
  rounds.due rounds.getCalendar rounds.saveCalendar rounds.list rounds.get rounds.save rounds.end rounds.lead rounds.pass rounds.sheet
  rounds.calendar labels.print formats.list formats.keep formats.save docking.read docking.fetch docking.demo docking.type
  references.list plans.list plans.presets plans.save proof.start proof.state proof.describe proof.confirm proof.take
  proof.type proof.repeat proof.skip proof.putDown proof.resume proof.discard proof.result proof.openReference
  proof.closeReference proofs.tables proofs.list proofs.get proofs.data proofs.affected
  backup.choose backup.list restore.try restore.forget people.confirm places.list support.collect`.split(/\s+/),
);

describe("what a call needs", () => {
  it("is decided for every call of the contract: a right, or open to everybody", () => {
    const undecided = Object.keys(methods).filter((name) => Object.hasOwn(needs, name) === open.has(name));
    expect(undecided).toEqual([]);
  });

  it("names no call that is not there", () => {
    expect([...open, ...Object.keys(needs)].filter((name) => !Object.hasOwn(methods, name))).toEqual([]);
  });
});
