import { inBoth } from "../../words/inBoth.ts";

export const glossaryFrame = inBoth({
  lead: [
    "Explained in our own words; the number tells where the standard defines the term. The standard's wording counts.",
    "Mit eigenen Worten erklärt; die Nummer sagt, wo die Norm den Begriff festlegt. Es gilt der Wortlaut der Norm.",
  ],
  sources: [
    "VIM: JCGM 200:2012, International vocabulary of metrology. GUM: JCGM 100:2008, Guide to the expression of uncertainty in measurement. Both are free at the BIPM. The numbers are given from memory: check them against your edition. Terms without a number are this program's or the trade's.",
    "VIM: JCGM 200:2012, Internationales Wörterbuch der Metrologie. GUM: JCGM 100:2008, Leitfaden zur Angabe der Unsicherheit beim Messen. Beide frei beim BIPM. Die Nummern sind aus dem Gedächtnis angegeben: bitte an der eigenen Ausgabe prüfen. Begriffe ohne Nummer sind die des Programms oder des Handwerks.",
  ],
});
