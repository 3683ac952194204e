import { describe, expect, it } from 'vitest';
import { answerSentence, meaningSentences, timeAt } from '../../notebooks/warm-up/words.js';
import { files } from './answers.js';

/** Eight minutes that warm it by 16 K, the first half in 100 s, and eight that cool it again. */
const times = Float64Array.from([0, 60, 120, 480, 540, 660, 960]);
const temperatures = Float64Array.from([300, 306, 309, 316, 312, 304, 301]);
const [build] = files.demo.builds;
if (build === undefined) throw new Error('no build');
const asked = { build, air: 300, run: 480, wind: 2, middle: 0.3 };
const heat = { bumps: () => 1.5, landings: () => 0.5, ofOneBump: 0.1, ofOneLanding: 0.5 };
const warmed = (change: number) => ({
  result: {
    times,
    temperatures: temperatures.map((one) => 300 + change * (one - 300)),
    powers: temperatures,
    endTemperature: 301,
    highestTemperature: 316,
    warnings: [],
  },
  body: undefined as never,
  wind: 2,
  runEnd: 3,
  speed: 0.3,
  left: (temperature: number) => 1 - (temperature - 300) / 100,
  assumptions: [],
});
const meaning = (more: Partial<typeof asked> = {}, with_ = heat) =>
  meaningSentences(warmed(1), warmed(1.5), { ...asked, ...more }, with_);

describe('what warm-up says of a line that is known', () => {
  it('the time at which a temperature is passed, straight between its points, from the start of the stretch', () => {
    const line = { times, temperatures };
    // Two thirds of the second step: 306 + 3 · 2/3; cooling, 312 − 8 · 3/4 is 90 s of 120 s after 60 s.
    expect(timeAt(line, 0, 3, 308)).toBeCloseTo(100, 9);
    expect(timeAt(line, 3, 6, 306)).toBeCloseTo(60 + 90, 9);
    expect(timeAt(line, 3, 6, 317)).toBeUndefined();
    expect(timeAt(line, 3, 5, 302)).toBeUndefined();
    expect(timeAt({ times, temperatures: new Float64Array(7).fill(300) }, 0, 3, 300)).toBeUndefined();
  });

  it('its sentences, by hand', () => {
    // Half of 16 K is 308 K, there after 100 s and again 60 s + 60 s into the rest; 1.5 W of 2 W; without wind 24 K instead of 16 K.
    expect(meaning()).toEqual([
      'The track makes 2 W of heat in this shock, 75 % of it by bumps; half of the rise is there after 1.7 min.',
      'Thinner oil makes hardly less heat: what a car falls or is thrown up it has to lose, whatever the oil.',
      'Without any wind it would be 50.9 °C, 8.0 K more.',
      'Parked in still air it loses half of that in 2 min.',
      'For the day plan: its temperatures are those of the oil. Count 16.0 K on top of the air for the end of such a run and nothing for its start; choose the oil for what lies between, about 34.9 °C at this air.',
    ]);
    expect(meaning({ wind: 0 })[2]).toBe('No wind cools it.');
    expect(meaning({}, { ...heat, bumps: () => 0, landings: () => 0 })).toEqual([
      'Without bumps and landings nothing warms the oil.',
    ]);
  });

  it('the answer names the end of the run and the ends of the guesses', () => {
    const answer = answerSentence(warmed(1), [warmed(1.25), warmed(0.5)], asked);
    expect(answer).toContain(
      'In 8 min the oil of buggy front, clear 350, warms from 26.9 °C to 42.9 °C, 16.0 K above',
    );
    expect(answer).toContain(
      '(8.0 to 20.0 K by what nobody measured), and 16 % of the damping at 300 mm/s is gone.',
    );
    expect(answerSentence(warmed(0), [], asked)).toContain('the damping is what it was');
  });
});
