/*
 * A bench stroke and a landing of the sample shock of test/motion with CVODE (SUNDIALS): the same equations, one pressure a chamber, each
 * switch an event, difference Jacobian. Prints for each tolerance the milliseconds of the fastest run and what was found.
 * Build: gcc -O3 -o trajectories trajectories.c -lsundials_cvode -lsundials_nvecserial -lsundials_sunmatrixdense
 * -lsundials_sunlinsoldense -lm
 */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <time.h>

static const double pi = 3.14159265358979323846, gravity = 9.80665;
static const double density = 970, nu = 3.8e-4, bulk = 9e8, p0 = 101325, bore = 0.012, piston = 0.01194, thickness = 0.0025;
static const double hole = 0.0017, count = 2, gas_volume = 9e-7, exponent = 1.4, oil_volume = 3.2e-6, far_volume = 4e-7;
static const double kinetic = 0.18, breakaway = 0.27;
static const double sprung = 0.34, wheel = 0.09, ratio = 0.72, spring = 600, preload = 0.003;
static const double stop_k = 60000, stop_from = 0.021;
static double shaft_area, piston_area, area, hole_area, bore_area, gap, rim, slope0, half, per_speed, growth, length_ratio;
static double slow, leaving, contraction, bubble_growth;

static void bind(void) {
  double mu = density * nu, h = (bore - piston) / 2, around = pi * (bore - h);
  shaft_area = pi / 4 * 0.003 * 0.003;
  piston_area = pi / 4 * piston * piston + around * h / 2;
  area = piston_area - shaft_area;
  hole_area = count * pi / 4 * hole * hole;
  bore_area = pi / 4 * bore * bore;
  gap = around * h * h * h / (12 * mu * thickness);
  rim = mu * around * thickness / h;
  length_ratio = thickness / hole;
  slope0 = mu * (0.991 * 6 * pi + 32 * length_ratio) / hole;
  half = density / 2;
  per_speed = hole / nu;
  growth = (1.25 / 13.76) * (1.25 / 13.76) / length_ratio;
  double share = hole_area / bore_area;
  slow = 0.69 * share, leaving = 1 - 0.216 * share, contraction = 1.68 / (1 + 1.444 * share);
  bubble_growth = 1 / (1988 * (1 + 0.84 * share));
}

/* Pressure drop, its slope over the speed and the onset of inertia, at a speed of 0 or more: lib/flow/hole/inertial-loss.ts. */
static double look(double v, double *slope, double *onset) {
  double re = per_speed * v, x = re / 35.6, y = re / 3000;
  double calm = 1 / sqrt(1 + y * y), laminar = re * calm, bubble = 0.1175 + bubble_growth * laminar;
  double per_span = 1 / (bubble + length_ratio), covered = bubble * per_span;
  double per_grown = 1 / (1 + growth * laminar), developing = 1.25 * sqrt(per_grown);
  double full = leaving - slow + developing + contraction * covered * covered;
  double full_slope = (2 * contraction * covered * bubble_growth * length_ratio * per_span * per_span -
                       0.5 * developing * growth * per_grown) * calm * calm * calm;
  double square = x * x, level = 1.486 * square, above = 1 + level, below = 1 - 1.24 * x + 3.21 * square + level * square;
  double per_both = 1 / (above * below), steep = above * sqrt(per_both);
  double bend = level * below - 0.5 * x * (-1.24 + 6.42 * x + 4 * level * x) * above;
  *onset = x * steep;
  double coefficient = slow + full * *onset, bent = full * steep * (1 + bend * per_both) / 35.6 + full_slope * *onset;
  *slope = slope0 + half * v * (2 * coefficient + re * bent);
  return v * (slope0 + half * v * coefficient);
}

static double passage(double drop, double *recoil) {
  double onset = 0, target = fabs(drop), v = 2 * target / (slope0 + sqrt(slope0 * slope0 + 8 * half * target));
  for (int i = 0; i < 60; i++) {
    double slope, at = look(v, &slope, &onset), change = (target - at) / slope;
    v += change;
    if (fabs(change) <= 1e-6 * v) break;
  }
  double flow = hole_area * v + gap * target;
  double momentum = (0.644 + (1.2 - 0.644) * onset) * v + 5.5 * nu / hole;
  *recoil = density * hole_area * v * fmax(momentum - 0.5 * flow / bore_area, 0);
  if (drop < 0) *recoil = -*recoil, flow = -flow;
  return flow;
}

