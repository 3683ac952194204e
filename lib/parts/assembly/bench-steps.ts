import { oneOf, requireShape } from '../../base/shape.js';
import type { KnownOfShock } from './assembled-shock.js';

const steps: Readonly<Record<keyof KnownOfShock, readonly string[]>> = {
  gas: [
    'Open the shock with its pressure let out and the cap away from your face. Fill the body to the rim with the shaft fully out.',
    'Screw the cap on and close it as you always do. Catch all the oil that comes out, or draw it off to your usual level with a syringe, and read the syringe.',
    'Measure the hollow of the cap: turn it over, fill it level with oil from the syringe, with whatever sits in it in its place.',
    'Write the first as "drawn-off" under "closing", the second as "cap-volume" under "inside". For a bladder, fill the space behind it from the syringe instead and write that as "volume" under "compensator".',
  ],
  inside: [
    'Measure from the seat of the seals to the rim under the cap with the depth rod of a calliper: "length" under "inside".',
    'Fill the cap, turned over, level with oil from a syringe: "cap-volume".',
    'Drop piston, nut and spacers into a syringe that holds oil and read by how much it rises: "solid-volume".',
  ],
  oilVolume: [
    'Fill the empty body from a syringe and read what went in: "poured" under "closing".',
    'Catch what leaves before the cap or the bleed is closed and read it too: "drawn-off".',
  ],
  closing: [
    'Note how far the shaft is pushed in as the cap or the bleed is closed: "shaft" under "closing".',
  ],
  seal: [
    'Take off the spring, empty the oil and leave the cap off. Hold the body upright with the shaft on a kitchen scale.',
    'Push down slowly and read the scale while the shaft moves; let it come back slowly and read again at the same place. 100 g are 0.98 N.',
    'Write both as "pushing-in" and "letting-out" in "scale" under "seal".',
  ],
};

/**
 * How to find out at the bench what the parts file does not say, in steps.
 *
 * @param quantity - one that {@link KnownOfShock} says is not known
 * @public
 */
export function benchSteps(quantity: keyof KnownOfShock): readonly string[] {
  requireShape({ quantity }, { quantity: oneOf('gas', 'inside', 'oilVolume', 'closing', 'seal') });
  return steps[quantity];
}
