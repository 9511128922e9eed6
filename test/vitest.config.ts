import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    isolate: false,
    globalSetup: './test/bundleCommand.ts',
    // Whole runs of the command on a busy machine; no test is about time.
    testTimeout: 120_000,
    reporters: ['default', './test/plainReporter.ts'],
  },
});
