export { type AiryOil, type CompressedAiryOil, compressAiryOil } from './air-in-oil.js';
export { petroleumAirSolubility } from './air-solubility.js';
export {
  barryLine,
  type SiliconeLine,
  siliconeLineFromCoefficient,
  viscosityTemperatureCoefficient,
} from './barry-silicone.js';
export { blendFraction, blendViscosity } from './blend.js';
export type { BlendCase, BlendSpread, MeasuredBlend } from './blend-case.js';
export type { BlendRule, OilPair } from './blend-estimates.js';
export {
  arrheniusBlend,
  astmBlend,
  type BlendComponent,
  kendallMonroeBlend,
  molarMassBlend,
  polymerBlend,
  refutasBlend,
} from './blend-rules.js';
export { barusViscosityRatio, siliconeBulkModulus } from './bulk-modulus.js';
export { oilDensity, thermalExpansionCoefficient } from './density.js';
export { fluidAt, type OilState } from './fluid-at.js';
export type { FluidState } from './fluid-state.js';
export { blendInteraction, interactingBlend } from './grunberg-nissan.js';
export { isoGradeViscosity } from './iso-grade.js';
export { createOil, type Oil } from './oil.js';
export type {
  MeasuredThinning,
  OilBase,
  OilDefinition,
  ViscosityDefinition,
  ViscosityPoint,
} from './oil-definition.js';
export { kinematicViscosityOfSayboltUniversal, sayboltUniversalSeconds } from './saybolt.js';
export { type PolymerState, rouseRelaxationTime, shearThinningWarnings } from './shear-thinning.js';
export { siliconeMolarMass, siliconeViscosityOfMolarMass } from './silicone-molar-mass.js';
export { localExponent, type ShearThinning, viscosityRatio } from './thinning-viscosity.js';
export { tradeWeightViscosity } from './trade-weight.js';
export { viscosityIndex } from './viscosity-index.js';
export { waltherLineFromViscosityIndex } from './viscosity-index-line.js';
export type { ViscosityInterval } from './viscosity-interval.js';
export { temperatureAt, type ViscosityLine, viscosityAt } from './viscosity-line.js';
export {
  kinematicViscosityOfZ,
  kinematicViscosityOfZShort,
  waltherZ,
  waltherZShort,
} from './walther-function.js';
export { fitWaltherLine, type WaltherFit, type WaltherLine } from './walther-line.js';
export { wrightBlend } from './wright-blend.js';
