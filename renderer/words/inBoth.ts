export { inBoth, type Pairs, type Texts, type Words } from "../../app/words/inBoth.ts";
