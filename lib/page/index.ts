export type { Pictures } from './block-html.js';
export type { ChecklistBlock, ChecklistStep, WriteIn } from './checklist.js';
export { contentHash } from './digest.js';
export { pageJson, pageTables, tableCsv } from './export.js';
export type { EmbeddedFont } from './html-document.js';
export { defineNotebook, type Notebook } from './notebook.js';
export {
  type AssumptionsBlock,
  allBlocks,
  type Block,
  type CautionBlock,
  type CheckBlock,
  type FigureBlock,
  type HeadingBlock,
  type ListBlock,
  type Page,
  pageFigures,
  pagePassed,
  type TableBlock,
  type TextBlock,
} from './page.js';
export type { Notice, Provenance } from './page-footer.js';
export { ParameterError } from './parameter-error.js';
export {
  acceptedText,
  defaultText,
  optionName,
  type ParameterText,
  parameterTexts,
} from './parameter-text.js';
export {
  type ChoiceParameter,
  choice,
  type IntegerParameter,
  integer,
  onePart,
  type Parameter,
  type Parameters,
  type ParameterValue,
  type ParameterValues,
  type ParameterWords,
  type PartList,
  type PartParameter,
  type QuantityParameter,
  quantity,
  type SeveralPartsParameter,
  severalParts,
} from './parameters.js';
export type { Program } from './program.js';
export { type ParameterTexts, readParameterValues } from './read-parameters.js';
export { type PageContent, renderHtml } from './render-html.js';
export { type IndexContent, type IndexEntry, renderIndex } from './render-index.js';
export type { RevealBlock, RevealedBlock } from './reveal.js';
