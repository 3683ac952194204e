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
creeping_slope = mu * (0.99 * 6 * np.pi + 32 * length_ratio) / d
growth = (1.25 / 13.76) ** 2 / length_ratio
area = count * np.pi / 4 * d**2
gap_conductance = circumference * h**3 / (12 * mu * thickness)
creeping_conductance = gap_conductance + area / creeping_slope
shaft_area = np.pi / 4 * shaft**2
damping_area = np.pi / 4 * piston**2 + circumference * h / 2 - shaft_area
bore_area = np.pi / 4 * bore**2
skirt_drag = mu * circumference * thickness / h
gas_pressure = 101325 * (1e-6 / (1e-6 - shaft_area * 0.014)) ** 1.4


def loss(re):
    x, y = re / 27, re / 3000
    laminar = re / np.sqrt(1 + y * y)
    bubble = 0.1 + laminar / 2000
    covered = bubble / (bubble + length_ratio)
    full = 1 + 1.25 / np.sqrt(1 + growth * laminar) + 1.68 * covered * covered
    return full * x / np.sqrt(1 + 0.25 * x + x * x)


def loss_slope(re):
    x, y = re / 27, re / 3000
    turbulent = 1 + y * y
    root = np.sqrt(turbulent)
    laminar = re / root
    bubble = 0.1 + laminar / 2000
    span = bubble + length_ratio
    covered = bubble / span
    grown = 1 + growth * laminar
    developing = 1.25 / np.sqrt(grown)
    bend = 1 + 0.25 * x + x * x
    full = 1 + developing + 1.68 * covered * covered
    full_slope = (
        2 * 1.68 * covered / 2000 * length_ratio / span**2 - 0.5 * developing * growth / grown
    ) / (turbulent * root)
    return full * (1 + 0.125 * x) / (27 * bend * np.sqrt(bend)) + full_slope * x / np.sqrt(bend)


def drop_at(size):
    return size * (creeping_slope + rho / 2 * size * loss(d / nu * size))


def slope_at(size):
    re = d / nu * size
    return creeping_slope + rho / 2 * size * (2 * loss(re) + re * loss_slope(re))


def curve(speed):
    target = np.abs(damping_area * speed)
    v = target / area
    drop = drop_at(v)
    slope = slope_at(v)
    for _ in range(60):
        step = np.abs(area * v + gap_conductance * drop - target) / (area + gap_conductance * slope)
        v = v - step
        if np.all(step <= 1e-9 * v):
            drop = drop - step * slope
            break
        drop = drop_at(v)
    sign = np.where(speed < 0, -1.0, 1.0)
    recoil = rho * area * v * np.maximum(1.2 * v - target / bore_area, 0)
    damping = sign * (damping_area * drop - recoil) + skirt_drag * speed
    seal = (0.4 + 0.2 * np.exp(-((speed / 0.01) ** 2))) * np.tanh(speed / 0.001)
    force = damping + shaft_area * (gas_pressure - 101325) + seal
    with np.errstate(invalid="ignore", divide="ignore"):
        coefficient = np.where(speed == 0, damping_area**2 / creeping_conductance + skirt_drag, damping / speed)
        leak = np.where(target == 0, gap_conductance / creeping_conductance, gap_conductance * drop / target)
    lowest_pressure = gas_pressure - np.where(speed > 0, drop, 0)
    cavitating = lowest_pressure < 0
    lowest_pressure = np.maximum(lowest_pressure, 0)
    return (
        *(force, coefficient, lowest_pressure, v * d / nu, 8 * v / d, leak),
        *(cavitating, recoil, drop / (rho * 1500)),
    )


speeds = -2 + 0.02 * np.arange(201)
curve(speeds)
start = time.perf_counter()
for _ in range(repeats):
    force = curve(speeds)[0]
elapsed = time.perf_counter() - start
print(json.dumps({"nanoseconds": elapsed / repeats * 1e9, "sum": float(force.sum())}))
