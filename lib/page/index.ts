export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type {
  Build,
  ClosingPart,
  CompensatorKind,
  CompensatorPart,
  Corner,
  CornerOfCar,
  CourseKey,
  Cushion,
  DayTemperature,
  DensityReading,
  DiscValve,
  DropReading,
  DynoPart,
  DynoRecord,
  DynoSetup,
  ForceReading,
  GasLayout,
  GasSide,
  HoleEdge,
  HoleGroup,
  HoleReading,
  HoleShape,
  MeasuredThinning,
  MeasuredValues,
  MeasurementPart,
  OilBase,
  OilDefinition,
  OilPart,
  Parts,
  PartTolerances,
  Piston,
  PistonPart,
  Price,
  Reading,
  RecordedCourse,
  RecordedStroke,
  ScaleReading,
  SealFriction,
  SealInterval,
  ShearThinning,
  ShockInside,
  ShockLengths,
  ShockPart,
  ShockPartLengths,
  ShopOil,
  SpringPart,
  TimedShockPart,
  Timing,
  ViscosityDefinition,
  ViscosityPoint,
  ViscosityReading,
} from '../parts/index.js';
export type {
  Axis,
  Cell,
  Chart,
  Column,
  DataRow,
  Dimension,
  Dot,
  DotChart,
  DotSeries,
  Drawing,
  Figure,
  FigureText,
  LayoutName,
  LineChart,
  LinePoint,
  LineSeries,
  MarkedPoint,
  Padding,
  Rule,
  ScatterChart,
  ScatterPoint,
  ScatterSeries,
  Table,
} from '../plot/index.js';
export type { Block } from './blocks/block.js';
export { allBlocks, pageFigures, pagePassed } from './blocks/checked-page.js';
export type { ChecklistBlock, ChecklistStep, WriteIn } from './blocks/checklist.js';
export { contentHash } from './blocks/digest.js';
export { type Later, later, once, type Piece } from './blocks/later.js';
export type { DrawnShock, MotionBlock, MotionFrame } from './blocks/motion.js';
export { type Page, pageInPieces } from './blocks/page.js';
export type {
  AssumptionsBlock,
  CautionBlock,
  CheckBlock,
  FigureBlock,
  HeadingBlock,
  LinesBlock,
  ListBlock,
  TableBlock,
  TextBlock,
} from './blocks/plain-blocks.js';
export type { RevealBlock, RevealedBlock } from './blocks/reveal.js';
export type { Pictures } from './html/block-html.js';
export { pageJson, pageTables } from './html/export.js';
export type { EmbeddedFont } from './html/html-document.js';
export { motionPicture } from './html/motion-picture.js';
export type { BodyContent } from './html/page-body.js';
export type { Notice, Provenance } from './html/page-footer.js';
export type { Program } from './html/program.js';
export { type PageContent, renderHtml } from './html/render-html.js';
export { type IndexContent, type IndexEntry, renderIndex } from './html/render-index.js';
export { renderOneFile } from './html/render-one-file.js';
export { tableCsv } from './html/table-csv.js';
export { defineNotebook, type Notebook } from './notebook.js';
export { choice, integer, onePart, quantity, severalParts } from './parameters/declare-parameters.js';
export { ParameterError } from './parameters/parameter-error.js';
export {
  acceptedText,
  defaultText,
  optionName,
  type ParameterText,
  parameterTexts,
} from './parameters/parameter-text.js';
export type {
  ChoiceParameter,
  IntegerParameter,
  Parameter,
  Parameters,
  ParameterValue,
  ParameterValues,
  ParameterWords,
  PartList,
  PartParameter,
  QuantityParameter,
  SeveralPartsParameter,
} from './parameters/parameters.js';
export { type ParameterTexts, readParameterValues } from './parameters/read-parameters.js';
export { unansweredPage } from './unanswered.js';
