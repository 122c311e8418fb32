import { createPrivateKey, sign } from "node:crypto";
import { checksumOf } from "../../../app/gauge/checksums.ts";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { e74DegreeFactor } from "../../../app/proof/e74/e74Degree.ts";
import { airDensity } from "../../../app/proof/reference/airDensity.ts";
import { normalGravity } from "../../../app/proof/reference/normalGravity.ts";
import { sha256 } from "../../store/ledger/sha256.ts";
import { type Published, type Runner, sourceLine, type Trial } from "../Trial.ts";

/** What records and proofs of a gauge stand on: hashes, signatures, canonical form, checksums, gravity, air. */

export const hashes: Runner = ({ source, inputs, expected }) => [
  ...inputs.messages.map(
    (message: string, i: number): Trial => ({
      name: `SHA-256 of a message of ${message.length} characters`,
      source: sourceLine(source),
      expected: expected.digests.published[i],
      got: sha256(message),
    }),
  ),
  {
    name: `SHA-256 of ${inputs.repeated.times} times ${inputs.repeated.character}`,
    source: sourceLine(source),
    expected: expected.repeated.published,
    got: sha256(inputs.repeated.character.repeat(inputs.repeated.times)),
  },
];

export const canonical: Runner = ({ source, inputs, expected }) => {
  const text = canonicalJson(JSON.parse(inputs.document));
  const numbers = expected.numbers.published.map(
    ({ ieee754, text: want }: { ieee754: string; text: string }): Trial => {
      const value = Buffer.from(ieee754, "hex").readDoubleBE();
      return { name: `the double ${ieee754}`, source: sourceLine(source), expected: want, got: canonicalJson(value) };
    },
  );
  return [
    {
      name: "the document, as bytes",
      source: sourceLine(source),
      expected: expected.documentUtf8.published,
      got: Buffer.from(text, "utf8").toString("hex"),
    },
    ...numbers,
  ];
};

export const signatures: Runner = ({ source, inputs, expected }) =>
  inputs.map(
    ({ secretKey, publicKey, message }: Record<"secretKey" | "publicKey" | "message", string>, i: number): Trial => {
      const base64 = (hex: string) => Buffer.from(hex, "hex").toString("base64url");
      const key = createPrivateKey({
        key: { kty: "OKP", crv: "Ed25519", d: base64(secretKey), x: base64(publicKey) },
        format: "jwk",
      });
      return {
        name: `Ed25519, test ${i + 1}`,
        source: sourceLine(source),
        expected: expected.signatures.published[i],
        got: sign(null, Buffer.from(message, "hex"), key).toString("hex"),
      };
    },
  );

export const checksums: Runner = ({ cases }) =>
  cases.map(({ method, complement, text, bytes, result, printed, source }: Published): Trial => {
    const span = text === undefined ? Uint8Array.from(bytes) : Buffer.from(text, "latin1");
    const value = checksumOf(method, span, 0, span.length);
    return {
      name: `${method} of ${printed}`,
      source,
      expected: result,
      got: complement === true ? (10 - value) % 10 : value,
    };
  });

export const gravity: Runner = ({ source, published_check_values: { WGS84 }, recomputed_table: table }) => [
  ...[0, 90].map(
    (latitude): Trial => ({
      name: `gravity at ${latitude} degrees as printed`,
      source: sourceLine(source),
      expected: WGS84[latitude],
      got: normalGravity(latitude, 0),
      within: { absolute: 1e-9 },
    }),
  ),
  ...table.map(
    (row: Published): Trial => ({
      name: `gravity at ${row.latitude_deg} degrees`,
      source: sourceLine(source),
      expected: row.WGS84,
      got: normalGravity(row.latitude_deg, 0),
      within: { absolute: 1e-9 },
    }),
  ),
];

export const air: Runner = ({ source, recomputed_table: table }) =>
  table.map((row: Published): Trial => {
    const state = { temperatureC: row.t_degC, pressurePa: row.p_hPa * 100, humidity: row.rh_percent / 100 };
    return {
      name: `air at ${row.t_degC} °C, ${row.p_hPa} hPa, ${row.rh_percent} %`,
      source: sourceLine(source),
      expected: row.cipm2007,
      got: airDensity(state),
      within: { relative: 1e-8 },
    };
  });

export const degreeFactors: Runner = ({ source, degree_factors: { columns, by_n1: rows } }) =>
  Object.entries(rows as Record<string, number[]>).flatMap(([forces, row]) =>
    columns.map(
      (degree: number, i: number): Trial => ({
        name: `factor of degree ${degree} for ${forces} forces`,
        source: sourceLine(source),
        expected: row[i]!,
        got: e74DegreeFactor(Number(forces), degree, 0.975),
        within: { absolute: 5e-4 },
      }),
    ),
  );
