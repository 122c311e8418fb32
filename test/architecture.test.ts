import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { describe, expect, it } from "vitest";

const root = resolve(import.meta.dirname, "..");
const rooms = ["app", "main", "renderer", "simulator"] as const;

/** Which top folders each may import from. `test` may import all and is not listed. */
const mayImport: Record<string, readonly string[]> = {
  app: ["app"],
  main: ["app", "main"],
  renderer: ["app", "renderer"],
  simulator: ["app", "simulator"],
};

/** Inside `app`, each room and the rooms before it that it may use. */
const appOrder: Record<string, readonly string[]> = {
  people: [],
  quantity: [],
  numerics: [],
  gauge: ["quantity", "numerics"],
  cycle: ["quantity", "numerics", "gauge"],
  correction: ["quantity", "numerics", "gauge", "cycle"],
  verdict: ["quantity", "numerics", "gauge", "cycle", "correction"],
  proof: ["quantity", "numerics", "gauge", "cycle", "correction", "verdict"],
  trend: ["quantity", "numerics", "gauge", "cycle", "correction", "verdict"],
  round: ["quantity", "numerics", "gauge", "cycle", "correction", "verdict", "trend"],
  words: ["quantity", "verdict", "trend", "proof", "ledger"],
};

/** Packages that only the named places may import. Everything not listed is open to `main` and `renderer`. */
const packageHomes: Record<string, readonly string[]> = {
  zod: ["app/contract/", "app/ledger/", "app/gauge/linePattern", "main/"],
  electron: ["main/host/electron/"],
  serialport: ["main/link/serialPort"],
  "better-sqlite3": ["main/store/"],
  pdfkit: ["main/report/"],
  qrcode: ["main/report/"],
  react: ["renderer/"],
  "react-dom": ["renderer/"],
  zustand: ["renderer/"],
  "chart.js": ["renderer/"],
  "lucide-react": ["renderer/"],
  "read-excel-file": ["main/import/"],
  "csv-stringify": ["main/report/"],
  "ical-generator": ["main/report/"],
};

type Import = { file: string; specifier: string; typeOnly: boolean };

function importsOf(room: string): Import[] {
  const found: Import[] = [];
  for (const entry of readdirSync(join(root, room), { recursive: true, withFileTypes: true })) {
    if (!entry.isFile() || !/\.tsx?$/.test(entry.name)) continue;
    const path = join(entry.parentPath, entry.name);
    const text = readFileSync(path, "utf8");
    const pattern =
      /^(?:import|export)\s+(type\s+)?(?:[\s\S]*?\sfrom\s+)?["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']\s*\)/gm;
    for (const m of text.matchAll(pattern)) {
      found.push({
        file: relative(root, path).split(sep).join("/"),
        specifier: m[2] ?? m[3] ?? "",
        typeOnly: m[1] !== undefined,
      });
    }
  }
  return found;
}

const all = rooms.flatMap(importsOf);
const target = (i: Import) =>
  relative(root, resolve(root, dirname(i.file), i.specifier))
    .split(sep)
    .join("/");
const isOwn = (i: Import) => i.specifier.startsWith(".");
const packageOf = (s: string) =>
  s
    .split("/")
    .slice(0, s.startsWith("@") ? 2 : 1)
    .join("/");
const say = (i: Import) => `${i.file} -> ${i.specifier}`;

describe("who may import whom", () => {
  it("reads the program's files", () => {
    expect(all.length).toBeGreaterThan(20);
  });

  it("keeps each top folder to its neighbours", () => {
    const wrong = all
      .filter(isOwn)
      .filter((i) => !mayImport[i.file.split("/")[0]!]!.includes(target(i).split("/")[0]!));
    expect(wrong.map(say)).toEqual([]);
  });

  it("keeps the order of the rooms inside app", () => {
    const wrong = all.filter(isOwn).filter((i) => {
      const [top, from] = i.file.split("/");
      const to = target(i).split("/")[1]!;
      const allowed = appOrder[from!];
      return top === "app" && allowed !== undefined && from !== to && !allowed.includes(to);
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it("lets app import no package but zod, and no Node module", () => {
    const wrong = all.filter((i) => i.file.startsWith("app/") && !isOwn(i) && i.specifier !== "zod");
    expect(wrong.map(say)).toEqual([]);
  });

  it("keeps each package at home", () => {
    const wrong = all.filter((i) => {
      const homes = isOwn(i) ? undefined : packageHomes[packageOf(i.specifier)];
      return homes !== undefined && !homes.some((home) => i.file.startsWith(home));
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it("takes the contract into the renderer as types only", () => {
    const wrong = all.filter(
      (i) =>
        i.file.startsWith("renderer/") &&
        /^app\/contract\/(methods|events)/.test(isOwn(i) ? target(i) : "") &&
        !i.typeOnly,
    );
    expect(wrong.map(say)).toEqual([]);
  });

  it("imports no index file and names every extension", () => {
    const wrong = all.filter(
      (i) =>
        isOwn(i) &&
        (/(^|\/)index(\.ts)?$/.test(i.specifier) || !/\.(tsx?|json|css|mjs|woff2?)(\?.*)?$/.test(i.specifier)),
    );
    expect(wrong.map(say)).toEqual([]);
  });
});
