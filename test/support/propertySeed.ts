import fc from "fast-check";

/**
 * Properties draw the same cases on every run, so a change that breaks one is told apart from luck.
 * `npm run soak -- properties` draws new ones; it sets `HOLDFAST_PROPERTY_SEED`.
 */
const seed = Number(process.env.HOLDFAST_PROPERTY_SEED ?? 20311);
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed });
