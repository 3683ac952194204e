/*
 * The arithmetic of one damper force, as in lib/damper/damper-force.ts for a piston with holes of one size: pressure drop by Newton's
 * method, recoil of the jets, gas, seals. Prints the nanoseconds a force takes and the sum of all forces. With `batch` as second argument it
 * writes the forces alone of a whole curve into an array, as lib/damper/damper-forces.ts does.
 * Build: gcc -O3 -o one-force one-force.c -lm
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static const double pi = 3.14159265358979323846;

typedef struct {
  double creeping_slope, half_density, reynolds_per_speed, length_ratio, growth;
  double area, diameter, gap_conductance, creeping_conductance;
  double damping_area, shaft_area, bore_area, skirt_drag, kinematic_viscosity, density;
  double gas_volume, gas_pressure, exponent, ambient_pressure, kinetic, breakaway;
} model;

typedef struct {
  double force, damping, gas_force, seal, coefficient, drop, gas, lowest_pressure, recoil, heat, reynolds, shear, leak;
  int cavitating;
} result;

/* Pressure drop, and its slope over the speed, at a speed of 0 or more. */
static double look(const model *m, double v, double *slope) {
  double re = m->reynolds_per_speed * v, x = re / 27, y = re / 3000;
  double calm = 1 / sqrt(1 + y * y), laminar = re * calm, bubble = 0.1 + laminar / 2000;
  double per_span = 1 / (bubble + m->length_ratio), covered = bubble * per_span;
  double per_grown = 1 / (1 + m->growth * laminar), developing = 1.25 * sqrt(per_grown);
  double per_bend = 1 / (1 + 0.25 * x + x * x), root = sqrt(per_bend), onset = x * root;
  double full = 1 + developing + 1.68 * covered * covered;
  double full_slope = (2 * 1.68 * covered * (1.0 / 2000) * m->length_ratio * per_span * per_span -
                       0.5 * developing * m->growth * per_grown) * calm * calm * calm;
  double coefficient = full * onset;
  double bent = full * (1 + 0.125 * x) / 27 * per_bend * root + full_slope * onset;
  *slope = m->creeping_slope + m->half_density * v * (2 * coefficient + re * bent);
  return v * (m->creeping_slope + m->half_density * v * coefficient);
}

/* Returns the drop and leaves the speed in the holes behind. */
static double piston_drop(const model *m, double flow, double *hole_speed) {
  *hole_speed = 0;
  if (flow == 0) return 0;
  double target = fabs(flow), v = target / m->area, drop = 0;
  for (int iteration = 0; iteration <= 60; iteration++) {
    double slope, at = look(m, v, &slope);
    double step = (m->area * v + m->gap_conductance * at - target) / (m->area + m->gap_conductance * slope);
    v -= step;
    drop = at - step * slope;
    if (fabs(step) <= 1e-6 * v) break;
  }
  *hole_speed = v;
  return flow < 0 ? -drop : drop;
}

static double gas_at(const model *m, double position) {
  return m->gas_pressure * exp(m->exponent * log(m->gas_volume / (m->gas_volume - m->shaft_area * position)));
}

static double damping_at(const model *m, double speed, double drop, double v, double *recoil) {
  double swept = m->damping_area * speed;
  *recoil = (speed < 0 ? -1 : 1) * m->density * m->area * v * fmax(1.2 * v - fabs(swept) / m->bore_area, 0);
  return m->damping_area * drop - *recoil + m->skirt_drag * speed;
}

static double seal_at(const model *m, double speed) {
  if (fabs(speed) > 0.1) return speed < 0 ? -m->kinetic : m->kinetic;
  double stribeck = (m->breakaway - m->kinetic) * exp(-(speed / 0.01) * (speed / 0.01));
  return (m->kinetic + stribeck) * tanh(speed / 0.001);
}

