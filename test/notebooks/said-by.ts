import { readFileSync } from 'node:fs';
import { InputError } from '../../lib/base/input-error.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Notebook } from '../../lib/page/index.js';
import { inKeysOfTheFile } from '../../lib/page/refusal.js';
import { type Parts, readParts } from '../../lib/parts/index.js';
import type { Chart, Figure } from '../../lib/plot/chart/figure.js';
import type { Cell, Column, Table } from '../../lib/plot/chart/table.js';
import { files, pageOf } from './answers.js';
import { oddBuilds, otherSettings, type Written } from './other-settings.js';
import { rareCases } from './rare-cases.js';

const partsOf = (name: string): Parts =>
  readParts(readFileSync(new URL(`../parts/files/${name}.yaml`, import.meta.url), 'utf8'));

/** What few shocks have and what hardly any has, for pages that are quick with it. */
const seldom = { ...files, odd: partsOf('odd'), rare: partsOf('rare') } as const;

const silent = ['kind', 'id', 'unit', 'dimension', 'format'];

/** Every text in a value, in order; of tables and pictures the words, and which way their numbers go. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(textsOf);
  if (typeof value !== 'object' || value === null) return [];
  if ('claim' in value && 'passed' in value) {
    const { passed, claim, ...rest } = value;
    return [`${claim}: ${passed === true ? 'holds' : 'FAILS'}`, ...textsOf(rest)];
  }
  if ('columns' in value && 'rows' in value) return tableTexts(value as Table);
  return Object.entries(value).flatMap(([key, inner]) => {
    if (silent.includes(key)) return [];
    return key === 'figure' ? figureTexts(inner) : textsOf(inner);
  });
}

/** Of a table its columns, its rows, and which way a column goes that goes one way. */
function tableTexts({ columns, rows }: Table): readonly string[] {
  const ways = columns.flatMap(({ label }, place) => {
    const values = rows.map((row) => row[place]).filter((value) => typeof value === 'number');
    const way = goes(values);
    return values.length > 2 && /^(?:up|down)(?:,|$)/u.test(way) ? [`${label}: ${way}`] : [];
  });
  return [...textsOf(columns), ...rows.map((row) => rowText(row, columns)), ...ways];
}

/** A row of a table: of a number its sign, of a place without one a dot, and which of two neighbours is larger that are measured alike. */
function rowText(row: readonly Cell[], columns: readonly Pick<Column, 'unit' | 'dimension'>[]): string {
  const cell = (value: Cell): string => {
    if (value === null) return '·';
    if (typeof value === 'string') return value;
    return value < 0 ? '−#' : '#';
  };
  return row.reduce<string>((text, value, place) => {
    const [before, own, last] = [row[place - 1], columns[place], columns[place - 1]];
    const alike = own?.unit === last?.unit && own?.dimension === last?.dimension;
    const numbers = typeof value === 'number' && typeof before === 'number' && alike;
    return `${text}${place === 0 ? '' : numbers ? order(before, value) : ' | '}${cell(value)}`;
  }, '');
}

function order(one: number, other: number): string {
  if (Math.abs(one - other) <= 1e-6 * Math.max(Math.abs(one), Math.abs(other))) return ' = ';
  return one < other ? ' < ' : ' > ';
}

/** The words of a picture and which way each line goes. */
function figureTexts({ title, alt, table, chart }: Figure): readonly string[] {
  return [title, alt, ...textsOf(table.columns), ...chartTexts(chart)];
}

function chartTexts({ kind, shows }: Chart): readonly string[] {
  if (kind === 'dot')
    return [
      shows.value.label,
      ...shows.series.flatMap(({ name, dots }) =>
        dots.map(
          (dot) => `${rowText([name, dot.category, dot.value], [])}${beside([{ ...dot, y: dot.value }])}`,
        ),
      ),
    ];
  const axes = [shows.x.label, shows.y.label];
  if (kind === 'scatter') return [...axes, ...shows.series.map(({ name }) => name)];
  const lines = shows.series.map(
    ({ name, points }) => `${name}: ${goes(points.map(({ y }) => y))}${beside(points)}`,
  );
  // From the lowest to the highest, or from left to right.
  const rules = (shows.rules ?? []).toSorted((a, b) => a.axis.localeCompare(b.axis) || a.value - b.value);
  const points = (shows.points ?? []).toSorted((a, b) => a.x - b.x);
  const marks = [...rules, ...points].map(({ label }) => label);
  return [...axes, ...lines, ...marks.filter((label) => label !== '')];
}

