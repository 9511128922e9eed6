import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    isolate: false,
    // Half the cores is the usual, which is one of two: commands run beside the other tests.
    maxWorkers: '100%',
    globalSetup: './test/bundleCommand.ts',
    // Whole runs of the command on a busy machine; no test is about time.
    testTimeout: 120_000,
    reporters: ['default', './test/plainReporter.ts'],
  },
});
