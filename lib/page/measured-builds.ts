import type { Build, MeasuredValues, Parts } from '../parts/parts.js';
import { formatQuantity, roundedText } from '../units/index.js';
import type { Block } from './blocks/block.js';
import { blocksOfPiece, later } from './blocks/later.js';
import { type Page, pageInPieces } from './blocks/page.js';
import type { Parameters, ParameterValues } from './parameters/parameters.js';

/** What a measured build came out as, and how good its damping is. */
export function cameOutAs({ viscosity, holes, friction, doubt }: MeasuredValues): string {
  const oil = formatQuantity(viscosity, 'kinematicViscosity', 'cSt', 3);
  const share = roundedText(100 * Math.abs(holes - 1), 2);
  const drilled = holes === 1 ? 'as stated' : `${share} % ${holes > 1 ? 'larger' : 'smaller'} than stated`;
  const rubbing = formatQuantity(friction, 'force', 'N', 2);
  return `oil of ${oil} at 25 °C, holes ${drilled}, friction ${rubbing}; its damping at 300 mm/s is good to ${roundedText(100 * doubt, 2)} % either way (19 of 20)`;
}

/** That a build is taken as measured. */
function sentenceOf({ name, measured }: Build): readonly string[] {
  if (measured === undefined) return [];
  return [
    `${name} is taken as measured, not as stated: ${cameOutAs(measured)}. Gas, gap and lengths are as stated.`,
  ];
}

/** The builds whose parts are among the values of a page; all of the file where it asks for no part. */
function buildsOf(
  { builds }: Parts,
  declaration: Parameters,
  values: ParameterValues<Parameters>,
): readonly Build[] {
  const asks = Object.values(declaration).some(({ kind }) => kind === 'part' || kind === 'parts');
  if (!asks) return builds;
  const chosen = new Set<unknown>(Object.values(values).flat());
  return builds.filter((build) =>
    [build, build.oil, build.piston, build.shock].some((part) => chosen.has(part)),
  );
}

/** Blocks with something more that they rest on: before the rest of it, or at the end where there is none. */
function resting(blocks: readonly Block[], items: readonly string[]): readonly Block[] {
  const place = blocks.findLastIndex(({ kind }) => kind === 'assumptions');
  if (place < 0) return [...blocks, { kind: 'assumptions', items }];
  return blocks.map(
    (block, index): Block =>
      index === place && block.kind === 'assumptions'
        ? { ...block, items: [...items, ...block.items] }
        : block,
  );
}

/**
 * A page that says which of its builds are taken as measured: the last of what it rests on. A page of the measurements themselves begins at the parts as stated.
 *
 * @param page - as its notebook made it
 */
export function sayingMeasured(
  page: Page,
  parts: Parts,
  declaration: Parameters,
  values: ParameterValues<Parameters>,
): Page {
  if ('which' in declaration) return page;
  const items = buildsOf(parts, declaration, values).flatMap(sentenceOf);
  if (items.length === 0) return page;
  const { answer, sources, pieces } = page;
  const last = pieces?.at(-1);
  return pieces === undefined || last === undefined
    ? { ...page, blocks: resting(page.blocks, items) }
    : pageInPieces({
        answer,
        sources,
        pieces: [...pieces.slice(0, -1), later(() => resting(blocksOfPiece(last), items))],
      });
}
