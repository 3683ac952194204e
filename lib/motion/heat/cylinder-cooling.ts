import { requireNotNegative, requirePositive, requireWithin } from '../../base/checks.js';
import { standardGravity } from '../../base/constants.js';
import { requireShape, type Shape } from '../../base/shape.js';
import { airAt } from './air.js';

/**
 * Nusselt number of a cylinder across a wind.
 *
 * @param reynoldsNumber - with the diameter, 0 or more
 * @param prandtlNumber - above 0; product of both above 0.2
 * @see Churchill & Bernstein, J. Heat Transfer 99 (1977) 300
 * @public
 */
export function windNusseltNumber(reynoldsNumber: number, prandtlNumber: number): number {
  requireNotNegative(reynoldsNumber, 'reynoldsNumber', '');
  requirePositive(prandtlNumber, 'prandtlNumber', '');
  const laminar = 0.62 * Math.sqrt(reynoldsNumber) * Math.cbrt(prandtlNumber);
  const thin = (1 + (0.4 / prandtlNumber) ** (2 / 3)) ** 0.25;
  return 0.3 + (laminar / thin) * (1 + (reynoldsNumber / 282_000) ** 0.625) ** 0.8;
}

/**
 * Nusselt number of a cylinder that lies in still air.
 *
 * @param rayleighNumber - with the diameter, 0 to 1e12
 * @param prandtlNumber - above 0
 * @see Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049
 * @public
 */
export function stillNusseltNumber(rayleighNumber: number, prandtlNumber: number): number {
  requireNotNegative(rayleighNumber, 'rayleighNumber', '');
  requirePositive(prandtlNumber, 'prandtlNumber', '');
  const shape = (1 + (0.559 / prandtlNumber) ** (9 / 16)) ** (8 / 27);
  return (0.6 + (0.387 * rayleighNumber ** (1 / 6)) / shape) ** 2;
}

/**
 * The body of a shock as the air sees it.
 *
 * @public
 */
export interface CooledBody {
  /** Outer diameter [m], above 0. */
  readonly diameter: number;
  /** Length in the air [m], above 0. */
  readonly length: number;
  /** Emissivity of its surface, 0 to 1; bare metal about 0.1, anodised or painted 0.8 to 0.9 (from memory). */
  readonly emissivity: number;
}

/** Form of {@link CooledBody}. */
export const cooledBodyShape: Shape = { diameter: 'm', length: 'm', emissivity: '' };

/** Stefan-Boltzmann constant [W/(m²·K⁴)], exact (CODATA 2018). */
const stefanBoltzmann = 5.670_374_419e-8;

/**
 * Heat that a body gives to the air [W] by wind or, in still air, by its own updraught, whichever is more, and by radiation.
 *
 * @param body - sizes above 0 m, emissivity 0 to 1
 * @param temperature - of its surface [K], above 0
 * @param airTemperature - [K], above 0
 * @param windSpeed - [m/s], 0 or more
 * @throws InputError for an input outside its range
 * @public
 */
export function heatToAir(
  body: CooledBody,
  temperature: number,
  airTemperature: number,
  windSpeed: number,
): number {
  requireShape({ body }, { body: cooledBodyShape });
  requirePositive(body.diameter, 'body.diameter', 'm');
  requirePositive(body.length, 'body.length', 'm');
  requireWithin(body.emissivity, 0, 1, 'body.emissivity', '');
  requirePositive(temperature, 'temperature', 'K');
  requirePositive(airTemperature, 'airTemperature', 'K');
  requireNotNegative(windSpeed, 'windSpeed', 'm/s');
  const film = (temperature + airTemperature) / 2;
  const { kinematicViscosity, conductivity, prandtlNumber } = airAt(film);
  const difference = temperature - airTemperature;
  const rayleigh =
    (standardGravity * Math.abs(difference) * body.diameter ** 3 * prandtlNumber) /
    (film * kinematicViscosity ** 2);
  const nusselt = Math.max(
    windNusseltNumber((windSpeed * body.diameter) / kinematicViscosity, prandtlNumber),
    stillNusseltNumber(rayleigh, prandtlNumber),
  );
  const area = Math.PI * body.diameter * body.length;
  const radiation = body.emissivity * stefanBoltzmann * (temperature ** 4 - airTemperature ** 4);
  return area * (((nusselt * conductivity) / body.diameter) * difference + radiation);
}
