import { cautionSentence } from "../../app/verdict/cautionSentence.ts";
import type { Judgement } from "../../app/verdict/Judgement.ts";
import { judge } from "../../app/verdict/judge.ts";
import { judgeFault } from "../../app/verdict/judgeFault.ts";
import { reasonSentence } from "../../app/verdict/reasonSentence.ts";
import { settlingSentence } from "../../app/verdict/settlingSentence.ts";
import { type Settling, whatSettles } from "../../app/verdict/whatSettles.ts";
import { type Command, UsageError } from "./Command.ts";
import { parseOptions } from "./parseOptions.ts";
import { readInput } from "./readInput.ts";
import { readJudgeInput } from "./readJudgeInput.ts";

export const command: Command = {
  usage: "[FILE] [--json]   one force against limits, with its uncertainty; FILE holds the input as JSON",
  async run(args, io) {
    const { values, files } = parseOptions(args, { json: { type: "boolean" } });
    if (files.length > 1) throw new UsageError("one FILE at a time; give - or none for standard input");
    const input = readJudgeInput(await readInput(files[0], io), files[0] ?? "-");
    const fault = judgeFault(input);
    if (fault !== undefined) throw new UsageError(`${files[0] ?? "-"}: ${fault}`);
    const judgement = judge(input);
    const settling = whatSettles(input);
    io.out(values.json === true ? `${JSON.stringify(asJson(judgement, settling))}\n` : asText(judgement, settling));
    return 0;
  },
};

/** JSON has no undefined: what does not exist is null. */
function asJson(judgement: Judgement, settling: Settling | undefined) {
  const { verdict, conformity, zone, probabilityConforming, dropFromBaseline, dropFromPrevious, reasons } = judgement;
  return {
    verdict,
    conformity,
    zone: zone ?? null,
    probabilityConforming: probabilityConforming ?? null,
    dropFromBaseline: dropFromBaseline ?? null,
    dropFromPrevious: dropFromPrevious ?? null,
    reasons: reasons.map((reason) => reasonSentence(reason)),
    neededStandardUncertaintyN: settling?.neededStandardN ?? null,
  };
}

const words = { good: "good", watch: "watch", act: "act", stop: "stop", cannotTell: "cannot tell" } as const;

function asText(judgement: Judgement, settling: Settling | undefined): string {
  const beside = [settling && settlingSentence(settling), cautionSentence(judgement.verdict)];
  const lines = [
    words[judgement.verdict],
    ...judgement.reasons.map((reason) => `  ${reasonSentence(reason)}`),
    ...beside,
  ];
  return `${lines.filter((line) => line !== undefined).join("\n")}\n`;
}