static result force_at(const model *m, double speed, double position) {
  result r;
  double swept = m->damping_area * speed, v;
  r.gas = gas_at(m, position);
  r.drop = piston_drop(m, swept, &v);
  r.damping = damping_at(m, speed, r.drop, v, &r.recoil);
  r.gas_force = m->shaft_area * (r.gas - m->ambient_pressure);
  r.seal = seal_at(m, speed);
  r.force = r.damping + r.gas_force + r.seal;
  r.reynolds = v * m->diameter / m->kinematic_viscosity;
  r.shear = 8 * v / m->diameter;
  r.heat = fabs(r.drop) / (m->density * 1500);
  r.lowest_pressure = r.gas - (r.drop > 0 ? r.drop : 0);
  r.cavitating = r.lowest_pressure < 0;
  if (r.cavitating) r.lowest_pressure = 0;
  r.coefficient = speed == 0 ? m->damping_area * m->damping_area / m->creeping_conductance + m->skirt_drag
                             : r.damping / speed;
  r.leak = swept == 0 ? m->gap_conductance / m->creeping_conductance : m->gap_conductance * r.drop / swept;
  return r;
}

/* Forces alone, of many speeds at one position. */
static void forces_at(const model *m, const double *speeds, int count, double position, double *forces) {
  double gas_force = m->shaft_area * (gas_at(m, position) - m->ambient_pressure);
  for (int i = 0; i < count; i++) {
    double v, recoil, drop = piston_drop(m, m->damping_area * speeds[i], &v);
    forces[i] = damping_at(m, speeds[i], drop, v, &recoil) + gas_force + seal_at(m, speeds[i]);
  }
}

int main(int argc, char **argv) {
  int repeats = argc > 1 ? atoi(argv[1]) : 2000;
  double bore = 0.012, piston = 0.01195, thickness = 0.0025, d = 0.0013, shaft = 0.003, nu = 3.5e-4, rho = 970;
  int count = 4;
  double mu = rho * nu, h = (bore - piston) / 2, circumference = pi * (bore - h);
  model m = {0};
  m.length_ratio = thickness / d;
  m.creeping_slope = mu * (0.99 * 6 * pi + 32 * m.length_ratio) / d;
  m.half_density = rho / 2;
  m.reynolds_per_speed = d / nu;
  m.growth = (1.25 / 13.76) * (1.25 / 13.76) / m.length_ratio;
  m.area = count * pi / 4 * d * d;
  m.diameter = d;
  m.gap_conductance = circumference * h * h * h / (12 * mu * thickness);
  m.creeping_conductance = m.gap_conductance + m.area / m.creeping_slope;
  m.shaft_area = pi / 4 * shaft * shaft;
  m.damping_area = pi / 4 * piston * piston + circumference * h / 2 - m.shaft_area;
  m.skirt_drag = mu * circumference * thickness / h;
  m.kinematic_viscosity = nu, m.density = rho, m.bore_area = pi / 4 * bore * bore;
  m.gas_volume = 1e-6, m.gas_pressure = 101325, m.exponent = 1.4, m.ambient_pressure = 101325;
  m.kinetic = 0.4, m.breakaway = 0.6;

  struct timespec start, end;
  volatile double sink = 0;
  double sum = 0;
  clock_gettime(CLOCK_MONOTONIC, &start);
  double speeds[201], forces[201];
  for (int i = 0; i <= 200; i++) speeds[i] = -2 + 0.02 * i;
  int batch = argc > 2;
  for (int repeat = 0; repeat < repeats; repeat++) {
    if (batch) {
      forces_at(&m, speeds, 201, 0.014, forces);
      for (int i = 0; i <= 200; i++) sum += forces[i];
      continue;
    }
    for (int i = 0; i <= 200; i++) {
      result r = force_at(&m, speeds[i], 0.014);
      sum += r.force;
      sink = r.reynolds + r.shear + r.heat + r.cavitating + r.lowest_pressure + r.coefficient + r.leak + r.damping + r.gas_force + r.seal + r.gas;
    }
  }
  clock_gettime(CLOCK_MONOTONIC, &end);
  (void)sink;
  double nanoseconds = (end.tv_sec - start.tv_sec) * 1e9 + (end.tv_nsec - start.tv_nsec);
  printf("{\"nanoseconds\": %.17g, \"sum\": %.17g}\n", nanoseconds / (repeats * 201.0), sum / repeats);
  return 0;
}
