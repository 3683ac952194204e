/*
 * The arithmetic of one damper force, as in lib/damper/damper-force.ts for a piston with holes of one size: loss of the holes, pressure
 * drop by Newton's method, recoil of the jets, gas, seals. Prints the nanoseconds of the processor that a force takes, the sum of all numbers that were read, and
 * the sum of each output. With `batch` as second argument it writes the forces alone of a whole curve into an array, as
 * lib/damper/damper-forces.ts does.
 * Build: gcc -O3 -o one-force one-force.c -lm
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static const double pi = 3.14159265358979323846;

typedef struct {
  double creeping_slope, half_density, reynolds_per_speed, length_ratio, growth;
  double slow, exit, contraction, bubble_growth;
  double area, diameter, gap_conductance, creeping_conductance, creeping_damping;
  double damping_area, shaft_area, bore_area, skirt_drag, kinematic_viscosity, density;
  double gas_volume, gas_pressure, exponent, ambient_pressure, kinetic, breakaway;
} model;

typedef struct {
  double force, damping, gas_force, seal, coefficient, drop, gas, lowest_pressure, recoil, heat, reynolds, shear, leak;
  double residual;
  int cavitating, iterations;
} result;

enum { outputs = 14 };

/* Where inertia sets in, and how: F = x sqrt(above/below). */
static const double per_onset = 1 / 35.6, bend = -1.24, rise = 3.21, level = 1.486;

static double onset_at(double x) {
  double square = x * x, grown = level * square;
  return x * sqrt((1 + grown) / (1 + bend * x + rise * square + grown * square));
}

/* Pressure drop, and its slope over the speed, at a speed of 0 or more. */
static double look(const model *m, double v, double *slope) {
  double re = m->reynolds_per_speed * v, x = re * per_onset, y = re / 3000;
  double calm = 1 / sqrt(1 + y * y), laminar = re * calm, bubble = 0.1175 + m->bubble_growth * laminar;
  double per_span = 1 / (bubble + m->length_ratio), covered = bubble * per_span;
  double per_grown = 1 / (1 + m->growth * laminar), developing = 1.25 * sqrt(per_grown);
  double full = m->exit - m->slow + developing + m->contraction * covered * covered;
  double full_slope = (2 * m->contraction * covered * m->bubble_growth * m->length_ratio * per_span * per_span -
                       0.5 * developing * m->growth * per_grown) * (calm * calm * calm);
  double square = x * x, grown = level * square;
  double above = 1 + grown, below = 1 + bend * x + rise * square + grown * square;
  double per_both = 1 / (above * below), steep = above * sqrt(per_both), onset = x * steep;
  double bent = grown * below - 0.5 * x * (bend + 2 * rise * x + 4 * grown * x) * above;
  double coefficient = m->slow + full * onset;
  double rising = full * steep * (1 + bent * per_both) * per_onset + full_slope * onset;
  *slope = m->creeping_slope + m->half_density * v * (2 * coefficient + re * rising);
  return v * (m->creeping_slope + m->half_density * v * coefficient);
}

/* Returns the drop of a flow of 0 or more and leaves the speed in the holes behind. */
static double piston_drop(const model *m, double target, double *hole_speed, int *iterations) {
  double v = target / m->area, drop = 0;
  *iterations = 0;
  if (target > 0)
    for (; *iterations <= 60; (*iterations)++) {
      double slope, at = look(m, v, &slope);
      double step = (m->area * v + m->gap_conductance * at - target) / (m->area + m->gap_conductance * slope);
      v -= step;
      drop = at - step * slope;
      if (fabs(step) <= 1e-6 * v) break;
    }
  *hole_speed = v;
  return drop;
}

static double gas_at(const model *m, double position) {
  return m->gas_pressure * exp(m->exponent * log(m->gas_volume / (m->gas_volume - m->shaft_area * position)));
}

/* What the jets take back, of a flow and speed of 0 or more. */
static double recoil_at(const model *m, double swept, double v) {
  double viscous = m->kinematic_viscosity / m->diameter;
  double factor = 0.644 + (1.2 - 0.644) * onset_at(v / viscous * per_onset);
  double momentum = v * (factor * v + 5.5 * viscous);
  return m->density * m->area * fmax(momentum - 0.5 * v * (swept / m->bore_area), 0);
}

static double seal_at(const model *m, double speed) {
  if (fabs(speed) > 0.1) return speed < 0 ? -m->kinetic : m->kinetic;
  double stribeck = (m->breakaway - m->kinetic) * exp(-(speed / 0.01) * (speed / 0.01));
  return (m->kinetic + stribeck) * tanh(speed / 0.001);
}

static result force_at(const model *m, double speed, double position) {
  result r;
  double sign = speed < 0 ? -1 : 1, swept = m->damping_area * fabs(speed), v;
  double drop = piston_drop(m, swept, &v, &r.iterations);
  r.gas = gas_at(m, position);
  r.drop = sign * drop;
  r.recoil = sign * recoil_at(m, swept, v);
  r.damping = m->damping_area * r.drop - r.recoil + m->skirt_drag * speed;
  r.gas_force = m->shaft_area * (r.gas - m->ambient_pressure);
  r.seal = seal_at(m, speed);
  r.force = r.damping + r.gas_force + r.seal;
  r.reynolds = v * m->diameter / m->kinematic_viscosity;
  r.shear = 8 * v / m->diameter;
  r.heat = drop / (m->density * 1500);
  r.lowest_pressure = r.gas - (r.drop > 0 ? r.drop : 0);
  r.cavitating = r.lowest_pressure < 0;
  if (r.cavitating) r.lowest_pressure = 0;
  r.coefficient = speed == 0 ? m->creeping_damping : r.damping / speed;
  r.leak = swept == 0 ? m->gap_conductance / m->creeping_conductance : m->gap_conductance * drop / swept;
  r.residual = sign * (m->area * v + m->gap_conductance * drop - swept);
  return r;
}

