#!/usr/bin/env node
// The `holdfast` command where the program is installed as a package.
process.argv.splice(2, 0, "cli");
await import("./start.mjs");
