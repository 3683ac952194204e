import { blendViscosity } from '../../lib/fluid/blend/blend.js';
import { oilDensity } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil, type Oil } from '../../lib/fluid/oil/oil.js';
import type { OilBase, ViscosityDefinition } from '../../lib/fluid/oil/oil-definition.js';
import { referenceOils } from '../../lib/fluid/viscosity/viscosity-index-references.js';
import { viscosityAt } from '../../lib/fluid/viscosity/viscosity-line.js';
import { notCovered } from './fluid-functions.js';
import { fluidRows, siliconeOf10, viscosityIndexTable } from './fluid-rows.js';

const kelvin = (celsius: number): number => celsius + 273.15;
const point = (celsius: number, viscosity: number) => ({
  temperature: kelvin(celsius),
  kinematicViscosity: viscosity * 1e-6,
});
const oilOf = (base: OilBase, viscosity: ViscosityDefinition): Oil => createOil({ base, viscosity });
const siliconeOf = (viscosity: number): Oil =>
  oilOf('silicone', { kind: 'silicone', point: point(25, viscosity) });
const hydraulicOil = (): Oil =>
  oilOf('petroleum', { kind: 'points', points: [point(40, 32), point(100, 5.4)] });

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}

/** How many rows of the published values stand behind a claim, and how closely they must be met. */
function publishedTable(
  groups: readonly (readonly [what: string, pattern: RegExp, source: string])[],
): string {
  const rows = groups.map(([what, pattern, source]) => {
    const found = fluidRows.filter(({ id }) => pattern.test(id) && notCovered[id] === undefined);
    const tolerances = found.map(({ rtol }) => rtol ?? Number.POSITIVE_INFINITY);
    const [tight, loose] = [Math.min(...tolerances), Math.max(...tolerances)];
    const tolerance = (value: number): string =>
      Number.isFinite(value) ? value.toExponential() : 'the nearest whole';
    const met = tight === loose ? tolerance(tight) : `${tolerance(tight)} to ${tolerance(loose)}`;
    return [what, source, String(found.length), met];
  });
  return table(['what', 'source', 'values', 'met to'], rows);
}

function change(): string {
  const oils = [siliconeOf(350), hydraulicOil()];
  const rows = [-10, 0, 8, 20, 25, 38, 60].map((celsius) => [
    `${celsius} °C`.replace('-', '−'),
    ...oils.map((oil) => (fluidAt(oil, kelvin(celsius)).kinematicViscosity * 1e6).toPrecision(3)),
  ]);
  return table(
    ['', 'silicone, 350 mm²/s at 25 °C', 'mineral oil, 32 mm²/s at 40 °C and 5.4 at 100 °C'],
    rows,
  );
}

/** Error of lines against the measured silicone, by how the line was defined. */
function measuredSilicone(): string {
  const measured = new Map(siliconeOf10.map(([celsius, , viscosity]) => [celsius, viscosity]));
  const at = (celsius: number) => point(celsius, measured.get(celsius) ?? Number.NaN);
  const points = (...celsius: readonly number[]): ViscosityDefinition => ({
    kind: 'points',
    points: celsius.map(at),
  });
  const definitions: readonly [string, ViscosityDefinition][] = [
    ['points at 0 and 40 °C', points(0, 40)],
    ['points at 40 and 100 °C', points(40, 100)],
    ['nine points from −10 to 70 °C', points(-10, 0, 10, 20, 30, 40, 50, 60, 70)],
    [
      'point at 20 °C and its coefficient 0.556',
      { kind: 'viscosity-temperature-coefficient', point: at(20), coefficient: 0.556 },
    ],
    ["point at 20 °C and Barry's law", { kind: 'silicone', point: at(20) }],
  ];
  const temperatures = [-20, 0, 20, 40, 60, 80];
  const rows = definitions.map(([what, definition]) => [
    what,
    ...temperatures.map((celsius) => {
      const viscosity = viscosityAt(oilOf('silicone', definition).typical, kelvin(celsius)) * 1e6;
      const error = 100 * (viscosity / (measured.get(celsius) ?? Number.NaN) - 1);
      return `${Math.abs(error) < 0.05 ? '0.0' : error.toFixed(1).replace('-', '−')} %`;
    }),
  ]);
  return table(['line from', ...temperatures.map((celsius) => `${celsius} °C`.replace('-', '−'))], rows);
}

function indexTable(): string {
  const errors = viscosityIndexTable.map(([y, low, high]) => {
    const { index0, index100 } = referenceOils(y);
    return Math.max(Math.abs(index0 / low - 1), Math.abs(index100 / high - 1));
  });
  return `All ${errors.length} rows of table 1 of ASTM D2270 follow to ${(100 * Math.max(...errors)).toFixed(2)} %.`;
}

