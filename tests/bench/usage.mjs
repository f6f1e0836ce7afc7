// Loaded before a measured program (node --import): when it ends, writes what it used to the file named in the environment.
import { writeFileSync } from 'node:fs';

const begin = performance.now();
process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  writeFileSync(
    process.env.BENCH_USAGE,
    JSON.stringify({
      wall: (performance.now() - begin) / 1000,
      processor: (userCPUTime + systemCPUTime) / 1e6,
      peakMiB: maxRSS / 1024,
    }),
  );
});