static double near_pressure(double x, double s) {
  double taken = shaft_area * x + s, held = oil_volume - far_volume - area * x + s, given = taken, p = p0;
  for (int i = 0; i < 20; i++) {
    p = p0 * exp(exponent * log(gas_volume / (gas_volume - given)));
    double squeezed = exp((p0 - p) / bulk), value = given + held * (1 - squeezed) - taken;
    double gas_slope = exponent * p / (gas_volume - given);
    double change = value / (1 + held * squeezed / bulk * gas_slope);
    given -= change;
    if (fabs(change) <= 1e-7 * gas_volume) return p - gas_slope * change;
  }
  return p;
}

static int torn;
static double far_pressure(double x, double s) {
  return torn ? 0 : p0 - bulk * log1p(s / (far_volume + area * x - s));
}

static double cavity(double x, double s) {
  return s - (far_volume + area * x - s) * (exp(p0 / bulk) - 1);
}

static double seal(double v) {
  return (kinetic + (breakaway - kinetic) * exp(-(v / 0.01) * (v / 0.01))) * tanh(v / 0.001);
}

static double shock(double x, double v, double s, double *flow) {
  double near = near_pressure(x, s), far = far_pressure(x, s), recoil;
  *flow = passage(near - far, &recoil);
  return area * (near - far) + shaft_area * (near - p0) - recoil + rim * v + seal(v);
}

/* ---- peaks of up to four values, on eight points a step with a parabola through the highest three ---- */
typedef struct { double largest, before, last; } peak;
static void see(peak *p, double value) {
  if (p->last >= p->before && p->last > value) {
    double bend = p->before - 2 * p->last + value, lean = value - p->before;
    double top = bend < 0 ? p->last - lean * lean / (8 * bend) : p->last;
    if (top > p->largest) p->largest = top;
  }
  if (value > p->largest) p->largest = value;
  p->before = p->last, p->last = value;
}
static void restart(peak *p, double value) {
  p->before = p->last = value;
  if (value > p->largest) p->largest = value;
}

/* ---- stroke: room and work ---- */
static const double omega = 2 * 3.14159265358979323846 * 10, middle = 0.012, amplitude = 0.01;
static double travel(double t) { return middle - amplitude * cos(omega * t); }
static double speed(double t) { return omega * amplitude * sin(omega * t); }

static int stroke_rates(realtype t, N_Vector y, N_Vector dy, void *data) {
  (void)data;
  double flow, v = speed(t), f = shock(travel(t), v, NV_Ith_S(y, 0), &flow);
  NV_Ith_S(dy, 0) = area * v - flow;
  NV_Ith_S(dy, 1) = f * v;
  return 0;
}
static int stroke_roots(realtype t, N_Vector y, realtype *g, void *data) {
  (void)data;
  g[0] = cavity(travel(t), NV_Ith_S(y, 0));
  return 0;
}
static void stroke_values(double t, N_Vector y, double *out) {
  double flow, f = shock(travel(t), speed(t), NV_Ith_S(y, 0), &flow);
  out[0] = f, out[1] = -f, out[2] = torn ? cavity(travel(t), NV_Ith_S(y, 0)) : 0, out[3] = 0;
}
static void stroke_flip(double t, N_Vector y, int *found) {
  (void)t, (void)y, (void)found;
  torn = !torn;
}
static void stroke_directions(int *d) { d[0] = torn ? -1 : 1; }

