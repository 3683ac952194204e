"""Forces of many builds whose sizes are off, with NumPy: all at once, and row by row. The arithmetic of the library's default hole law."""
import json
import sys
import time

import numpy as np

count, rows = int(sys.argv[1]), int(sys.argv[2])
speeds = np.array([0.05, 0.3, 1.0])  # rebound, sizes of the speed


def forces(d, thickness, bore, gap, nu, rho, gas_volume, speed):
    mu = rho * nu
    piston = bore - 2 * gap
    circumference = np.pi * (bore - gap)
    length_ratio = thickness / d
    creeping_slope = mu * (0.99 * 6 * np.pi + 32 * length_ratio) / d
    growth = (1.25 / 13.76) ** 2 / length_ratio
    area = 4 * np.pi / 4 * d**2
    gap_conductance = circumference * gap**3 / (12 * mu * thickness)
    shaft_area = np.pi / 4 * 0.003**2
    damping_area = np.pi / 4 * piston**2 + circumference * gap / 2 - shaft_area
    skirt_drag = mu * circumference * thickness / gap
    gas_pressure = 101325 * (gas_volume / (gas_volume - shaft_area * 0.0125)) ** 1.4

    def loss(re):
        x, y = re / 27, re / 3000
        laminar = re / np.sqrt(1 + y * y)
        bubble = 0.1 + laminar / 2000
        covered = bubble / (bubble + length_ratio)
        full = 1 + 1.25 / np.sqrt(1 + growth * laminar) + 1.68 * covered * covered
        return full * x / np.sqrt(1 + 0.25 * x + x * x)

    def drop_at(v):
        return v * (creeping_slope + rho / 2 * v * loss(d / nu * v))

    target = damping_area * speed
    v = target / area
    drop = drop_at(v)
    # The slope by a difference, once: little leaks, so that it serves for every step.
    slope = (drop_at(v * 1.0001) - drop) / (v * 0.0001)
    for _ in range(60):
        step = np.abs(area * v + gap_conductance * drop - target) / (area + gap_conductance * slope)
        v = v - step
        if np.all(step <= 1e-9 * v):
            drop = drop - step * slope
            break
        drop = drop_at(v)
    recoil = rho * area * v * np.maximum(1.2 * v - target / (np.pi / 4 * bore**2), 0)
    return -(damping_area * drop - recoil + skirt_drag * speed) + shaft_area * (gas_pressure - 101325)


def draw(n, generator):
    def off(half_width):
        return generator.uniform(-half_width, half_width, (n, 1))

    temperature = 298.15 + off(3)
    nu = 350e-6 * 10 ** (763.1 * (1 / temperature - 1 / 298.15)) * (1 + off(0.05))
    # Density of silicone oil: exponential in the temperature, as in the library.
    rho = RHO25 * np.exp(-9.121e-4 * (temperature - 298.15))
    d, thickness, bore, gap = 0.0013 + off(3e-5), 0.0025 + off(5e-5), 0.012 + off(2e-5), 5e-5 + off(1e-5)
    return d, thickness, bore, gap, nu, rho, 1e-6 + off(1e-7)


RHO25 = float(sys.argv[3])
forces(*draw(1000, np.random.default_rng(0)), speeds)
start = time.perf_counter()
all_at_once = forces(*draw(count, np.random.default_rng(1)), speeds)
vectorised = time.perf_counter() - start
some = draw(rows, np.random.default_rng(1))
start = time.perf_counter()
for row in range(rows):
    forces(*(values[row] for values in some), speeds)
one_row = (time.perf_counter() - start) / rows
print(json.dumps({"vectorised": vectorised, "perRow": one_row, "means": all_at_once.mean(axis=0).tolist()}))
