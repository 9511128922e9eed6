import type { Reporter, TestModule } from 'vitest/node';

/** One closing line in plain words, for logs that are read by a machine: "N passed, N failed". */
export default class PlainReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules)
      for (const test of module.children.allTests()) count[test.result().state] += 1;
    console.log(`\n${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
  }
}