/* ---- landing: room, body, its speed, wheel, its speed ---- */
static int touching[3], pushing[3]; /* tyre, bump stop, droop stop */
static void presses(N_Vector y, double *depth, double *rate) {
  double x = ratio * (NV_Ith_S(y, 3) - NV_Ith_S(y, 1)), v = ratio * (NV_Ith_S(y, 4) - NV_Ith_S(y, 2));
  depth[0] = -NV_Ith_S(y, 3), rate[0] = -NV_Ith_S(y, 4);
  depth[1] = x - stop_from, rate[1] = v;
  depth[2] = -x, rate[2] = -v;
}
static const double contact_k[] = {4000, 60000, 60000}, contact_c[] = {2, 5, 5};
static double strut(N_Vector y, double *flow, double *tyre, double *force) {
  double depth[3], rate[3], push[3];
  presses(y, depth, rate);
  for (int i = 0; i < 3; i++) push[i] = pushing[i] ? contact_k[i] * depth[i] + contact_c[i] * rate[i] : 0;
  double x = ratio * (NV_Ith_S(y, 3) - NV_Ith_S(y, 1)), v = ratio * (NV_Ith_S(y, 4) - NV_Ith_S(y, 2));
  *force = shock(x, v, NV_Ith_S(y, 0), flow);
  *tyre = push[0];
  return *force + spring * (x + preload) + push[1] - push[2];
}
static int landing_rates(realtype t, N_Vector y, N_Vector dy, void *data) {
  (void)t, (void)data;
  double flow, tyre, force, all = strut(y, &flow, &tyre, &force);
  NV_Ith_S(dy, 0) = area * ratio * (NV_Ith_S(y, 4) - NV_Ith_S(y, 2)) - flow;
  NV_Ith_S(dy, 1) = NV_Ith_S(y, 2);
  NV_Ith_S(dy, 2) = ratio * all / sprung - gravity;
  NV_Ith_S(dy, 3) = NV_Ith_S(y, 4);
  NV_Ith_S(dy, 4) = (tyre - ratio * all) / wheel - gravity;
  return 0;
}
static int landing_roots(realtype t, N_Vector y, realtype *g, void *data) {
  (void)t, (void)data;
  double depth[3], rate[3];
  presses(y, depth, rate);
  g[0] = cavity(ratio * (NV_Ith_S(y, 3) - NV_Ith_S(y, 1)), NV_Ith_S(y, 0));
  for (int i = 0; i < 3; i++) g[1 + 2 * i] = depth[i], g[2 + 2 * i] = contact_k[i] * depth[i] + contact_c[i] * rate[i];
  return 0;
}
static void landing_values(double t, N_Vector y, double *out) {
  (void)t;
  double flow, tyre, force;
  strut(y, &flow, &tyre, &force);
  out[0] = force, out[1] = -force, out[2] = tyre, out[3] = ratio * (NV_Ith_S(y, 3) - NV_Ith_S(y, 1));
}
static void landing_flip(double t, N_Vector y, int *found) {
  (void)t;
  double depth[3], rate[3];
  presses(y, depth, rate);
  if (found[0]) torn = !torn;
  for (int i = 0; i < 3; i++) {
    if (found[1 + 2 * i]) {
      touching[i] = !touching[i];
      pushing[i] = touching[i] && contact_k[i] * depth[i] + contact_c[i] * rate[i] > 0;
    } else if (found[2 + 2 * i] && touching[i]) pushing[i] = !pushing[i];
  }
}
static void landing_directions(int *d) {
  d[0] = torn ? -1 : 1;
  for (int i = 0; i < 3; i++) d[1 + 2 * i] = touching[i] ? -1 : 1, d[2 + 2 * i] = pushing[i] ? -1 : 1;
}

/* Travel in free fall, and room at equal pressures there, by halving. */
static double rest_room(double x) {
  double low = -1e-9, high = 1e-9;
  for (int i = 0; i < 100; i++) {
    double s = (low + high) / 2;
    if (near_pressure(x, s) > far_pressure(x, s)) high = s;
    else low = s;
  }
  return (low + high) / 2;
}
static double free_travel(void) {
  double low = -0.001, high = 0;
  for (int i = 0; i < 100; i++) {
    double x = (low + high) / 2, s = rest_room(x);
    if (shaft_area * (near_pressure(x, s) - p0) + spring * (x + preload) + stop_k * x > 0) high = x;
    else low = x;
  }
  return (low + high) / 2;
}

typedef struct {
  int size, roots, values;
  double end, out[4];
  CVRhsFn rates;
  CVRootFn root;
  void (*write)(double, N_Vector, double *);
  void (*flip)(double, N_Vector, int *);
  void (*directions)(int *);
} problem;

