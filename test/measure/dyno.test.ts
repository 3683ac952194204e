import { describe, expect, test } from 'vitest';
import { dynoReadings } from '../../lib/measure/dyno/dyno-readings.js';
import { linearDyno } from '../../lib/measure/dyno/linear-dyno.js';
import { readDynoFile } from '../../lib/measure/dyno/read-dyno.js';
import { smoothStroke } from '../../lib/measure/dyno/smooth-stroke.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import { localPolynomial } from '../../lib/numeric/least-squares/local-polynomial.js';
import { normalQuantile } from '../../lib/numeric/normal-distribution.js';
import { samplePoints } from '../../lib/numeric/samples.js';
import checks from '../published/measure-checks.json' with { type: 'json' };
import { checkRow, inventedLaw, type RowValues, stateOfRow, unknownOfRow } from './invented-shock.js';

const truth = stateOfRow(checkRow<{ true: RowValues }, unknown>('shock-force').inputs.true);
const stated = inventedLaw(truth);
const setup = { temperature: 295.15, position: 0.014, uncertainty: 0.1, relativeUncertainty: 0.01 };
const speeds = [0.02, 0.05, 0.1, 0.2, 0.3, -0.02, -0.05, -0.1, -0.2, -0.3];

/** Force of the true shock on a sensor [N]. */
const forceAt = (speed: number, position = 0.014): number =>
  stated.at(295.45).dampingForce(speed, position) +
  stated.at(295.45).gasForce(position) +
  Math.sign(speed) * stated.friction;

const speedFile = (row: (speed: number, force: number) => string, header: string): string =>
  [header, ...speeds.map((speed) => row(speed, forceAt(speed)))].join('\n');

describe('a dyno file', () => {
  test('speed and force, parted by comma, semicolon or tab, with a decimal comma where that can be told', () => {
    const comma = readDynoFile(speedFile((v, f) => `${1000 * v},${f}`, 'velocity_mm_s,force_N'));
    expect(comma.speed).toEqual(speeds.map((speed) => (1000 * speed) / 1000));
    const german = (value: number) => String(value).replace('.', ',');
    const semicolon = readDynoFile(
      speedFile((v, f) => `${german(1000 * v)};${german(f)}`, 'Speed [mm/s];Force [N]'),
    );
    expect(semicolon).toEqual(comma);
    expect(readDynoFile(speedFile((v, f) => `${1000 * v}\t${f}\tnote`, 'v (mm/s)\tF (N)\tremark'))).toEqual(
      comma,
    );
    expect(comma.time).toBeUndefined();
  });

  test('units become SI; comments, blank lines and a byte order mark are passed over', () => {
    const text = '\uFEFF# a shop\n\ntime (ms);travel (mm);load (lbf)\n0;1;1\n5;2;2\n\n10;3;2\n15;4;1\n';
    const record = readDynoFile(text);
    expect(record.time).toEqual([0, 0.005, 0.01, 0.015]);
    expect(record.travel).toEqual([0.001, 0.002, 0.003, 0.004]);
    expect(record.force[1]).toBeCloseTo(2 * 4.4482216152605, 12);
  });

  test('readings of the true shock give its viscosity and friction back', () => {
    const text = speedFile((v, f) => `${1000 * v},${f}`, 'velocity_mm_s,force_N');
    const readings = dynoReadings(
      readDynoFile(text),
      setup,
      inventedLaw({ ...truth, kinematicViscosity: 500e-6 }),
    );
    const unknowns = (['lnNu', 'F'] as const).map((name) => unknownOfRow(name, false));
    const fit = fitShock({
      law: inventedLaw,
      known: { ...truth, kinematicViscosity: 500e-6 },
      unknowns,
      readings,
    });
    expect(fit.state.kinematicViscosity / truth.kinematicViscosity).toBeCloseTo(1, 6);
    expect(fit.state.friction).toBeCloseTo(truth.friction, 6);
    expect(fit.chiSquare).toBeLessThan(1e-8);
  });

  test('a stroke of time, travel and force gives them back within its uncertainty', () => {
    const points = samplePoints('random', 1, 4);
    const uniform = new Float64Array(1);
    const noise = (index: number): number => {
      points.point(index, uniform);
      return normalQuantile(uniform[0] ?? 0.5);
    };
    const rows = Array.from({ length: 800 }, (_, index) => {
      const t = index / 1000;
      const omega = 2 * Math.PI * 3;
      const x = 0.01 * Math.sin(omega * t);
      const force = forceAt(0.01 * omega * Math.cos(omega * t), 0.014 + x) + 0.05 * noise(index);
      return `${t},${1000 * x},${force}`;
    });
    const record = readDynoFile(['time (s),travel (mm),force (N)', ...rows].join('\n'));
    const readings = dynoReadings(record, { ...setup, uncertainty: 0.05, relativeUncertainty: 0 }, stated);
    // Windows of seven samples do not overlap, so that neighbours do not count twice.
    expect(readings.length).toBeGreaterThan(80);
    expect(readings.length).toBeLessThan(800 / 7);
    const unknowns = (['lnNu', 'F'] as const).map((name) => unknownOfRow(name, false));
    const fit = fitShock({ law: inventedLaw, known: truth, unknowns, readings });
    expect(Math.abs(Math.log(fit.state.kinematicViscosity / truth.kinematicViscosity))).toBeLessThan(
      4 * (fit.standardDeviations[0] ?? 0),
    );
    expect(Math.abs(fit.state.friction - truth.friction)).toBeLessThan(4 * (fit.standardDeviations[1] ?? 0));
  });
});