/** Which way numbers go from the first to the last, and their signs where some are negative. */
function goes(values: readonly number[]): string {
  const size = Math.max(...values.map(Math.abs));
  const steps = values.slice(1).map((value, place) => value - (values[place] ?? 0));
  const [up, down] = [steps.some((step) => step > 1e-9 * size), steps.some((step) => step < -1e-9 * size)];
  const rises = steps.find((step) => Math.abs(step) > 1e-9 * size) ?? 0;
  const both = rises > 0 ? 'up and down' : 'down and up';
  const way = up && down ? both : up ? 'up' : down ? 'down' : 'level';
  const below = values.some((value) => value < 0);
  const sign = !below ? '' : values.some((value) => value > 0) ? ', either sign' : ', below zero';
  return way + sign;
}

/** What is said of a line or a dot that does not lie in its band. */
function beside(
  points: readonly { readonly y: number; readonly low?: number; readonly high?: number }[],
): string {
  const size = 1e-9 * Math.max(...points.map(({ y }) => Math.abs(y)));
  const out = points.some(({ y, low = y, high = y }) => low > y + size || high < y - size);
  return out ? ', BESIDE ITS BAND' : '';
}

/** A range in a sentence: `14.1 to 14.4 N`, `198 mm/s to 280 mm/s`. */
const range = /(?<![\d.\p{L}])(\d+(?:\.\d+)?)((?: [\p{L}°%/²³]+)?) to (\d+(?:\.\d+)?)(?:\2)(?![\d.:])/gu;

function masked(text: string): string {
  return text
    .replaceAll(range, (said, from, _unit, to) => (Number(from) > Number(to) ? `${said} (falling)` : said))
    .replaceAll(/[\u00a0\u202f]/gu, ' ')
    .replaceAll(/(?<![\d\p{L}])[−-](?=\d)/gu, '−')
    .replaceAll(/(?:(?<=[\d\p{L}])[−-])?(?:\d[\d.,]*\d|\d)(?:e[+−-]?\d+)?/gu, '#')
    .trim();
}

/** What a page says, with numbers as #. */
export function saidBy(notebook: Notebook, parts = files.demo, written: Written = {}): string {
  const { title, question, parameters } = notebook;
  const settings = Object.values(parameters).flatMap(({ label, help }) => [label, help]);
  const page = pageOf(notebook, parts, written);
  const blocks = page.blocks.flatMap((block: Block) => ['', ...textsOf(block)]);
  const lines = [title, question, '', page.answer, '', ...settings, ...blocks, '', ...page.sources].map(
    masked,
  );
  // What is said twice, as on the sheet of each shock of a pair, need be read once.
  return `${lines.filter((line, place) => line === '' || lines.indexOf(line) === place).join('\n')}\n`;
}

/** What it says with two other files that it does not say with the demo parts, or why it has no answer. */
export function saidOfOthers(notebook: Notebook): string {
  return saidBesides(
    notebook,
    (['twoCars', 'smallest'] as const).map((file) => ({ name: file, parts: files[file], written: {} })),
  );
}

/** What it says with other settings, or why it has no answer. */
export function saidWithOtherSettings(notebook: Notebook): string {
  const casesOf = (file: keyof typeof seldom, all: readonly Written[] = []): readonly Case[] =>
    all.map((written) => {
      const settings = Object.entries(written).map(([key, value]) => `${key} ${value}`);
      return { name: [file, ...settings].join(', '), parts: seldom[file], written };
    });
  return saidBesides(notebook, [
    ...casesOf('demo', otherSettings[notebook.name]),
    ...casesOf('odd', oddBuilds[notebook.name]),
    ...(['rare', 'twoCars', 'odd'] as const).flatMap((file) =>
      casesOf(file, rareCases[notebook.name]?.[file]),
    ),
  ]);
}

interface Case {
  readonly name: string;
  readonly parts: Parts;
  readonly written: Written;
}

/** What a page says in each case that it does not say with the demo parts, nor in a case before. */
function saidBesides(notebook: Notebook, cases: readonly Case[]): string {
  const known = new Set(saidBy(notebook).split('\n'));
  const said = cases.map(({ name, parts, written }) => {
    const lines = textOrRefusal(notebook, parts, written)
      .split('\n')
      .filter((line) => !known.has(line));
    for (const line of lines) known.add(line);
    return `${name}:\n${lines.join('\n')}\n`;
  });
  return said.join('\n');
}

/** What it says, or why it has no answer. */
export function textOrRefusal(notebook: Notebook, parts: Parts, written: Written): string {
  try {
    return saidBy(notebook, parts, written);
  } catch (error) {
    const refusal = inKeysOfTheFile(error, notebook.parameters);
    if (!(refusal instanceof InputError)) throw error;
    return masked(refusal.message);
  }
}