static double run(problem *p, double rtol, const double *start, int *steps) {
  SUNContext context;
  SUNContext_Create(NULL, &context);
  N_Vector y = N_VNew_Serial(p->size, context), at = N_VNew_Serial(p->size, context), atol = N_VNew_Serial(p->size, context);
  for (int i = 0; i < p->size; i++) NV_Ith_S(y, i) = start[i], NV_Ith_S(atol, i) = rtol * (p->size == 2 ? 1e-2 : i % 2 ? 1e-2 : 1);
  NV_Ith_S(atol, 0) = far_volume / bulk * 3e6 * rtol;
  void *solver = CVodeCreate(CV_BDF, context);
  SUNMatrix matrix = SUNDenseMatrix(p->size, p->size, context);
  SUNLinearSolver linear = SUNLinSol_Dense(y, matrix, context);
  CVodeInit(solver, p->rates, 0, y), CVodeSVtolerances(solver, rtol, atol), CVodeSetLinearSolver(solver, linear, matrix);
  CVodeSetMaxNumSteps(solver, 1000000), CVodeSetInitStep(solver, 1e-7), CVodeSetStopTime(solver, p->end);
  CVodeRootInit(solver, p->roots, p->root);
  int d[8];
  p->directions(d), CVodeSetRootDirection(solver, d), CVodeSetNoInactiveRootWarn(solver);
  peak peaks[4];
  double now[4], t = 0, before = 0;
  p->write(0, y, now);
  for (int i = 0; i < p->values; i++) peaks[i].largest = now[i], peaks[i].before = peaks[i].last = now[i];
  *steps = 0;
  while (t < p->end) {
    int flag = CVode(solver, p->end, y, &t, CV_ONE_STEP);
    if (flag < 0) return -1;
    (*steps)++;
    for (int k = 1; k <= 8; k++) {
      double time = k == 8 ? t : before + (t - before) * k / 8;
      CVodeGetDky(solver, time, 0, at);
      p->write(time, at, now);
      for (int i = 0; i < p->values; i++) see(&peaks[i], now[i]);
    }
    before = t;
    if (flag == CV_ROOT_RETURN) {
      int found[8];
      CVodeGetRootInfo(solver, found), p->flip(t, y, found);
      p->directions(d), CVodeSetRootDirection(solver, d);
      CVodeReInit(solver, t, y), CVodeSetInitStep(solver, 1e-7), CVodeSetStopTime(solver, p->end);
      p->write(t, y, now);
      for (int i = 0; i < p->values; i++) restart(&peaks[i], now[i]);
    }
  }
  for (int i = 0; i < p->values; i++) p->out[i] = peaks[i].largest;
  double end = NV_Ith_S(y, 1);
  N_VDestroy(y), N_VDestroy(at), N_VDestroy(atol), SUNMatDestroy(matrix), SUNLinSolFree(linear);
  CVodeFree(&solver), SUNContext_Free(&context);
  return end;
}

int main(void) {
  bind();
  problem stroke = {2, 1, 3, 0.2, {0}, stroke_rates, stroke_roots, stroke_values, stroke_flip, stroke_directions};
  problem landing = {5, 7, 4, 1, {0}, landing_rates, landing_roots, landing_values, landing_flip, landing_directions};
  double x = free_travel(), speed_down = -sqrt(2 * gravity * 0.15);
  double landing_start[] = {rest_room(x), -x / ratio, speed_down, 0, speed_down}, stroke_start[] = {rest_room(0.002), 0};
  double tolerances[] = {1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 3e-7, 1e-7};
  printf("[");
  for (int which = 0; which < 2; which++)
    for (int i = 0; i < 9; i++) {
      problem *p = which ? &landing : &stroke;
      double best = 1e9, end = 0;
      int steps = 0;
      for (int repeat = 0; repeat < 12; repeat++) {
        struct timespec from, to;
        torn = 0;
        touching[0] = pushing[0] = 1, touching[1] = pushing[1] = 0, touching[2] = pushing[2] = 1;
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
        end = run(p, tolerances[i], which ? landing_start : stroke_start, &steps);
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
        double ms = (to.tv_sec - from.tv_sec) * 1e3 + (to.tv_nsec - from.tv_nsec) / 1e6;
        if (ms < best) best = ms;
      }
      printf("%s{\"run\": \"%s\", \"tolerance\": %g, \"milliseconds\": %.4g, \"steps\": %d, \"values\": [%.12g, %.12g, %.12g, %.12g]}",
             which || i ? ", " : "", which ? "landing" : "stroke", tolerances[i], best, steps, p->out[0], -p->out[1], p->out[2],
             which ? p->out[3] : end);
    }
  printf("]\n");
  return 0;
}
