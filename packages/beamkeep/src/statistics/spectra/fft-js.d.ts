/** What the tests use of the package, which ships no types. */
declare module 'fft-js' {
  const package_: { fft(values: readonly number[]): [real: number, imaginary: number][] };
  export default package_;
}
