import { requireWithin } from '../../base/checks.js';

/**
 * Air that mineral oil can hold in solution, as volume of air (at the temperature and the air's own pressure) over volume of
 * oil; silicone holds about twice as much (0.168 to 0.190 at 25 °C, data sheets, from memory). The dissolved mass is proportional to the pressure (Henry).
 *
 * `L = 7.70 · 0.300 exp(0.639 (700 − T)/T · ln(3.333 · 0.095)) · (0.980 − d)`, d the density at 15 °C in g/cm³.
 *
 * @param temperature - temperature [K], 233.15 to 473.15
 * @param densityAt15Celsius - density at 15 °C [kg/m³], 800 to 950
 * @throws InputError outside these
 * @see ASTM D2779, from memory
 * @public
 */
export function petroleumAirSolubility(temperature: number, densityAt15Celsius: number): number {
  requireWithin(temperature, 233.15, 473.15, 'temperature', 'K');
  requireWithin(densityAt15Celsius, 800, 950, 'densityAt15Celsius', 'kg/m³');
  const ofReferenceOil =
    0.3 * Math.exp(((0.639 * (700 - temperature)) / temperature) * Math.log(3.333 * 0.095));
  return 7.7 * ofReferenceOil * (0.98 - densityAt15Celsius / 1000);
}
