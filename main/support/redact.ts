import { homedir, userInfo } from "node:os";

/** What must not stand in a log, whatever it was found in. */
export type Personal = {
  readonly names: readonly string[];
  readonly home: string;
  readonly user: string;
};

export function personalHere(names: readonly string[]): Personal {
  return { names, home: homedir(), user: userName() };
}

function userName(): string {
  try {
    return userInfo().username;
  } catch {
    return ""; // no entry for this user; there is then no name to hide
  }
}

const SHORTEST = 4;

/**
 * Takes names of people, the user's folders and whatever looks like a token, code or PIN out of a text. What an error
 * says is not ours to choose: a parser quotes what it stumbled over.
 */
export function redact(text: string, { names, home, user }: Personal): string {
  let clean = text.replace(secrets, "$1$2[hidden]").replace(longRuns, hideToken);
  if (home.length > 1) clean = clean.replaceAll(home, "~");
  clean = clean.replace(userFolders, "$1[user]");
  for (const word of wordsOf([...names, user])) {
    clean = clean.replace(new RegExp(`(?<![\\p{L}\\p{N}])${escaped(word)}(?![\\p{L}\\p{N}])`, "giu"), "[name]");
  }
  return clean;
}

/** `pin: 1234`, `"token":"…"`, `#code=…`, `Authorization: Bearer …` */
const secrets =
  /\b(authorization|bearer|(?:old)?pin|token|code|password|secret)(["']?\s*[:=]\s*["']?(?:bearer\s+)?|\s+(?=[A-Za-z0-9_-]{16}))[^\s"',;)}\]]+/gi;
/** 256 bits in base64url are 43 signs; hashes of the ledger are hex and say nothing of anybody. */
const longRuns = /[A-Za-z0-9_-]{40,}/g;
const hideToken = (run: string) =>
  /^[0-9a-f-]+$/.test(run) || !/[a-z]/.test(run) || !/[A-Z]/.test(run) ? run : "[hidden]";
const userFolders = /((?:\/home|\/Users|[A-Za-z]:\\Users|\\\\Users)[/\\])[^/\\\s"':]+/g;

/** Whole names, and each of their words that is long enough to be no other word by chance; longest first. */
function wordsOf(names: readonly string[]): string[] {
  const words = names.flatMap((name) => [name, ...name.split(/[\s.,-]+/)]).map((word) => word.trim());
  return [...new Set(words.filter((word) => word.length >= SHORTEST))].sort((a, b) => b.length - a.length);
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
