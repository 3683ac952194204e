export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Warning } from '../base/warning.js';
export { type WarningCode, warningCodes } from '../base/warning-codes.js';
export { type AiryOil, type CompressedAiryOil, compressAiryOil } from './air/air-in-oil.js';
export { petroleumAirSolubility } from './air/air-solubility.js';
export {
  type Bounds,
  type BubblyOil,
  bubblyOil,
  bubblyViscosityRatio,
  rigidBubblesViscosityRatio,
} from './air/bubbly-viscosity.js';
export { blendFraction, blendViscosity } from './blend/blend.js';
export type { BlendCase, BlendSpread, MeasuredBlend } from './blend/blend-case.js';
export type { BlendRule, OilPair } from './blend/blend-estimates.js';
export {
  arrheniusBlend,
  astmBlend,
  type BlendComponent,
  kendallMonroeBlend,
  molarMassBlend,
  polymerBlend,
  refutasBlend,
} from './blend/blend-rules.js';
export { blendInteraction, interactingBlend } from './blend/grunberg-nissan.js';
export { wrightBlend } from './blend/wright-blend.js';
export { barusViscosityRatio, siliconeBulkModulus } from './oil/bulk-modulus.js';
export { oilDensity, thermalExpansionCoefficient } from './oil/density.js';
export { fluidAt, type OilState } from './oil/fluid-at.js';
export type { FluidState } from './oil/fluid-state.js';
export { createOil, type Oil } from './oil/oil.js';
export type { MeasuredThinning, OilBase, OilDefinition, ViscosityDefinition } from './oil/oil-definition.js';
export { type PolymerState, rouseRelaxationTime, shearThinningWarnings } from './shear/shear-thinning.js';
export { siliconeMolarMass, siliconeViscosityOfMolarMass } from './shear/silicone-molar-mass.js';
export { localExponent, type ShearThinning, viscosityRatio } from './shear/thinning-viscosity.js';
export {
  barryLine,
  type SiliconeLine,
  siliconeLineFromCoefficient,
  viscosityTemperatureCoefficient,
} from './viscosity/barry-silicone.js';
export { isoGradeViscosity } from './viscosity/iso-grade.js';
export { kinematicViscosityOfSayboltUniversal, sayboltUniversalSeconds } from './viscosity/saybolt.js';
export { tradeWeightViscosity } from './viscosity/trade-weight.js';
export { viscosityIndex } from './viscosity/viscosity-index.js';
export { waltherLineFromViscosityIndex } from './viscosity/viscosity-index-line.js';
export type { ViscosityInterval } from './viscosity/viscosity-interval.js';
export { temperatureAt, type ViscosityLine, viscosityAt } from './viscosity/viscosity-line.js';
export type { ViscosityPoint } from './viscosity/viscosity-point.js';
export {
  kinematicViscosityOfZ,
  kinematicViscosityOfZShort,
  waltherZ,
  waltherZShort,
} from './viscosity/walther-function.js';
export { fitWaltherLine, type WaltherFit, type WaltherLine } from './viscosity/walther-line.js';