/* Forces alone, of many speeds at one position. */
static void forces_at(const model *m, const double *speeds, int count, double position, double *forces) {
  double gas_force = m->shaft_area * (gas_at(m, position) - m->ambient_pressure);
  for (int i = 0; i < count; i++) {
    double speed = fabs(speeds[i]), swept = m->damping_area * speed, v;
    int iterations;
    double drop = piston_drop(m, swept, &v, &iterations);
    double damping = m->damping_area * drop - recoil_at(m, swept, v) + m->skirt_drag * speed;
    forces[i] = (speeds[i] < 0 ? -damping : damping) + gas_force + seal_at(m, speeds[i]);
  }
}

static model bound(double thickness) {
  double bore = 0.012, piston = 0.01195, d = 0.0013, shaft = 0.003, nu = 3.5e-4, rho = 970;
  int count = 4;
  double mu = rho * nu, h = (bore - piston) / 2, circumference = pi * (bore - h);
  model m = {0};
  m.length_ratio = thickness / d;
  m.creeping_slope = mu * (0.991 * 6 * pi + 32 * m.length_ratio) / d;
  m.half_density = rho / 2;
  m.reynolds_per_speed = d / nu;
  m.growth = (1.25 / 13.76) * (1.25 / 13.76) / m.length_ratio;
  m.area = count * pi / 4 * d * d;
  m.diameter = d;
  m.bore_area = pi / 4 * bore * bore;
  double part = m.area / m.bore_area;
  m.slow = 0.69 * part;
  m.exit = 1 - 0.216 * part;
  m.contraction = 1.68 / (1 + 1.444 * part);
  m.bubble_growth = 1 / (1988 * (1 + 0.84 * part));
  m.gap_conductance = circumference * h * h * h / (12 * mu * thickness);
  m.creeping_conductance = m.gap_conductance + m.area / m.creeping_slope;
  m.shaft_area = pi / 4 * shaft * shaft;
  m.damping_area = pi / 4 * piston * piston + circumference * h / 2 - m.shaft_area;
  m.skirt_drag = mu * circumference * thickness / h;
  m.kinematic_viscosity = nu, m.density = rho;
  double drop_per_speed = m.damping_area / m.creeping_conductance;
  m.creeping_damping = m.damping_area * drop_per_speed + m.skirt_drag -
                       rho * m.area * (5.5 * nu / d) * drop_per_speed / m.creeping_slope;
  m.gas_volume = 1e-6, m.gas_pressure = 101325, m.exponent = 1.4, m.ambient_pressure = 101325;
  m.kinetic = 0.4, m.breakaway = 0.6;
  return m;
}

/* In the order in which benchmarks/force-and-curve/measure.ts reads them. */
static void list(const result *r, double *to) {
  double all[outputs] = {r->force, r->damping, r->gas_force, r->seal, r->coefficient, r->drop, r->gas, r->lowest_pressure,
                         r->recoil, r->heat, r->reynolds, r->shear, r->leak, r->cavitating};
  memcpy(to, all, sizeof all);
}

int main(int argc, char **argv) {
  int repeats = argc > 1 ? atoi(argv[1]) : 2000;
  int batch = argc > 2 && strcmp(argv[2], "batch") == 0;
  double speeds[201], forces[201], each[outputs] = {0}, sum = 0;
  model m = bound(0.0025);
  for (int i = 0; i <= 200; i++) speeds[i] = -2 + 0.02 * i;
  for (int i = 0; i <= 200; i++) {
    result r = force_at(&m, speeds[i], 0.014);
    double all[outputs];
    list(&r, all);
    for (int k = 0; k < outputs; k++) each[k] += fabs(all[k]);
  }
  struct timespec start, end;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &start);
  for (int repeat = 0; repeat < repeats; repeat++) {
    if (batch) {
      forces_at(&m, speeds, 201, 0.014, forces);
      for (int i = 0; i <= 200; i++) sum += fabs(forces[i]);
      continue;
    }
    for (int i = 0; i <= 200; i++) {
      result r = force_at(&m, speeds[i], 0.014);
      double all[outputs];
      list(&r, all);
      for (int k = 0; k < outputs; k++) sum += fabs(all[k]);
      sum += r.iterations;
    }
  }
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &end);
  double nanoseconds = (end.tv_sec - start.tv_sec) * 1e9 + (end.tv_nsec - start.tv_nsec);
  printf("{\"nanoseconds\": %.17g, \"sum\": %.17g, \"outputs\": [", nanoseconds / (repeats * 201.0), sum / repeats);
  for (int k = 0; k < outputs; k++) printf("%s%.17g", k ? ", " : "", each[k]);
  printf("]}\n");
  return 0;
}