describe('closed forms of filters', () => {
  const omega = 2 * Math.PI * 3;
  const time = Array.from({ length: 1000 }, (_, index) => index / 1000);

  test('a force that lags its travel looks like a spring', () => {
    const { inputs, expected } = checkRow<
      { c: number; f: number; cutoff: number },
      { c: number; falseStiffness: number }
    >('dyno-lag');
    const r = inputs.f / inputs.cutoff;
    const lag = Math.atan(r);
    const speed = time.map((t) => 0.01 * omega * Math.cos(omega * t));
    const found = linearDyno(
      {
        time,
        travel: time.map((t) => 0.01 * Math.sin(omega * t)),
        speed,
        force: time.map((t) => (inputs.c * 0.01 * omega * Math.cos(omega * t - lag)) / Math.hypot(1, r)),
      },
      0,
    );
    expect(found.dampingCoefficient / expected.c).toBeCloseTo(1, 9);
    expect(found.stiffness / expected.falseStiffness).toBeCloseTo(1, 6);
  });

  test('a central difference of a sine loses sin(ωh)/(ωh); a window of seven samples at 1 kHz loses 1 in 2000, without a false spring', () => {
    const { inputs, expected } = checkRow<{ f: number; rate: number }, number>('dyno-difference');
    const { slope } = localPolynomial(1, 1);
    const step = (2 * Math.PI * inputs.f) / inputs.rate;
    const difference = slope.reduce((sum, weight, index) => sum + weight * Math.sin(step * (index - 1)), 0);
    expect(difference / step / expected).toBeCloseTo(1, 12);
    const stroke = smoothStroke(
      {
        time,
        travel: time.map((t) => 0.01 * Math.sin(omega * t)),
        force: time.map((t) => 50 * 0.01 * omega * Math.cos(omega * t)),
      },
      3,
    );
    const { dampingCoefficient, stiffness } = linearDyno(stroke, 0);
    expect(Math.abs(dampingCoefficient / 50 - 1)).toBeLessThan(5e-4);
    expect(Math.abs(stiffness)).toBeLessThan(0.01);
  });

  test('drift, offset and stiffness of an invented stroke, as NumPy has them', () => {
    const { expected } = checkRow<unknown, { values: number[]; sd: number[] }>('dyno-drift');
    const { time: seconds, force } = checks.datasets.dynoDrift;
    const angle = seconds.map((t) => 2 * Math.PI * 3 * t);
    const found = linearDyno(
      {
        time: seconds,
        travel: angle.map((a) => 0.014 + 0.01 * Math.sin(a)),
        speed: angle.map((a) => 0.01 * 2 * Math.PI * 3 * Math.cos(a)),
        force,
      },
      0.014,
    );
    const { dampingCoefficient, friction, offset, stiffness, drift } = found;
    [dampingCoefficient, friction, offset, stiffness, drift].forEach((value, index) => {
      expect(Math.abs(value / (expected.values[index] ?? 0) - 1)).toBeLessThan(1e-5);
      expect(Math.abs((found.standardDeviations[index] ?? 0) / (expected.sd[index] ?? 0) - 1)).toBeLessThan(
        1e-5,
      );
    });
  });
});
