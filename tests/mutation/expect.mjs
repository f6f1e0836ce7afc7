// What the tests of a room import as `vitest` while its code is changed: collecting by vitest's own runner, expecting by
// its own assertions, without its workers.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';

export { describe, it, test } from '@vitest/runner';

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);

export const expect = Object.assign(
  (value, message) => chai.expect(value, message),
  chai.expect,
  globalThis[ASYMMETRIC_MATCHERS_OBJECT],
);
setState({ assertionCalls: 0, isExpectingAssertions: false, currentTestName: '' }, expect);
globalThis[GLOBAL_EXPECT] = expect;
