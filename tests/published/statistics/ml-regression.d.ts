/** What is used of the package, which brings no types. */
declare module 'ml-regression' {
  export class TheilSenRegression {
    constructor(x: readonly number[], y: readonly number[]);
    readonly slope: number;
    readonly intercept: number;
  }
}
