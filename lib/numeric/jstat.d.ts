declare module 'jstat' {
  interface Distribution<Freedom extends readonly number[]> {
    inv(probability: number, ...degreesOfFreedom: Freedom): number;
    cdf(x: number, ...degreesOfFreedom: Freedom): number;
  }
  const distributions: {
    readonly studentt: Distribution<[number]>;
    readonly chisquare: Distribution<[number]>;
    readonly centralF: Distribution<[number, number]>;
  };
  export = distributions;
}
