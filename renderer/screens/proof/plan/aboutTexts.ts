import { inBoth } from "../../../words/inBoth.ts";

/** What the report says of a proof beside its readings. */
export const aboutTexts = inBoth({
  title: ["What the report says", "Was der Bericht sagt"],
  operator: ["Who proves", "Wer prüft"],
  nobody: ["not named", "nicht genannt"],
  customer: ["Customer", "Kunde"],
  workOrder: ["Work order", "Auftrag"],
  edition: ["Edition of the standard you work by", "Ausgabe der Norm, nach der Sie arbeiten"],
  accreditation: ["Your laboratory's accreditation text", "Akkreditierungstext Ihres Labors"],
  accreditationHint: [
    "Only a laboratory that holds one. Empty: the report says that it is not an accredited certificate.",
    "Nur ein Labor, das eine hat. Leer: Der Bericht sagt, dass er kein akkreditierter Kalibrierschein ist.",
  ],
  temperature: ["Temperature, °C", "Temperatur, °C"],
  temperatureRange: ["It changed by, K in all", "Sie änderte sich um, K insgesamt"],
  pressure: ["Air pressure, hPa", "Luftdruck, hPa"],
  humidity: ["Humidity, %", "Luftfeuchte, %"],
  air: ["Air", "Luft"],
  airHint: [
    "Weights weigh less in air: with none of these, usual air is taken and its doubt counted.",
    "Gewichte wiegen in Luft weniger: Ohne diese Werte wird übliche Luft genommen und ihr Zweifel gezählt.",
  ],
  degree: ["Degree of the curve", "Grad der Kurve"],
  degreeHint: [
    "Empty: the lowest the readings do not contradict.",
    "Leer: der kleinste, dem die Messwerte nicht widersprechen.",
  ],
  rule: ["Decision rule", "Entscheidungsregel"],
  note: ["Note", "Bemerkung"],
  "range.temperature": ["From −20 to 60 °C.", "Von −20 bis 60 °C."],
  "range.temperatureRange": ["From 0 to 60 K.", "Von 0 bis 60 K."],
  "range.pressure": ["From 500 to 1100 hPa.", "Von 500 bis 1100 hPa."],
  "range.humidity": ["From 0 to 100 %.", "Von 0 bis 100 %."],
  "range.degree": ["A whole number from 1 to 12.", "Eine ganze Zahl von 1 bis 12."],
  "range.allowed": ["Above 0, up to 100 %.", "Über 0, höchstens 100 %."],
  "range.allowedForce": ["Above 0.", "Über 0."],
});