function densities(): string {
  const rows = [-10, 0, 15, 25, 40, 60].map((celsius) => [
    `${celsius} °C`.replace('-', '−'),
    ...(['silicone', 'petroleum'] as const).map((base) => oilDensity(base, kelvin(celsius)).toFixed(1)),
  ]);
  return table(['', 'silicone, kg/m³', 'petroleum oil of 870 at 15 °C, kg/m³'], rows);
}

function blends(): string {
  const rules = ['astm-d7152', 'refutas', 'arrhenius', 'molar-mass', 'polymer', 'kendall-monroe'] as const;
  const rows = [
    [350, 500],
    [200, 350],
    [350, 1000],
    [100, 1000],
  ].map(([thin = 0, thick = 0]) => {
    const pair = { first: siliconeOf(thin), second: siliconeOf(thick) };
    const blend = blendViscosity({ pair, temperature: kelvin(25) }, 0.5);
    const percent = (value: number): string => {
      const difference = 100 * (value / blend.typical - 1);
      return `${difference < 0 ? '−' : '+'}${Math.abs(difference).toFixed(1)} %`;
    };
    return [
      `${thin} + ${thick}`,
      ...rules.map((rule) => ((blend.rules[rule] ?? Number.NaN) * 1e6).toFixed(1)),
      `${percent(blend.low)} to ${percent(blend.high)}`,
    ];
  });
  return table(
    ['50/50, mm²/s at 25 °C', ...rules.map((rule) => `\`${rule}\``), 'spread about the default'],
    rows,
  );
}

/** Blocks of the documentation that are computed, by page and name. */
export const computedBlocks: readonly [page: string, block: string, text: () => string][] = [
  ['viscosity-temperature.md', 'change', change],
  ['viscosity-temperature.md', 'measured-silicone', measuredSilicone],
  ['viscosity-temperature.md', 'index-table', indexTable],
  [
    'viscosity-temperature.md',
    'published',
    () =>
      publishedTable([
        ['function Z, its inverse, lines', /^d341_/u, 'ASTM D341'],
        ['line of an improved oil, far outside its points', /^walther_fails/u, 'MIL-PRF-5606, typical data'],
        ['viscosity index, printed examples', /^d2270_(?:printed|VI_13)/u, 'ASTM D2270'],
        ['reference oils, index solved backwards', /^d2270_(?:VIpoly|tab|LH|solve)/u, 'ASTM D2270'],
        ['Saybolt seconds', /^(?:d2161|hi_table)_/u, 'ASTM D2161, Hydraulic Institute'],
        ['grades', /^iso3448_/u, 'ISO 3448'],
        ['trade weights', /^trade_weight_/u, 'common practice, no source'],
        [
          'silicone: ratio, energy, coefficient, molar mass',
          /^pdms_(?:barry|vtc|M_)/u,
          'Barry 1946, ASTM D4283',
        ],
        ['relaxation time', /^pdms_rouse/u, 'Rouse 1953'],
      ]),
  ],
  ['oil-density.md', 'densities', densities],
  [
    'oil-density.md',
    'published',
    () =>
      publishedTable([
        ['density of silicone', /^pdms_rho/u, 'Dee, Ougizawa & Walsh 1992'],
        ['bulk modulus of silicone', /^pdms_KT/u, 'Dee, Ougizawa & Walsh 1992'],
        ['volume correction of lubricating oil', /^d1250_/u, 'ASTM D1250-80, table 54D'],
        ['air dissolved in mineral oil', /^d2779_/u, 'ASTM D2779'],
        ['viscosity under pressure', /^barus_/u, 'Barus 1893'],
        ['bulk modulus with free air', /^keff_/u, 'Cho, Lee & Oh 2002; Wylie & Streeter 1983'],
      ]),
  ],
  ['blending.md', 'blends', blends],
  [
    'blending.md',
    'published',
    () =>
      publishedTable([
        ['ASTM function', /^blend_astm/u, 'ASTM D7152'],
        ["Wright's method", /^blend_wright/u, 'ASTM D7152'],
        ['blending number, worked example', /^refutas_/u, 'Maples 2000'],
        ['blending number', /^blend_refutas/u, 'Maples 2000'],
        ['additive logarithms', /^blend_arrhenius/u, 'Arrhenius 1887'],
        ['additive cube roots', /^blend_kendall/u, 'Kendall & Monroe 1917'],
        ['3.4th power', /^blend_power/u, 'Berry & Fox 1968'],
        ['molar mass', /^blend_barry/u, 'Barry 1946'],
        ['measured blend', /^blend_grunberg/u, 'Grunberg & Nissan 1949'],
        ['share for a wanted viscosity', /^blend_fraction/u, 'Arrhenius; ASTM D7152'],
      ]),
  ],
];
