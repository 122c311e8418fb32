import type { Reporter, TestModule } from "vitest/node";

/** The closing line that people and machines read: `N passed, N failed, N skipped`. */
export default class CountsReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) count[test.result().state] += 1;
      count.failed += module.errors().length; // a file that could not be read ran no test of its own
    }
    count.failed += unhandled.length;
    process.stdout.write(
      `\n${count.passed} passed, ${count.failed} failed, ${count.skipped + count.pending} skipped\n`,
    );
  }
}
