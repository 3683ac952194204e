"""A 201-point force-velocity curve with NumPy, all points at once: the arithmetic of benchmarks/one-force.c on arrays."""
import json
import sys
import time

import numpy as np

repeats = int(sys.argv[1]) if len(sys.argv) > 1 else 200
bore, piston, thickness, d, shaft, nu, rho, count = 0.012, 0.01195, 0.0025, 0.0013, 0.003, 3.5e-4, 970.0, 4
mu, h = rho * nu, (bore - piston) / 2
circumference = np.pi * (bore - h)
length_ratio = thickness / d
creeping_slope = mu * (0.991 * 6 * np.pi + 32 * length_ratio) / d
growth = (1.25 / 13.76) ** 2 / length_ratio
area = count * np.pi / 4 * d**2
gap_conductance = circumference * h**3 / (12 * mu * thickness)
creeping_conductance = gap_conductance + area / creeping_slope
shaft_area = np.pi / 4 * shaft**2
damping_area = np.pi / 4 * piston**2 + circumference * h / 2 - shaft_area
bore_area = np.pi / 4 * bore**2
skirt_drag = mu * circumference * thickness / h
drop_per_speed = damping_area / creeping_conductance
creeping_damping = (
    damping_area * drop_per_speed + skirt_drag - rho * area * (5.5 * nu / d) * drop_per_speed / creeping_slope
)
gas_pressure = 101325 * (1e-6 / (1e-6 - shaft_area * 0.014)) ** 1.4
part = area / bore_area
slow, end, contraction = 0.69 * part, 1 - 0.216 * part, 1.68 / (1 + 1.444 * part)
bubble_growth = 1 / (1988 * (1 + 0.84 * part))
bend, rise, level = -1.24, 3.21, 1.486


def onset_at(x):
    square = x * x
    grown = level * square
    return x * np.sqrt((1 + grown) / (1 + bend * x + rise * square + grown * square))


def loss(re):
    """Loss coefficient and its slope over the Reynolds number."""
    x, y = re / 35.6, re / 3000
    calm = 1 / np.sqrt(1 + y * y)
    laminar = re * calm
    bubble = 0.1175 + bubble_growth * laminar
    per_span = 1 / (bubble + length_ratio)
    covered = bubble * per_span
    per_grown = 1 / (1 + growth * laminar)
    developing = 1.25 * np.sqrt(per_grown)
    full = end - slow + developing + contraction * covered * covered
    full_slope = (
        2 * contraction * covered * bubble_growth * length_ratio * per_span * per_span
        - 0.5 * developing * growth * per_grown
    ) * (calm * calm * calm)
    square = x * x
    grown = level * square
    above = 1 + grown
    below = 1 + bend * x + rise * square + grown * square
    per_both = 1 / (above * below)
    steep = above * np.sqrt(per_both)
    onset = x * steep
    bent = grown * below - 0.5 * x * (bend + 2 * rise * x + 4 * grown * x) * above
    return slow + full * onset, full * steep * (1 + bent * per_both) / 35.6 + full_slope * onset


def look(size):
    """Pressure drop and its slope over the speed in the holes."""
    re = d / nu * size
    coefficient, bent = loss(re)
    drop = size * (creeping_slope + rho / 2 * size * coefficient)
    return drop, creeping_slope + rho / 2 * size * (2 * coefficient + re * bent)


def curve(speed):
    target = np.abs(damping_area * speed)
    v = target / area
    for _ in range(60):
        drop, slope = look(v)
        step = (area * v + gap_conductance * drop - target) / (area + gap_conductance * slope)
        v = v - step
        if np.all(np.abs(step) <= 1e-6 * v):
            drop = drop - step * slope
            break
    sign = np.where(speed < 0, -1.0, 1.0)
    viscous = nu / d
    factor = 0.644 + (1.2 - 0.644) * onset_at(v / viscous / 35.6)
    recoil = rho * area * np.maximum(v * (factor * v + 5.5 * viscous) - 0.5 * v * target / bore_area, 0)
    damping = sign * (damping_area * drop - recoil) + skirt_drag * speed
    seal = (0.4 + 0.2 * np.exp(-((speed / 0.01) ** 2))) * np.tanh(speed / 0.001)
    gas_force = shaft_area * (gas_pressure - 101325)
    with np.errstate(invalid="ignore", divide="ignore"):
        coefficient = np.where(speed == 0, creeping_damping, damping / speed)
        leak = np.where(target == 0, gap_conductance / creeping_conductance, gap_conductance * drop / target)
    lowest_pressure = gas_pressure - np.where(speed > 0, drop, 0)
    cavitating = lowest_pressure < 0
    # In the order in which benchmarks/force-and-curve/measure.ts reads them.
    return (
        *(damping + gas_force + seal, damping, np.full_like(speed, gas_force), seal, coefficient, sign * drop),
        *(np.full_like(speed, gas_pressure), np.maximum(lowest_pressure, 0), sign * recoil, drop / (rho * 1500)),
        *(v * d / nu, 8 * v / d, leak, cavitating),
    )


speeds = -2 + 0.02 * np.arange(201)
curve(speeds)
start = time.process_time()
for _ in range(repeats):
    made = curve(speeds)
elapsed = time.process_time() - start
sums = [float(np.abs(each).sum()) for each in made]
print(json.dumps({"nanoseconds": elapsed / repeats / 201 * 1e9, "sum": sums[0], "outputs": sums}))
