import {
  dissolutionTime,
  releasedAir,
  saturationAfterVacuum,
} from '../../lib/fill/air/bubble-dissolution.js';
import {
  typicalAirDiffusivity,
  typicalSiliconeAirSolubility,
  typicalSurfaceTension,
} from '../../lib/fill/air/typical-oil.js';
import { petroleumAirSolubility } from '../../lib/fluid/air/air-solubility.js';
import type { Block } from '../../lib/page/index.js';
import { duration, millilitres } from '../base/bench-wording.js';
import type { BuiltShock } from '../build-sheet/built-shock.js';

/** Vacuum of a small jar pump, an example [Pa]. */
const exampleVacuum = 5e3;
/** Bubble that is watched [m]. */
const exampleRadius = 0.25e-3;
/** Part of the pressure outside to which a sucked-in shaft may bring the oil, an example. */
const exampleSuction = 0.8;

/** Volume of air that a volume of the build's oil dissolves. */
function solubilityOf({ oil }: BuiltShock, temperature: number): number {
  return oil.base === 'silicone'
    ? typicalSiliconeAirSolubility
    : petroleumAirSolubility(temperature, oil.densityAt15Celsius);
}

/** What the oil holds in solution, in words and numbers. */
export function dissolvedAirTable(built: BuiltShock, temperature: number): Block {
  const airSolubility = solubilityOf(built, temperature);
  const pressure = built.closing.ambientPressure;
  const { oilVolume } = built.shock;
  const time = (saturation: number): string =>
    duration(
      dissolutionTime({
        radius: exampleRadius,
        pressure,
        saturation,
        airSolubility,
        diffusivity: typicalAirDiffusivity,
        surfaceTension: typicalSurfaceTension[built.oil.base],
      }),
    );
  const emptied = saturationAfterVacuum(exampleVacuum, pressure);
  const suction = { saturated: pressure, now: exampleSuction * pressure };
  return {
    kind: 'table',
    id: 'dissolved-air',
    title: 'Air that is dissolved in the oil',
    table: {
      columns: [
        { label: 'Question', unit: '' },
        { label: 'Answer', unit: '' },
      ],
      rows: [
        ['Dissolved in the oil of one shock that stood open', millilitres(airSolubility * oilVolume)],
        [
          `Comes out in time where the oil stands at ${100 * exampleSuction} % of the air outside`,
          millilitres(releasedAir(oilVolume, airSolubility, suction)),
        ],
        [
          `Left in the bottle after a long stand at ${exampleVacuum / 1e5} bar absolute`,
          `${(100 * emptied).toFixed(0)} %`,
        ],
        ['A bubble of 0.5 mm dissolves in oil that stood open within', time(1)],
        ['in oil that holds 80 % of the air it could', time(0.8)],
        ['in oil after that vacuum', time(emptied)],
      ],
    },
    note: 'Diffusion of air in oil is an order of magnitude, and so are the last three rows. Henry’s law; Epstein & Plesset.',
  };
}
