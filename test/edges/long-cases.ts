/** Functions whose trials together take more than a second or so. */
export const longCases = [
  'damperModel',
  'discAtFlow',
  'benchStroke',
  'moveCorner',
  'warmingRun',
  'chiSquareQuantile',
  'damperLaw',
  'statedState',
  'fitShock',
  'nextMeasurement',
  'posteriorOf',
  'profileInterval',
  'orderPlan',
  'dayPlan',
  'designSearch',
  'toleranceShares',
];
