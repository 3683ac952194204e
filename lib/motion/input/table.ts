import { requireFinite } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';

/** A smooth line through the points of a table; `evaluate` writes what it finds into the object. */
export interface Table {
  value: number;
  /** First and second derivative over the time. */
  slope: number;
  bend: number;
  readonly evaluate: (time: number) => void;
}

/**
 * Line through a table by cubics whose slopes are chosen so that the line never overshoots its points: Fritsch & Butland, SIAM J. Sci.
 * Stat. Comput. 5 (1984) 300 (from memory). Its slope is continuous from the first point to the last, where it is that of the parabola through the
 * three points there: what is recorded may begin and end in motion. Before and after the table the line stands still.
 *
 * @throws InputError where the times do not rise, or a number is missing
 */
export function risingTable(
  times: readonly number[],
  values: readonly number[],
  timesField: string,
  valuesField: string,
): Table {
  requireRisingTable(times, values, timesField, valuesField);
  const count = times.length;
  const x = Float64Array.from(times);
  const y = Float64Array.from(values);
  const slopes = cubicSlopes(x, y);
  let place = 0;
  const table: Table = {
    value: 0,
    slope: 0,
    bend: 0,
    evaluate: (time) => {
      if (time < (x[0] as number) || time > (x[count - 1] as number)) {
        table.value = time < (x[0] as number) ? (y[0] as number) : (y[count - 1] as number);
        table.slope = 0;
        table.bend = 0;
        return;
      }
      while (place > 0 && (x[place] as number) > time) place--;
      while (place < count - 2 && (x[place + 1] as number) <= time) place++;
      const width = (x[place + 1] as number) - (x[place] as number);
      const share = (time - (x[place] as number)) / width;
      const rise = (y[place + 1] as number) - (y[place] as number);
      const first = width * (slopes[place] as number);
      const second = 3 * rise - 2 * first - width * (slopes[place + 1] as number);
      const third = first + width * (slopes[place + 1] as number) - 2 * rise;
      table.value = (y[place] as number) + share * (first + share * (second + share * third));
      table.slope = (first + share * (2 * second + 3 * share * third)) / width;
      table.bend = (2 * second + 6 * share * third) / (width * width);
    },
  };
  return table;
}

function requireRisingTable(
  times: readonly number[],
  values: readonly number[],
  timesField: string,
  valuesField: string,
): void {
  if (times.length < 2 || times.length !== values.length) {
    throw new InputError({
      field: timesField,
      value: `${times.length} times and ${values.length} values`,
      accepted: 'two or more, as many times as values',
    });
  }
  times.forEach((time, i) => {
    requireFinite(time, `${timesField}[${i}]`, 's');
    requireFinite(values[i] as number, `${valuesField}[${i}]`, 'm');
    if (i > 0 && !(time > (times[i - 1] as number))) {
      throw new InputError({
        field: `${timesField}[${i}]`,
        value: time,
        unit: 's',
        accepted: `later than the time before, ${times[i - 1]}`,
      });
    }
  });
}

/** Slopes at the points: a weighted harmonic mean of the neighbours, 0 where the line turns; at the ends that of three points. */
function cubicSlopes(x: Float64Array, y: Float64Array): Float64Array {
  const last = x.length - 1;
  const widths = Float64Array.from({ length: last }, (_, i) => (x[i + 1] as number) - (x[i] as number));
  const rises = widths.map((width, i) => ((y[i + 1] as number) - (y[i] as number)) / width);
  const slopes = new Float64Array(x.length);
  for (let i = 1; i < last; i++) {
    const [before, after] = [widths[i - 1] as number, widths[i] as number];
    const [left, right] = [rises[i - 1] as number, rises[i] as number];
    if (left * right > 0) {
      const share = (before + 2 * after) / (3 * (before + after));
      slopes[i] = (left * right) / (share * right + (1 - share) * left);
    }
  }
  slopes[0] = endSlope(widths[0] as number, rises[0] as number, widths[1], rises[1]);
  slopes[last] = endSlope(
    widths[last - 1] as number,
    rises[last - 1] as number,
    widths[last - 2],
    rises[last - 2],
  );
  return slopes;
}

/**
 * Slope at an end, of the parabola through the three points there, held to what lets the line rise or fall with its points: Fritsch & Carlson, SIAM J. Numer. Anal. 17
 * (1980) 238 (from memory); the three-point formula of PCHIM in SLATEC. Two points make a straight line.
 */
function endSlope(width: number, rise: number, nextWidth?: number, nextRise?: number): number {
  if (nextWidth === undefined || nextRise === undefined) return rise;
  const slope = ((2 * width + nextWidth) * rise - width * nextRise) / (width + nextWidth);
  if (slope * rise <= 0) return 0;
  return rise * nextRise < 0 && Math.abs(slope) > 3 * Math.abs(rise) ? 3 * rise : slope;
}
