import type { Reporter, TestModule } from 'vitest/node';

/**
 * Ends a run with one plain line, "N passed, N failed, N skipped", for whoever reads the log of a machine. A file that
 * fails without a failed test (it does not load, or its setup throws) counts as one failure.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const count = { passed: 0, failed: errors.length, skipped: 0 };
    for (const module of modules) {
      const before = count.failed;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== 'pending') count[state]++;
      }
      if (module.state() === 'failed' && count.failed === before) count.failed++;
    }
    process.stdout.write(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
  }
}
