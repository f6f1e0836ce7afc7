import type { TestProject } from 'vitest/node';
import { findChromium } from './findChromium.js';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Path of the Chromium that the browser tests drive. */
    chromium: string;
  }
}

/** Finds the browser once for all test files: two that unpack it at once would get in each other's way. */
export default async function setup(project: TestProject): Promise<void> {
  project.provide('chromium', await findChromium());
}
