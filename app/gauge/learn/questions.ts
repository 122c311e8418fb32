import type { LearnHints, OpenQuestion } from "../learnPattern.ts";
import type { LinePattern } from "../linePattern.ts";
import type { LearnedForm } from "./buildForm.ts";
import { unitOf } from "./columns.ts";
import type { MainForm } from "./mainForm.ts";

/** What the sample could not tell, one plain question each. */
export function questionsOf(
  form: LearnedForm,
  pattern: LinePattern,
  hints: LearnHints,
  check: MainForm["check"],
  neverLive: boolean,
): OpenQuestion[] {
  const questions: OpenQuestion[] = [...unitQuestion(form, hints), ...forceQuestion(form), ...form.questions];
  if (check !== "settled") questions.push({ field: "checksum", ...checkQuestions[check] });
  // A gauge that only ever sends its held maximum has no course in time to be measured.
  if (pattern.rateHz === undefined && !hasStamps(pattern) && !neverLive) questions.push(rateQuestion(form, hints));
  return questions;
}

const checkQuestions = {
  unknown: {
    question:
      "The lines end in what looks like a check, by no rule known here: go on without it? Damaged lines may then be read.",
    proposal: "without it",
  },
  unsure: {
    question:
      "The lines end in what looks like a check, but all of them are the same: load the gauge a little, and learn again to be sure.",
    proposal: "a check",
  },
} as const;

function unitQuestion({ choice }: LearnedForm, hints: LearnHints): OpenQuestion[] {
  if (hints.unit !== undefined) return [];
  const unit = unitOf(choice.unit);
  if (unit?.kind === "force") return [];
  if (unit?.kind === "mass") {
    const text = choice.unit!.typical;
    const question = `The lines say ${text}, which is a mass: does this gauge mean force (${unit.unit})?`;
    return [{ field: "unit", question, proposal: unit.unit }];
  }
  const beside = choice.beside === undefined ? "" : ` ("${choice.beside}" is none)`;
  return [
    { field: "unit", question: `The numbers come without a unit of force${beside}: which one does the gauge show?` },
  ];
}

function forceQuestion({ choice }: LearnedForm): OpenQuestion[] {
  if (choice.countsUp && choice.unit === undefined) {
    return [
      {
        field: "force",
        question: "The only number counts up from line to line: is it the force, or is the force missing?",
        proposal: "the force",
      },
    ];
  }
  if (!choice.doubtful) return [];
  const place = choice.force.index;
  const text = choice.force.tokens[0]!.text;
  return [
    {
      field: "force",
      question: `More than one number could be the force: is it the one that reads "${text}" in the first line?`,
      proposal: `${place}`,
    },
  ];
}

function rateQuestion(form: LearnedForm, hints: LearnHints): OpenQuestion {
  const question = "Nothing in the lines tells the time: how many readings a second does the gauge send?";
  const seen = hints.durationS === undefined ? undefined : form.choice.force.tokens.length / hints.durationS;
  return { field: "rate", question, ...(seen === undefined ? {} : { proposal: `${Number(seen.toPrecision(2))}` }) };
}

const hasStamps = (pattern: LinePattern): boolean => pattern.fields.some((f) => f.field === "time" && !f.coarse);
